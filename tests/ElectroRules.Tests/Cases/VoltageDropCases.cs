using ElectroRules.Conductors;
using ElectroRules.Results;
using ElectroRules.Tests.Support;
using UnitsNet;

namespace ElectroRules.Tests.Cases;

/// <summary>Published voltage-drop examples; each case carries its source.</summary>
public class VoltageDropCases
{
    internal static CaseRunners Runners { get; } = new("voltage-drop", new Dictionary<string, Action<PublishedCase, RuleSet>>
    {
        ["vd-3pct-240"] = LowestVoltage,
        ["vd-5pct-240"] = LowestVoltage,
        ["vd-5pct-120"] = LowestVoltage,
        ["vd-percent-240-230"] = Percent,
        ["vd-12awg-20A-100ft-K12"] = Constant,
        ["vd-12awg-16A-100ft-K12.9"] = ConstantAndTable,
        ["vd-12awg-16A-100ft-ohm"] = Loop,
        ["vd-10awg-16A-50ft"] = GivenAndListed,
        ["vd-12awg-8A-100ft"] = GivenAndListed,
        ["vd-3ph-10awg-200ft"] = ThreePhase,
    });

    public static TheoryData<string, EditionId> Data => Runners.Data();

    [Theory]
    [MemberData(nameof(Data))]
    public void Comes_out_as_published(string id, EditionId edition) => Runners.Run(id, edition);

    private static VoltageDropRequest Request(PublishedCase c, ConductorSize size) =>
        Given.Drop(size, c.In("I"), c.In("V"), c.In("ft"));

    private static VoltageDropResult Compute(RuleSet rules, VoltageDropRequest request) =>
        Answer.Of(rules, VoltageDrop.Compute(rules, request));

    /// <summary>At the longest run for a limit the whole of the limit is used up; the conductor does not matter.</summary>
    private static void LowestVoltage(PublishedCase c, RuleSet rules)
    {
        VoltageDropRequest request = Given.Drop(ConductorSize.Awg6, 20, c.In("V"), 100) with { LimitShare = Ratio.FromPercent(c.In("percent")) };
        VoltageDropResult atLongest = Compute(rules, request with { Length = Compute(rules, request).LongestRun });
        Assert.Equal(c.Out("drop_V"), atLongest.Drop.Volts, 1e-9);
        Assert.Equal(c.Out("end_V"), atLongest.VoltageAtLoad.Volts, 1e-9);
    }

    private static void Percent(PublishedCase c, RuleSet rules)
    {
        double lost = c.In("source_V") - c.In("load_V");
        VoltageDropRequest request = Given.Drop(ConductorSize.Awg12, 1, c.In("source_V"), 500) with { ImpedanceOf1000Feet = ElectricResistance.FromOhms(lost) };
        VoltageDropResult value = Compute(rules, request);
        Assert.Equal(c.In("load_V"), value.VoltageAtLoad.Volts, 1e-9);
        Assert.Equal(c.Out("percent"), value.Share.Percent, 0.05);
    }

    private static void Constant(PublishedCase c, RuleSet rules)
    {
        VoltageDropResult value = Compute(rules, Request(c, c.InSize("awg")) with { ResistanceOfCircularMilFoot = ElectricResistance.FromOhms(c.In("K")) });
        Assert.Equal(c.Out("drop_V"), value.Drop.Volts, 0.02);
        Assert.Equal(c.Out("percent"), value.Share.Percent, 0.02 / c.In("V") * 100);
        Assert.Null(value.SmallestSize);
    }

    private static void ConstantAndTable(PublishedCase c, RuleSet rules)
    {
        VoltageDropRequest request = Request(c, c.InSize("awg"));
        VoltageDropResult value = Compute(rules, request with { ResistanceOfCircularMilFoot = ElectricResistance.FromOhms(c.In("K")) });
        Assert.Equal(c.Out("drop_V"), value.Drop.Volts, 0.02);
        VoltageDropResult byTable = Compute(rules, request with { Impedance = ImpedanceMethod.DcResistance });
        Assert.Equal(c.Out("by_table8_1_93_ohm_V"), byTable.Drop.Volts, 0.02);
    }

    private static void Loop(PublishedCase c, RuleSet rules)
    {
        VoltageDropRequest request = Request(c, c.InSize("awg")) with { ImpedanceOf1000Feet = ElectricResistance.FromOhms(c.In("ohm_per_kft")) };
        VoltageDropResult value = Compute(rules, request);
        Assert.Equal(c.Out("loop_ohm"), value.Drop.Volts / c.In("I"), 1e-9);
        Assert.Equal(c.Out("percent"), value.Share.Percent, 0.05);

        VoltageDropRequest atLimit = request with { Current = Given.Amperes(c.Out("max_A_for_3pct")) };
        Assert.Empty(VoltageDrop.Compute(rules, atLimit).Findings);
        VoltageDropRequest aboveLimit = request with { Current = Given.Amperes(c.Out("max_A_for_3pct") + 0.01) };
        Finding finding = Assert.Single(VoltageDrop.Compute(rules, aboveLimit).Findings);
        Assert.Equal(("drop-above-recommendation", CodeStanding.Advice, Hazard.None), (finding.Code, finding.Standing, finding.Hazard));
    }

    private static void GivenAndListed(PublishedCase c, RuleSet rules)
    {
        VoltageDropRequest request = Request(c, c.InSize("awg"));
        VoltageDropResult given = Compute(rules, request with { ImpedanceOf1000Feet = ElectricResistance.FromOhms(c.In("ohm_per_kft")) });
        Assert.Equal(c.Out("drop_V"), given.Drop.Volts, 1e-9);
        Assert.Equal(c.Out("drop_V"), Compute(rules, request).Drop.Volts, 1e-9);
    }

    private static void ThreePhase(PublishedCase c, RuleSet rules)
    {
        VoltageDropRequest request = Request(c, c.InSize("awg")) with
        {
            Connection = CircuitConnection.ThreePhase,
            ImpedanceOf1000Feet = ElectricResistance.FromOhms(c.In("ohm_per_kft")),
        };
        Assert.Equal(c.Out("drop_V"), Compute(rules, request).Drop.Volts, 0.02);
    }
}
