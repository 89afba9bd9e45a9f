using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Tests.Support;

namespace ElectroRules.Tests.Cases;

/// <summary>Published examples of water heaters, heaters, vehicle chargers and air conditioners; each case carries its source.</summary>
public class ApplianceCases
{
    internal static CaseRunners Runners { get; } = new("appliances", new Dictionary<string, Action<PublishedCase, RuleSet>>
    {
        ["wh-4500-ecm"] = WaterHeater,
        ["wh-4500-min-max-ocpd"] = WaterHeaterDevices,
        ["ac-44-60"] = AirConditioner,
        ["ac-28-40"] = AirConditionerOnSmallerBreaker,
        ["ac-mop20-breaker30"] = AirConditionerOnLargerBreaker,
        ["ac-mca-steps"] = AirConditionerSteps,
        ["heat-240-20A-max"] = Heater,
        ["heat-chart-30-40"] = Heaters,
        ["ev-48A-nm"] = Charger,
    });

    public static TheoryData<string, EditionId> Data => Runners.Data();

    [Theory]
    [MemberData(nameof(Data))]
    public void Comes_out_as_published(string id, EditionId edition) => Runners.Run(id, edition);

    private static void WaterHeater(PublishedCase c, RuleSet rules)
    {
        double load = c.In("W") / c.In("V");
        Assert.Equal(c.Out("load_A"), load);
        ConductorRun run = Given.Raceway(InsulationType.Thhn);
        SmallestConductorResult byAmpacity = Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(run, load)));
        Assert.Equal(c.Out("conductor_sizing_A"), byAmpacity.RequiredAtTerminations.Amperes, 0.2);

        // The note of the case: 12 AWG has the ampacity, but its own limit holds it to a 20 A device.
        Assert.Equal(ConductorSize.Awg12, byAmpacity.Size);
        OvercurrentRequest appliance = Given.Device(load) with
        {
            SingleNonmotorAppliance = true,
            SeveralReceptacles = false,
            ConductorMaterial = ConductorMaterial.Copper,
        };
        Answer.Refused(OvercurrentDevice.Select(rules, appliance with { ConductorSize = ConductorSize.Awg12, ConductorAmpacity = byAmpacity.Ampacity }), "no-device-fits");

        ConductorSize size = c.OutSize("conductor");
        ConductorAmpacity ampacity = Answer.Of(rules, Ampacity.Determine(rules, Given.Ampacity(size, run)));
        OvercurrentRequest onTen = appliance with { ConductorSize = size, ConductorAmpacity = ampacity.Ampacity };
        var answer = OvercurrentDevice.Select(rules, onTen);
        OvercurrentSelection value = Answer.Of(rules, answer);
        Assert.Equal(c.Out("ocpd_150pct_A"), Answer.Step(answer, "limit"), 0.2);
        Assert.Equal(c.Out("max_ocpd_A"), value.Largest?.Amperes);
    }

    private static void WaterHeaterDevices(PublishedCase c, RuleSet rules)
    {
        double load = c.In("W") / c.In("V");
        OvercurrentSelection value = Answer.Of(rules, OvercurrentDevice.Select(rules, Given.Device(load) with { SingleNonmotorAppliance = true }));
        Assert.Equal(c.Out("min_A"), value.Required.Amperes, 0.05);
        Assert.Equal(c.Out("min_ocpd_A"), value.Device.Rating.Amperes);
        Assert.Equal(c.Out("max_ocpd_A"), value.Largest?.Amperes);
        Assert.Equal([25, 30], value.Allowed.Select(a => a.Amperes));
        ConductorRun run = Given.Raceway(InsulationType.Thhn).Marked(TerminationRating.C60);
        Assert.Equal(c.OutSize("conductor"), Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(run, load))).Size);
    }

    private static void AirConditioner(PublishedCase c, RuleSet rules)
    {
        (SmallestConductorResult conductor, OvercurrentSelection device) = Nameplate(rules, c.In("MCA"), c.In("MOCP"));
        Assert.Equal(c.OutSize("conductor"), conductor.Size);
        Assert.Equal(c.Out("ampacity_A"), conductor.Ampacity.Amperes);
        Assert.Equal(c.Out("ocpd_A"), device.Largest?.Amperes);
        Assert.Equal(c.Out("ocpd_A"), device.Allowed[^1].Amperes);
    }

    private static void AirConditionerOnSmallerBreaker(PublishedCase c, RuleSet rules)
    {
        (SmallestConductorResult conductor, OvercurrentSelection device) = Nameplate(rules, c.In("MCA"), c.In("MOCP"));
        Assert.Equal(c.OutSize("conductor"), conductor.Size);
        Assert.Equal(c.Out("max_breaker_A"), device.Allowed[^1].Amperes);
        Assert.Equal(c.OutYes("breaker_30A_ok"), device.Allowed.Any(a => a.Amperes == c.In("breaker_A")));
    }

    /// <summary>The case gives no load; 15 A is taken, which its marked breaker can carry.</summary>
    private static void AirConditionerOnLargerBreaker(PublishedCase c, RuleSet rules)
    {
        (_, OvercurrentSelection device) = Nameplate(rules, 15, c.In("MOCP"));
        Assert.Equal(c.OutYes("compliant"), device.Allowed.Any(a => a.Amperes == c.In("breaker_A")));
    }

    private static void AirConditionerSteps(PublishedCase c, RuleSet rules)
    {
        IEnumerable<ConductorSize> sizes = c.InMany("MCA")
            .Select(a => Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(Given.Nonmetallic(), 0, a))).Size);
        Assert.Equal(c.OutSizes("conductors"), sizes);
    }

    private static (SmallestConductorResult Conductor, OvercurrentSelection Device) Nameplate(RuleSet rules, double ampacity, double maximum)
    {
        SmallestConductorResult conductor = Answer.Of(
            rules, SmallestConductor.Determine(rules, Given.Smallest(Given.Raceway(InsulationType.Thhn), 0, ampacity)));
        OvercurrentRequest request = Given.Protecting(conductor.Ampacity.Amperes, conductor.Size) with
        {
            Noncontinuous = Given.Amperes(ampacity),
            SpecificApplication = true,
            MarkedMaximum = Given.Amperes(maximum),
        };
        return (conductor, Answer.Of(rules, OvercurrentDevice.Select(rules, request)));
    }

    private static void Heater(PublishedCase c, RuleSet rules)
    {
        Assert.Equal(c.Out("max_W"), c.Out("max_A") * c.In("V"));
        Heater(rules, c.Out("max_A"), c.In("breaker_A"), c.OutSize("cable"));
    }

    private static void Heaters(PublishedCase c, RuleSet rules)
    {
        for (int i = 0; i < c.InMany("breakers_A").Count; i++)
        {
            Heater(rules, c.OutMany("max_W")[i] / c.In("V"), c.InMany("breakers_A")[i], c.OutSizes("cable")[i]);
        }
    }

    private static void Heater(RuleSet rules, double load, double breaker, ConductorSize cable)
    {
        SmallestConductorResult conductor = Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(Given.Nonmetallic(), load)));
        Assert.Equal(cable, conductor.Size);
        OvercurrentRequest request = Given.Protecting(conductor.Ampacity.Amperes, cable) with { Continuous = Given.Amperes(load), Noncontinuous = Given.Amperes(0) };
        Assert.Equal(breaker, Answer.Of(rules, OvercurrentDevice.Select(rules, request)).Device.Rating.Amperes);

        // The load is the largest for that breaker: a little more asks for the next one.
        Assert.True(Answer.Of(rules, OvercurrentDevice.Select(rules, Given.Device(load + 0.01))).Device.Rating.Amperes > breaker);
    }

    private static void Charger(PublishedCase c, RuleSet rules)
    {
        double load = c.In("EVSE_A");
        Assert.Equal(c.Out("required_A"), Answer.Of(rules, OvercurrentDevice.Select(rules, Given.Device(load))).Required.Amperes);
        SmallestConductorResult cable = Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(Given.Nonmetallic(), load)));
        Assert.Equal(c.OutYes("nm6_ok"), cable.Size <= ConductorSize.Awg6);
        Assert.Equal((ConductorSize.Awg4, 70), (cable.Size, cable.Ampacity.Amperes));
        SmallestConductorResult raceway = Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(Given.Raceway(InsulationType.Thhn), load)));
        Assert.Equal((ConductorSize.Awg6, 65), (raceway.Size, raceway.Ampacity.Amperes));
    }
}
