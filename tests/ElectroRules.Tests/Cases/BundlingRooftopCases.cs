using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tests.Support;
using UnitsNet;

namespace ElectroRules.Tests.Cases;

/// <summary>Published examples of cables together and raceways above roofs; each case carries its source.</summary>
public class BundlingRooftopCases
{
    internal static CaseRunners Runners { get; } = new("bundling-rooftop", new Dictionary<string, Action<PublishedCase, RuleSet>>
    {
        ["nm-4x12-2"] = SealedOpening,
        ["nm-4x12-2-bundled"] = Bundled,
        ["roof-6in-75F"] = AboveRoof,
    });

    public static TheoryData<string, EditionId> Data => Runners.Data();

    [Theory]
    [MemberData(nameof(Data))]
    public void Comes_out_as_published(string id, EditionId edition) => Runners.Run(id, edition);

    private static void SealedOpening(PublishedCase c, RuleSet rules)
    {
        var answer = FourCables(rules, CableGrouping.SealedOpening);
        ConductorAmpacity value = Answer.Of(rules, answer);
        Assert.Equal(c.Out("ccc"), Answer.Step(answer, "total"));
        Assert.Equal(c.Out("factor"), value.Segments[0].AdjustmentFactor.DecimalFractions);
        Assert.Equal(c.Out("base_90C_A"), Answer.Step(answer, "table-ampacity"));
        Assert.Equal(c.Out("derated_A"), Answer.Step(answer, "corrected-ampacity"), 1e-9);

        // The note of the case: the 60 °C column holds the final value.
        Assert.Equal(20, value.Ampacity.Amperes);
        Assert.Equal(AmpacityLimit.Cable, value.Limit);
        Assert.Equal(c.Out("max_breaker_A"), Largest(rules, value));
    }

    private static void Bundled(PublishedCase c, RuleSet rules)
    {
        var answer = FourCables(rules, CableGrouping.Bundled);
        Assert.Equal(c.Out("ccc"), Answer.Step(answer, "total"));
        Assert.Equal(c.Out("derated_A"), Answer.Step(answer, "corrected-ampacity"), 1e-9);
        Assert.Equal(c.OutYes("breaker_20A_ok"), Largest(rules, Answer.Of(rules, answer)) >= 20);
    }

    /// <summary>2 AWG aluminum is the size that has the 100 A of the case at 90 °C.</summary>
    private static void AboveRoof(PublishedCase c, RuleSet rules)
    {
        RouteSegment segment = Given.Segment() with
        {
            Ambient = Temperature.FromDegreesFahrenheit(c.In("ambient_F")),
            HeightAboveRoof = Length.FromInches(c.In("height_in")),
        };
        ConductorRun run = Given.Raceway(InsulationType.Thhn, segment) with { Material = ConductorMaterial.Aluminum };
        var answer = Ampacity.Determine(rules, Given.Ampacity(ConductorSize.Awg2, run));
        ConductorAmpacity value = Answer.Of(rules, answer);
        Assert.Equal(c.In("table_A"), Answer.Step(answer, "table-ampacity"));
        if (rules.Edition == EditionId.Nec2014)
        {
            Assert.Equal(c.Out("adder_F"), Answer.Step(answer, "adder-fahrenheit"));
            Assert.Equal(c.Out("total_F"), Temperature.FromDegreesCelsius(Answer.Step(answer, "ambient-above-roof")).DegreesFahrenheit, 1e-9);
            Assert.Equal(c.Out("factor"), value.Segments[0].AmbientFactor.DecimalFractions);
            Assert.Equal(c.Out("ampacity_A"), value.CorrectedAmpacity.Amperes, 1e-9);
        }
        else
        {
            // The note of the case: later editions add nothing at this height.
            Assert.Equal(1.04, value.Segments[0].AmbientFactor.DecimalFractions);
        }
    }

    private static Determination<ConductorAmpacity> FourCables(RuleSet rules, CableGrouping grouping) =>
        Ampacity.Determine(rules, Given.Ampacity(ConductorSize.Awg12, Given.Nonmetallic(Given.Segment(others: 6) with { Grouping = grouping, OtherCables = 3 })));

    private static double? Largest(RuleSet rules, ConductorAmpacity value) =>
        Answer.Of(rules, OvercurrentDevice.Select(rules, Given.Protecting(value.Ampacity.Amperes, ConductorSize.Awg12))).Largest?.Amperes;
}
