using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tests.Support;

namespace ElectroRules.Tests.Conductors;

/// <summary>A missing fact is asked for by its place in the request, and never gives a number.</summary>
public class PartialInputTests
{
    private static readonly RuleSet Rules = RuleSet.For(EditionId.Nec2023);

    private static readonly Dictionary<string, ConductorRun> Runs = new()
    {
        ["/run/route/0/length"] = Given.Raceway(InsulationType.Thhn, Given.Segment() with { Length = null }),
        ["/run/route/0/ambient"] = Given.Raceway(InsulationType.Thhn, Given.Segment() with { Ambient = null }),
        ["/run/route/0/location"] = Given.Raceway(InsulationType.Thhn, Given.Segment() with { Location = null }),
        ["/run/route/1/otherCurrentCarryingConductors"] =
            Given.Raceway(InsulationType.Thhn, Given.Segment(), Given.Segment() with { OtherCurrentCarryingConductors = null }),
        ["/run/insulation"] = Given.Raceway(InsulationType.Thhn) with { Insulation = null },
        ["/run/wires/mostlyNonlinear"] = Given.Raceway(InsulationType.Thhn) with
        {
            Wires = new CircuitWires { System = SupplySystem.Wye120V208V, Connection = CircuitConnection.ThreePhase, Neutral = true },
        },
        ["/run/route/0/grouping"] = Given.Nonmetallic(Given.Segment(others: 2)),
        ["/run/route/0/otherCables"] = Given.Nonmetallic(Given.Segment(others: 2) with { Grouping = CableGrouping.SealedOpening }),
        ["/run/route/0/inThermalInsulation"] = Given.Cable(WiringMethod.ServiceEntranceCable),
        ["/circuitRating"] = Given.Raceway(InsulationType.Thhn).Marked(null),
    };

    public static TheoryData<string> Pointers => [.. Runs.Keys];

    [Theory]
    [MemberData(nameof(Pointers))]
    public void A_missing_fact_of_a_run_is_named(string pointer)
    {
        Assert.Equal([pointer], Answer.Needs(Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, Runs[pointer]))));
        Assert.Equal([pointer], Answer.Needs(SmallestConductor.Determine(Rules, Given.Smallest(Runs[pointer], 16))));
    }

    [Fact]
    public void All_missing_facts_of_a_route_are_named_at_once()
    {
        var blank = new RouteSegment { Length = null, Ambient = null, Location = null, OtherCurrentCarryingConductors = null };
        string[] names = ["length", "ambient", "location", "otherCurrentCarryingConductors"];
        IEnumerable<string> expected = Enumerable.Range(0, 2).SelectMany(i => names.Select(n => FormattableString.Invariant($"/run/route/{i}/{n}")));
        Assert.Equal(expected, Answer.Needs(Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, Given.Raceway(InsulationType.Thhn, blank, blank)))));
    }

    [Fact]
    public void The_rating_of_the_circuit_is_named_together_with_the_facts_of_the_route()
    {
        ConductorRun run = Given.Raceway(InsulationType.Thhn, Given.Segment() with { Ambient = null }).Marked(null);
        Assert.Equal(["/run/route/0/ambient", "/circuitRating"], Answer.Needs(Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, run))));
        Assert.Equal(["/run/route/0/ambient", "/circuitRating"], Answer.Needs(SmallestConductor.Determine(Rules, Given.Smallest(run, 16))));
    }

    [Fact]
    public void A_fact_that_does_not_matter_is_not_asked_for()
    {
        ConductorRun cable = Given.Nonmetallic(Given.Segment());
        Answer.Of(Rules, Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, cable)));
        ConductorRun marked = Given.Raceway(InsulationType.Thhn);
        Answer.Of(Rules, Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, marked)));
        VoltageDropRequest direct = Given.Drop(ConductorSize.Awg12, 16, 120, 100) with { PowerFactor = null, Impedance = ImpedanceMethod.DcResistance };
        Answer.Of(Rules, VoltageDrop.Compute(Rules, direct));
    }

    [Fact]
    public void Missing_facts_of_a_load_are_named()
    {
        SmallestConductorRequest request = Given.Smallest(Given.Raceway(InsulationType.Thhn), 16);
        Assert.Equal(["/continuous"], Answer.Needs(SmallestConductor.Determine(Rules, request with { Continuous = null })));
        Assert.Equal(["/noncontinuous"], Answer.Needs(SmallestConductor.Determine(Rules, request with { Noncontinuous = null })));
        OvercurrentRequest device = Given.Device(16);
        Assert.Equal(["/continuous", "/noncontinuous"], Answer.Needs(OvercurrentDevice.Select(Rules, device with { Continuous = null, Noncontinuous = null })));
        Assert.Equal(
            ["/conductorSize", "/conductorMaterial", "/severalReceptacles"],
            Answer.Needs(OvercurrentDevice.Select(Rules, device with { ConductorAmpacity = Given.Amperes(20) })));
    }

    [Fact]
    public void Missing_facts_of_a_drop_are_named()
    {
        VoltageDropRequest request = Given.Drop(ConductorSize.Awg12, 16, 120, 100);
        Assert.Equal(["/current"], Answer.Needs(VoltageDrop.Compute(Rules, request with { Current = null })));
        Assert.Equal(
            ["/current", "/sourceVoltage", "/length", "/powerFactor"],
            Answer.Needs(VoltageDrop.Compute(Rules, request with { Current = null, SourceVoltage = null, Length = null, PowerFactor = null })));
    }

    [Fact]
    public void An_answer_that_is_not_there_says_why()
    {
        Determination<VoltageDropResult> answer = VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, 16, 120, 100) with { Current = null });
        InvalidOperationException error = Assert.Throws<InvalidOperationException>(() => answer.Value);
        Assert.Equal("There is no answer: facts are missing (/current).", error.Message);
        Assert.False(answer.TryGetValue(out _));
    }

    [Fact]
    public void An_edition_that_is_not_verified_is_not_covered()
    {
        RuleSet rules = RuleSet.For(EditionId.Nec2026);
        Assert.Equal("table-absent", Answer.NotCovered(Ampacity.Determine(rules, Given.Ampacity(ConductorSize.Awg12, Given.Raceway(InsulationType.Thhn)))).Code);
        Assert.Equal("table-absent", Answer.NotCovered(SmallestConductor.Determine(rules, Given.Smallest(Given.Raceway(InsulationType.Thhn), 16))).Code);
        Assert.Equal("table-absent", Answer.NotCovered(VoltageDrop.Compute(rules, Given.Drop(ConductorSize.Awg12, 16, 120, 100))).Code);
    }
}
