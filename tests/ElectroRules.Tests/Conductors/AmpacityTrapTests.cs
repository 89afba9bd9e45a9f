using ElectroRules.Conductors;
using ElectroRules.Tests.Support;

namespace ElectroRules.Tests.Conductors;

/// <summary>
/// Classic mistakes about ampacity: the answer of the novice must not come out.
/// The list of mistakes is common practice, no source; a published source stands beside a check that has one.
/// </summary>
public class AmpacityTrapTests
{
    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void The_90_degree_column_is_never_the_final_value(EditionId edition)
    {
        // Which column a termination allows: https://xenforo.mikeholt.com/goto/post?id=1531828
        ConductorRun run = Given.Raceway(InsulationType.Thhn);
        Assert.Equal(115, Usable(edition, ConductorSize.Awg2, run));
        Assert.Equal(115, Usable(edition, ConductorSize.Awg2, run.Marked(TerminationRating.C90)));
        Assert.Equal(95, Usable(edition, ConductorSize.Awg2, run.Marked(TerminationRating.C60)));
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void One_end_at_60_degrees_holds_the_whole(EditionId edition)
    {
        ConductorRun run = Given.Raceway(InsulationType.Thhn) with { LoadTermination = TerminationRating.C60 };
        ConductorRun other = Given.Raceway(InsulationType.Thhn) with { SupplyTermination = TerminationRating.C60 };
        Assert.Equal(95, Usable(edition, ConductorSize.Awg2, run));
        Assert.Equal(95, Usable(edition, ConductorSize.Awg2, other));
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void Correction_starts_from_the_insulation_and_not_from_the_terminations(EditionId edition)
    {
        // Four 12 AWG THHN: 24 A, not 0.8 of 25 A. https://forums.mikeholt.com/threads/derating-adjusment.111900/
        Assert.Equal(24, Usable(edition, ConductorSize.Awg12, Given.Raceway(InsulationType.Thhn, Given.Segment(others: 2))), 1e-9);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void A_hot_attic_leaves_12_AWG_nonmetallic_cable_its_20_amperes(EditionId edition)
    {
        // 30 A x 0.87 = 26.1 A, held to 20 A by the cable; not 0.82 of 20 A. Common practice, no source.
        ConductorAmpacity value = Of(edition, ConductorSize.Awg12, Given.Nonmetallic(Given.Segment(celsius: 45)));
        Assert.Equal(20, value.Ampacity.Amperes);
        Assert.Equal(0.87, value.Segments[0].AmbientFactor.DecimalFractions);
        Assert.Equal(AmpacityLimit.Cable, value.Limit);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void Twelve_cables_in_a_sealed_hole_leave_13_and_a_half_amperes(EditionId edition)
    {
        // 24 conductors: 45 percent, the factor published at http://www.ecmweb.com/quizzes/code-quiz-6
        RouteSegment hole = Given.Segment(others: 22) with { Grouping = CableGrouping.SealedOpening, OtherCables = 11 };
        Assert.Equal(13.5, Usable(edition, ConductorSize.Awg12, Given.Nonmetallic(hole)), 1e-9);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void A_sealed_hole_cannot_be_left_out_as_a_short_portion(EditionId edition)
    {
        // The exception is barred there: https://forums.mikeholt.com/threads/clarification-on-334-80.2554040
        RouteSegment hole = Given.Segment(feet: 0.5, others: 22) with { Grouping = CableGrouping.SealedOpening, OtherCables = 11 };
        Assert.Equal(13.5, Usable(edition, ConductorSize.Awg12, Given.Nonmetallic(Given.Segment(), hole)), 1e-9);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void The_ground_is_not_counted_with_cables_together(EditionId edition)
    {
        // Three cables of 12/2: 6 conductors, 80 percent and not 70.
        RouteSegment bundle = Given.Segment(others: 4) with { Grouping = CableGrouping.Bundled };
        Assert.Equal(0.8, Of(edition, ConductorSize.Awg12, Given.Nonmetallic(bundle)).Segments[0].AdjustmentFactor.DecimalFractions);
    }

    /// <summary>Counting examples: https://forums.mikeholt.com/threads/310-15-e-1.2562113</summary>
    [Theory]
    [InlineData(SupplySystem.SplitPhase120V240V, CircuitConnection.LineToNeutral, true, null, 2)]
    [InlineData(SupplySystem.SplitPhase120V240V, CircuitConnection.LineToLine, true, null, 2)]
    [InlineData(SupplySystem.SplitPhase120V240V, CircuitConnection.LineToLine, false, null, 2)]
    [InlineData(SupplySystem.Wye120V208V, CircuitConnection.LineToLine, true, null, 3)]
    [InlineData(SupplySystem.Wye277V480V, CircuitConnection.LineToLine, true, null, 3)]
    [InlineData(SupplySystem.Wye120V208V, CircuitConnection.LineToLine, false, null, 2)]
    [InlineData(SupplySystem.Wye120V208V, CircuitConnection.ThreePhase, false, null, 3)]
    [InlineData(SupplySystem.Wye120V208V, CircuitConnection.ThreePhase, true, false, 3)]
    [InlineData(SupplySystem.Wye120V208V, CircuitConnection.ThreePhase, true, true, 4)]
    [InlineData(SupplySystem.HighLegDelta120V240V, CircuitConnection.LineToLine, true, null, 2)]
    public void A_neutral_counts_by_what_it_carries(SupplySystem system, CircuitConnection connection, bool neutral, bool? nonlinear, int count)
    {
        var wires = new CircuitWires { System = system, Connection = connection, Neutral = neutral, MostlyNonlinear = nonlinear };
        foreach (EditionId edition in VerifiedEditions.List)
        {
            RuleSet rules = RuleSet.For(edition);
            var answer = Ampacity.Determine(rules, Given.Ampacity(ConductorSize.Awg12, Given.Raceway(InsulationType.Thhn) with { Wires = wires }));
            Assert.Equal(count > 3 ? 0.8 : 1, Answer.Of(rules, answer).Segments[0].AdjustmentFactor.DecimalFractions);
            Assert.Equal(count, Answer.Step(answer, "own-count"));
        }
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void The_neutrals_of_two_two_wire_circuits_both_count(EditionId edition)
    {
        ConductorAmpacity value = Of(edition, ConductorSize.Awg12, Given.Raceway(InsulationType.Thhn, Given.Segment(others: 2)));
        Assert.Equal(0.8, value.Segments[0].AdjustmentFactor.DecimalFractions);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void The_factor_for_continuous_load_and_the_correction_are_two_tests(EditionId edition)
    {
        // 32 A continuous, 6 conductors: 40 A at 60 degree terminations and 32 A after correction, not 32 x 1.25 / 0.8 = 50 A.
        RuleSet rules = RuleSet.For(edition);
        ConductorRun run = Given.Raceway(InsulationType.Thhn, Given.Segment(others: 4)).Marked(TerminationRating.C60);
        SmallestConductorResult value = Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(run, 32)));
        Assert.Equal(ConductorSize.Awg8, value.Size);
        Assert.Equal((40, 32), (value.RequiredAtTerminations.Amperes, value.RequiredAfterCorrection.Amperes));
    }

    [Theory]
    [InlineData(ConductorSize.Awg6, false)]
    [InlineData(ConductorSize.Awg1, false)]
    [InlineData(ConductorSize.OneAught, true)]
    public void Small_conductors_are_not_run_in_parallel(ConductorSize size, bool allowed)
    {
        foreach (EditionId edition in VerifiedEditions.List)
        {
            RuleSet rules = RuleSet.For(edition);
            var answer = Ampacity.Determine(rules, Given.Ampacity(size, Given.Raceway(InsulationType.Thhn) with { ParallelSets = 2 }));
            if (allowed)
            {
                Assert.Equal(300, Answer.Of(rules, answer).Ampacity.Amperes);
            }
            else
            {
                Answer.Refused(answer, "too-small-for-parallel");
            }
        }
    }

    [Fact]
    public void The_smallest_conductors_in_parallel_are_never_below_one_aught()
    {
        RuleSet rules = RuleSet.For(EditionId.Nec2023);
        var answer = SmallestConductor.Determine(rules, Given.Smallest(Given.Raceway(InsulationType.Thhn) with { ParallelSets = 2 }, 0, 100));
        Assert.Equal(ConductorSize.OneAught, Answer.Of(rules, answer).Size);
    }

    private static double Usable(EditionId edition, ConductorSize size, ConductorRun run) => Of(edition, size, run).Ampacity.Amperes;

    private static ConductorAmpacity Of(EditionId edition, ConductorSize size, ConductorRun run)
    {
        RuleSet rules = RuleSet.For(edition);
        return Answer.Of(rules, Ampacity.Determine(rules, Given.Ampacity(size, run)));
    }
}
