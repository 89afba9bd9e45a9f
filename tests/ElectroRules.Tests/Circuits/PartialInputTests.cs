using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Results;
using FsCheck.Xunit;

namespace ElectroRules.Tests.Circuits;

public sealed class PartialInputTests
{
    private static readonly Dictionary<string, Func<BranchCircuitRequest, BranchCircuitRequest>> Blanks = new(StringComparer.Ordinal)
    {
        ["/load/current"] = r => r with { Load = r.Load with { Current = null } },
        ["/load/powerFactor"] = r => r with { Load = r.Load with { PowerFactor = null } },
        ["/load/duty"] = r => r with { Load = r.Load with { Duty = null } },
        ["/load/needsNeutral"] = r => r with { Load = r.Load with { NeedsNeutral = null } },
        ["/insulation"] = r => r with { Insulation = null },
        ["/route/0/length"] = r => Segment(r, r.Route[0] with { Length = null }),
        ["/route/0/ambient"] = r => Segment(r, r.Route[0] with { Ambient = null }),
        ["/route/0/location"] = r => Segment(r, r.Route[0] with { Location = null }),
        ["/route/0/otherCurrentCarryingConductors"] = r => Segment(r, r.Route[0] with { OtherCurrentCarryingConductors = null }),
    };

    public static TheoryData<string> Paths => [.. Blanks.Keys];

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_fact_that_is_missing_is_named(string path)
    {
        BranchCircuitRequest complete = Sample.Pipe(Sample.Amperes(LoadKind.Other, 20, LoadDuty.Noncontinuous));
        Sample.Design(complete);
        Determination<BranchCircuitDesign> found = BranchCircuit.Design(Sample.Rules2023, Blanks[path](complete));
        Assert.Equal(DeterminationStatus.NeedsInput, found.Status);
        Assert.Equal(path, Assert.Single(found.Needs).Path);
    }

    [Fact]
    public void Facts_of_cables_powers_and_nameplates_are_named()
    {
        BranchCircuitRequest cable = Sample.Cable(Sample.Watts(LoadKind.SpaceHeater, 3000), Sample.Stretch(others: 4));
        Missing("/load/ratedVoltage", cable with { Load = cable.Load with { RatedVoltage = null } });
        Missing("/route/0/grouping", Segment(cable, cable.Route[0] with { Grouping = null }));
        Missing("/route/0/otherCables", Segment(cable, cable.Route[0] with { Grouping = CableGrouping.SealedOpening, OtherCables = null }));
        BranchCircuitRequest armored = cable with { Method = WiringMethod.ArmoredCable };
        Missing("/route/0/inThermalInsulation", Segment(armored, armored.Route[0] with { InThermalInsulation = null }));
        BranchCircuitRequest conditioner = Sample.Cable(Sample.AirConditioner(22, 35));
        Missing("/load/minimumCircuitAmpacity", conditioner with { Load = conditioner.Load with { MinimumCircuitAmpacity = null } });
        Missing("/load/maximumDevice", conditioner with { Load = conditioner.Load with { MaximumDevice = null } });
    }

    [Fact]
    public void All_missing_facts_are_named_at_once()
    {
        BranchCircuitRequest request = Blanks["/load/current"](Blanks["/route/0/ambient"](Blanks["/load/needsNeutral"](Sample.Pipe(Sample.Amperes(LoadKind.Other, 20, LoadDuty.Noncontinuous)))));
        Assert.Equal(
            ["/load/current", "/load/needsNeutral", "/route/0/ambient"],
            BranchCircuit.Design(Sample.Rules2023, request).Needs.Select(n => n.Path).Order(StringComparer.Ordinal));
    }

