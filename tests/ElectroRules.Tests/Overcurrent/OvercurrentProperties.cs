using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tests.Support;
using FsCheck.Xunit;

namespace ElectroRules.Tests.Overcurrent;

/// <summary>What must hold of every device.</summary>
[Properties(MaxTest = 500, Replay = "3571,2017", QuietOnSuccess = true)]
public class OvercurrentProperties
{
    /// <summary>The ratings of breakers as every maker lists them: common practice, no source.</summary>
    private static readonly double[] Breakers =
    [
        15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600, 700, 800,
        1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
    ];

    [Property]
    public void More_load_never_takes_a_smaller_device(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        OvercurrentRequest request = Given.Device(draw.Between(0, 500), draw.Between(0.1, 500));
        OvercurrentRequest more = request with { Continuous = request.Continuous!.Value + Given.Amperes(draw.Between(0, 200)) };
        OvercurrentSelection value = Answer.Of(rules, OvercurrentDevice.Select(rules, request));
        OvercurrentSelection larger = Answer.Of(rules, OvercurrentDevice.Select(rules, more));
        Assert.True(value.Device.Rating <= larger.Device.Rating);
        Assert.True(value.Device.Rating.Amperes >= value.Required.Amperes * (1 - 1e-9));
        OvercurrentSelection full = Answer.Of(rules, OvercurrentDevice.Select(rules, request with { HundredPercentRated = true }));
        Assert.True(full.Device.Rating <= value.Device.Rating);
    }

    [Property]
    public void A_device_is_never_above_what_protects_the_conductor(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Pick([EditionId.Nec2014, EditionId.Nec2017, EditionId.Nec2020]));
        double ampacity = draw.Between(16, 1500);
        var size = (ConductorSize)(3 + draw.Count(20));
        OvercurrentRequest request = Given.Protecting(ampacity, size, receptacles: draw.Yes()) with
        {
            Continuous = Given.Amperes(draw.Between(0, ampacity)),
            NoNextSizeUp = draw.Yes(),
        };
        Determination<OvercurrentSelection> answer = OvercurrentDevice.Select(rules, request);
        DerivationReplay.Verify(rules, answer);
        double largest = Slow(ampacity, size, request.SeveralReceptacles == true || request.NoNextSizeUp);
        double required = (request.Continuous.Value.Amperes * 1.25) + 1;
        bool fits = Breakers.First(b => b >= required * (1 - 1e-9)) <= largest && request.Continuous.Value.Amperes + 1 <= ampacity;
        Assert.Equal(fits, answer.Status == DeterminationStatus.Determined);
        if (fits)
        {
            Assert.Equal(largest, answer.Value.Largest?.Amperes);
            Assert.Equal(Breakers.Where(b => b >= required * (1 - 1e-9) && b <= largest), answer.Value.Allowed.Select(a => a.Amperes));
        }
    }

    [Property]
    public void The_unit_of_a_fact_does_not_matter(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        OvercurrentRequest request = Given.Protecting(draw.Between(200, 400), ConductorSize.Kcmil500) with { Continuous = Given.Amperes(draw.Pick([16.0, 24, 32, 48, 80, 99.9])) };
        OvercurrentRequest other = request with
        {
            Continuous = request.Continuous.Value.ToUnit(UnitsNet.Units.ElectricCurrentUnit.Kiloampere),
            ConductorAmpacity = request.ConductorAmpacity!.Value.ToUnit(UnitsNet.Units.ElectricCurrentUnit.Milliampere),
        };
        OvercurrentSelection a = Answer.Of(rules, OvercurrentDevice.Select(rules, request));
        OvercurrentSelection b = Answer.Of(rules, OvercurrentDevice.Select(rules, other));
        Assert.Equal(a.Allowed, b.Allowed);
    }

    private static double Slow(double ampacity, ConductorSize size, bool noRoundingUp)
    {
        double up = Breakers.First(b => b >= ampacity);
        double byAmpacity = noRoundingUp || up > 800 ? Breakers.Last(b => b <= ampacity) : up;
        return size switch
        {
            ConductorSize.Awg14 => Math.Min(15, byAmpacity),
            ConductorSize.Awg12 => Math.Min(20, byAmpacity),
            ConductorSize.Awg10 => Math.Min(30, byAmpacity),
            _ => byAmpacity,
        };
    }
}
