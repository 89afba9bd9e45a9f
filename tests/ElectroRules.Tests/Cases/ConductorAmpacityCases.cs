using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tests.Support;
using UnitsNet;

namespace ElectroRules.Tests.Cases;

/// <summary>Published ampacity examples; each case carries its source. Values of editions before 2014 did not change since.</summary>
public class ConductorAmpacityCases
{
    internal static CaseRunners Runners { get; } = new("conductor-ampacity", new Dictionary<string, Action<PublishedCase, RuleSet>>
    {
        ["amp-30ccc-12thhn"] = (c, r) => Together(c, r, InsulationType.Thhn, c.In("ambient_C")),
        ["amp-9ccc-12thhn"] = (c, r) => Together(c, r, InsulationType.Thhn, c.In("ambient_C")),
        ["amp-4ccc-12thhn"] = (c, r) => Together(c, r, InsulationType.Thhn, Celsius(c.In("ambient_F"))),
        ["amp-4x1-0-THWN2-104F"] = FourAught,
        ["amp-10thhn-120F"] = (c, r) => Hot(c, r, InsulationType.Thhn, Celsius(c.In("ambient_F")), LocationKind.Dry),
        ["amp-1/0-thwn-wet-40C"] = (c, r) => Hot(c, r, InsulationType.Thwn, c.In("ambient_C"), LocationKind.Wet),
        ["amp-10thhn-30C"] = LargestDevice,
        ["cont-95A-three-sizes"] = ThreeSizes,
        ["nm-6-3-subpanel-60A"] = Subpanel,
        ["ser-6cu-4al-70A"] = ServiceEntrance,
        ["feeder-90-100A-al"] = AluminumFeeders,
        ["usfs-cont-24-32"] = Continuous,
        ["usfs-cont-48-64"] = Continuous,
        ["usfs-cont-36-45A"] = (c, r) => Continuous(r, c.In("load_A"), c.Out("breaker_A"), c.OutSize("conductor")),
    });

    public static TheoryData<string, EditionId> Data => Runners.Data();

    [Theory]
    [MemberData(nameof(Data))]
    public void Comes_out_as_published(string id, EditionId edition) => Runners.Run(id, edition);

    private static double Celsius(double fahrenheit) => Temperature.FromDegreesFahrenheit(fahrenheit).DegreesCelsius;

    private static void Together(PublishedCase c, RuleSet rules, InsulationType insulation, double celsius)
    {
        ConductorRun run = Given.Raceway(insulation, Given.Segment(celsius: celsius, others: (int)c.In("current_carrying") - 2));
        Determination<ConductorAmpacity> answer = Ampacity.Determine(rules, Given.Ampacity(c.InSize("conductor"), run));
        ConductorAmpacity value = Answer.Of(rules, answer);
        Assert.Equal(c.Out("table_A"), Answer.Step(answer, "table-ampacity"));
        Assert.Equal(c.Out("adjustment"), value.Segments[0].AdjustmentFactor.DecimalFractions);
        Assert.Equal(c.Out("ampacity_A"), value.CorrectedAmpacity.Amperes, 1e-9);
    }

    private static void FourAught(PublishedCase c, RuleSet rules)
    {
        RouteSegment segment = Given.Segment(celsius: Celsius(c.In("ambient_F")), others: (int)c.In("current_carrying") - 2);
        Determination<ConductorAmpacity> answer = Ampacity.Determine(rules, Given.Ampacity(ConductorSize.OneAught, Given.Raceway(InsulationType.Thwn2, segment)));
        ConductorAmpacity value = Answer.Of(rules, answer);
        Assert.Equal(c.Out("table_A"), Answer.Step(answer, "table-ampacity"));
        Assert.Equal(c.Out("ambient_factor"), value.Segments[0].AmbientFactor.DecimalFractions);
        Assert.Equal(c.Out("adjustment"), value.Segments[0].AdjustmentFactor.DecimalFractions);
        Assert.Equal(c.Out("ampacity_A"), value.CorrectedAmpacity.Amperes, 0.5);

        // The note of the case: a plain THWN is held to 75 °C.
        ConductorAmpacity plain = Answer.Of(rules, Ampacity.Determine(rules, Given.Ampacity(ConductorSize.OneAught, Given.Raceway(InsulationType.Thwn, segment))));
        Assert.Equal(105.6, plain.CorrectedAmpacity.Amperes, 1e-9);
    }

    private static void Hot(PublishedCase c, RuleSet rules, InsulationType insulation, double celsius, LocationKind location)
    {
        ConductorRun run = Given.Raceway(insulation, Given.Segment(celsius: celsius, location: location));
        Determination<ConductorAmpacity> answer = Ampacity.Determine(rules, Given.Ampacity(c.InSize("conductor"), run));
        ConductorAmpacity value = Answer.Of(rules, answer);
        Assert.Equal(c.Out("table_A"), Answer.Step(answer, "table-ampacity"));
        Assert.Equal(c.Out("factor"), value.Segments[0].AmbientFactor.DecimalFractions);
        Assert.Equal(c.Out("ampacity_A"), value.CorrectedAmpacity.Amperes, 1e-9);
    }