    [Property(MaxTest = 300, EndSize = 100_000)]
    public void What_the_code_assumes_is_not_less_safe(int seed)
    {
        BranchCircuitRequest request = RandomRequests.Next(seed);
        RuleSet rules = RuleSet.For(RandomRequests.Edition(seed));
        if (request.Load.Current is not { Amperes: < 25 } || !BranchCircuit.Design(rules, request).TryGetValue(out BranchCircuitDesign? known) || known.Device.Rating.Amperes > 100)
        {
            return;
        }

        foreach (BranchCircuitRequest blank in new[] { request with { SupplyTermination = null }, request with { LoadTermination = null } })
        {
            Determination<BranchCircuitDesign> found = BranchCircuit.Design(rules, blank);
            Assert.NotEqual(DeterminationStatus.NeedsInput, found.Status);
            Assert.True(!found.TryGetValue(out BranchCircuitDesign? design) || design.Conductors.Size >= known.Conductors.Size);
        }

        Determination<BranchCircuitDesign> rated = BranchCircuit.Design(rules, request with { HundredPercentRated = null });
        Assert.True(!rated.TryGetValue(out BranchCircuitDesign? safe) || safe.Device.Rating >= known.Device.Rating);
    }

    [Fact] // The two answers are those of the demonstration kiln: 47.9 A and 59.9 A, by hand.
    public void An_unknown_duty_lists_both_answers()
    {
        Determination<BranchCircuitDesign> found = BranchCircuit.Design(Sample.Rules2023, Sample.Cable(Sample.Watts(LoadKind.Kiln, 11_500)));
        Need need = Assert.Single(found.Needs);
        Assert.Equal("/load/duty", need.Path);
        Assert.Equal(["50 A, 6 AWG", "60 A, 4 AWG"], need.StillPossible);
    }

    // Was a fault: BranchCircuit.Design asks LoadNeed.IsContinuous, which reads the table of kinds, before it asks whether the edition has that
    // table: IndexOutOfRangeException.
    [Fact]
    public void The_2026_edition_is_not_covered_and_says_why()
    {
        var rules = RuleSet.For(EditionId.Nec2026);
        Determination<BranchCircuitDesign> found = BranchCircuit.Design(rules, Sample.Cable(Sample.Watts(LoadKind.Kiln, 11_500, duty: LoadDuty.Continuous)));
        Determination<ConductorLimitsResult> limits = ConductorLimits.Determine(rules, Sample.Limits(ConductorSize.Awg6, Sample.Cable(Sample.Amperes(LoadKind.Other, 1))));
        foreach (Determination determination in new Determination[] { found, limits })
        {
            Assert.Equal(DeterminationStatus.NotCovered, determination.Status);
            Assert.NotEmpty(determination.NotCovered!.Reason);
            Assert.Null(determination.ValueOrNull);
            Assert.DoesNotContain(determination.Derivation, s => s.Cell is not null);
        }
    }

    [Fact] // Was a fault, for the same reason. A kiln of unknown duty must not fail on an edition whose kinds of load are not known.
    public void The_2026_edition_does_not_throw_for_an_unknown_duty() => Assert.Equal(
        DeterminationStatus.NotCovered,
        BranchCircuit.Design(RuleSet.For(EditionId.Nec2026), Sample.Cable(Sample.Watts(LoadKind.Kiln, 11_500))).Status);

    [Fact]
    public void Limits_name_what_is_missing()
    {
        ConductorLimitsRequest complete = Sample.Limits(ConductorSize.Awg6, Sample.Pipe(Sample.Amperes(LoadKind.Other, 1)));
        LimitsMissing("/severalReceptacles", complete with { SeveralReceptacles = null });
        LimitsMissing("/powerFactor", complete with { PowerFactor = null });
        LimitsMissing("/circuitRating", complete with { CircuitRating = null, Run = complete.Run with { LoadTermination = null } });
        LimitsMissing("/run/insulation", complete with { Run = complete.Run with { Insulation = null } });
        LimitsMissing("/run/route/0/length", complete with { Run = complete.Run with { Route = [complete.Run.Route[0] with { Length = null }] } });
    }

    private static void Missing(string path, BranchCircuitRequest request) =>
        Assert.Equal([path], BranchCircuit.Design(Sample.Rules2023, request).Needs.Select(n => n.Path));

    private static void LimitsMissing(string path, ConductorLimitsRequest request) =>
        Assert.Equal([path], ConductorLimits.Determine(Sample.Rules2023, request).Needs.Select(n => n.Path));

    private static BranchCircuitRequest Segment(BranchCircuitRequest request, RouteSegment segment) => request with { Route = [segment] };
}