    private static void LargestDevice(PublishedCase c, RuleSet rules)
    {
        ConductorSize size = c.InSize("conductor");
        ConductorAmpacity value = Answer.Of(rules, Ampacity.Determine(rules, Given.Ampacity(size, Given.Raceway(InsulationType.Thhn))));
        Assert.Equal(c.Out("ampacity_A"), value.CorrectedAmpacity.Amperes);
        Assert.Equal(c.Out("max_ocpd_A"), Largest(rules, value.Ampacity.Amperes, size));
    }

    private static void ThreeSizes(PublishedCase c, RuleSet rules)
    {
        double load = c.In("load_A");
        ConductorRun run = Given.Raceway(InsulationType.Thhn) with { SupplyTermination = TerminationRating.C75, LoadTermination = TerminationRating.C60 };
        SmallestConductorResult value = Answer.Of(
            rules, SmallestConductor.Determine(rules, Given.Smallest(run, load) with { TerminalTest = TerminalTest.EachEnd }));
        Assert.Equal(c.Out("sizing_A"), Math.Ceiling(value.RequiredAtTerminations.Amperes));
        Assert.Equal(c.OutSize("selected"), value.Size);
        Assert.Equal(c.Out("ocpd_A"), Answer.Of(rules, OvercurrentDevice.Select(rules, Given.Device(load))).Device.Rating.Amperes);
        Assert.Equal(c.OutSize("size_for_125pct_75C"), Search(rules, value.RequiredAtTerminations.Amperes, TerminationRating.C75));
        Assert.Equal(c.OutSize("size_for_conductor_75C"), Search(rules, load, TerminationRating.C75));
        Assert.Equal(c.OutSize("size_for_60C_terminal"), Search(rules, load, TerminationRating.C60));
    }

    private static void Subpanel(PublishedCase c, RuleSet rules)
    {
        ConductorSize size = c.InSize("conductor");
        double ampacity = Answer.Of(rules, Ampacity.Determine(rules, Given.Ampacity(size, Given.Nonmetallic()))).Ampacity.Amperes;
        Assert.Equal(c.Out("ampacity_A"), ampacity);
        Assert.Equal(c.OutYes("breaker_60A_ok"), Largest(rules, ampacity, size) >= 60);
        double most = c.Out("max_calculated_load_A");
        OvercurrentRequest fits = Given.Protecting(ampacity, size) with { Noncontinuous = Given.Amperes(most) };
        Assert.Equal(60, Answer.Of(rules, OvercurrentDevice.Select(rules, fits)).Device.Rating.Amperes);
        OvercurrentRequest above = fits with { Noncontinuous = Given.Amperes(most + 1) };
        Answer.Refused(OvercurrentDevice.Select(rules, above), "conductor-below-load");
    }

    private static void ServiceEntrance(PublishedCase c, RuleSet rules)
    {
        (ConductorSize Size, ConductorMaterial Material)[] cables =
            [(ConductorSize.Awg6, ConductorMaterial.Copper), (ConductorSize.Awg4, ConductorMaterial.Aluminum)];
        for (int i = 0; i < cables.Length; i++)
        {
            ConductorRun run = Given.Cable(WiringMethod.ServiceEntranceCable, Given.Segment() with { InThermalInsulation = false }) with { Material = cables[i].Material };
            double ampacity = Answer.Of(rules, Ampacity.Determine(rules, Given.Ampacity(cables[i].Size, run))).Ampacity.Amperes;
            Assert.Equal(c.OutMany("ampacity_A")[i], ampacity);
            Assert.Equal(c.OutMany("breaker_A")[i], Largest(rules, ampacity, cables[i].Size));
        }
    }

    private static void AluminumFeeders(PublishedCase c, RuleSet rules)
    {
        ConductorRun run = Given.Raceway(InsulationType.Xhhw2) with { Material = ConductorMaterial.Aluminum };
        IEnumerable<ConductorSize> sizes = c.InMany("feeder_A")
            .Select(a => Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(run, 0, a))).Size);
        Assert.Equal(c.OutSizes("conductor"), sizes);
    }

    private static void Continuous(PublishedCase c, RuleSet rules)
    {
        for (int i = 0; i < c.InMany("load_A").Count; i++)
        {
            Continuous(rules, c.InMany("load_A")[i], c.OutMany("breaker_A")[i], c.OutSizes("conductor")[i]);
        }
    }

    private static void Continuous(RuleSet rules, double load, double breaker, ConductorSize size)
    {
        SmallestConductorResult conductor = Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(Given.Raceway(InsulationType.Thw), load)));
        Assert.Equal(size, conductor.Size);
        OvercurrentRequest request = Given.Protecting(conductor.Ampacity.Amperes, size) with { Continuous = Given.Amperes(load), Noncontinuous = Given.Amperes(0) };
        Assert.Equal(breaker, Answer.Of(rules, OvercurrentDevice.Select(rules, request)).Device.Rating.Amperes);
    }

    private static double? Largest(RuleSet rules, double ampacity, ConductorSize size) =>
        Answer.Of(rules, OvercurrentDevice.Select(rules, Given.Protecting(ampacity, size))).Largest?.Amperes;

    private static ConductorSize? Search(RuleSet rules, double need, TerminationRating column) =>
        ConductorSearch.Smallest(rules, Given.Amperes(need), ConductorMaterial.Copper, TerminationRating.C90, column, Given.Share(1));
}
