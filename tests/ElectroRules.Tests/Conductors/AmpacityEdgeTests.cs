using ElectroRules.Conductors;
using ElectroRules.Results;
using ElectroRules.Tests.Support;
using UnitsNet;

namespace ElectroRules.Tests.Conductors;

/// <summary>Values on both sides of the edges of the ampacity tables.</summary>
public class AmpacityEdgeTests
{
    private static readonly RuleSet Rules = RuleSet.For(EditionId.Nec2023);

    /// <summary>Physics: heat flows with the temperature difference and with the square of the current, so the factor is a square root.</summary>
    [Theory]
    [InlineData(InsulationType.Tw, 60)]
    [InlineData(InsulationType.Thw, 75)]
    [InlineData(InsulationType.Thhn, 90)]
    public void The_ambient_factor_changes_at_each_band(InsulationType insulation, int conductor)
    {
        for (int edge = 10; edge < conductor; edge += 5)
        {
            Assert.Equal(Expected(conductor, edge), Ambient(insulation, edge));
            Assert.Equal(Expected(conductor, edge), Ambient(insulation, edge - 4.9));
            if (edge + 5 < conductor)
            {
                Assert.Equal(Expected(conductor, edge + 5), Ambient(insulation, edge + 0.001));
            }
        }

        var tooHot = Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, Given.Raceway(insulation, Given.Segment(celsius: conductor - 4.9))));
        Answer.Refused(tooHot, "too-hot-for-insulation");
    }

    /// <summary>80, 70 and 45 percent: the sources of the published cases; the bands: https://www.buildmyowncabin.com/nec/nec2014_table310.15(b)(3)(a).html</summary>
    [Theory]
    [InlineData(2, 1)]
    [InlineData(3, 1)]
    [InlineData(4, 0.8)]
    [InlineData(6, 0.8)]
    [InlineData(7, 0.7)]
    [InlineData(9, 0.7)]
    [InlineData(10, 0.5)]
    [InlineData(20, 0.5)]
    [InlineData(21, 0.45)]
    [InlineData(30, 0.45)]
    [InlineData(31, 0.4)]
    [InlineData(40, 0.4)]
    [InlineData(41, 0.35)]
    [InlineData(1000, 0.35)]
    public void The_adjustment_changes_at_each_band(int count, double factor)
    {
        foreach (EditionId edition in VerifiedEditions.List)
        {
            RuleSet rules = RuleSet.For(edition);
            var answer = Ampacity.Determine(rules, Given.Ampacity(ConductorSize.Awg12, Given.Raceway(InsulationType.Thhn, Given.Segment(others: count - 2))));
            Assert.Equal(factor, Answer.Of(rules, answer).Segments[0].AdjustmentFactor.DecimalFractions);
        }
    }

    /// <summary>From memory: a raceway of 24 in or less needs no adjustment.</summary>
    [Theory]
    [InlineData(23.9, 1)]
    [InlineData(24, 1)]
    [InlineData(24.1, 0.5)]
    public void A_nipple_of_24_inches_needs_no_adjustment(double inches, double factor)
    {
        RouteSegment nipple = Given.Segment(others: 10) with { Length = Length.FromInches(inches) };
        Assert.Equal(factor, Adjustment(Given.Raceway(InsulationType.Thhn, nipple)));
        ConductorRun cable = Given.Nonmetallic(nipple with { Grouping = CableGrouping.Bundled });
        Assert.Equal(factor, Adjustment(cable));
    }

    [Fact]
    public void A_nipple_needs_no_adjustment_for_the_circuit_itself_either()
    {
        var wires = new CircuitWires { System = SupplySystem.Wye120V208V, Connection = CircuitConnection.ThreePhase, Neutral = true, MostlyNonlinear = true };
        Assert.Equal(1, Adjustment(Given.Raceway(InsulationType.Thhn, Given.Segment(feet: 2)) with { Wires = wires }));
        Assert.Equal(0.8, Adjustment(Given.Raceway(InsulationType.Thhn, Given.Segment(feet: 2.1)) with { Wires = wires }));
    }

    /// <summary>From memory, but for 30 °F at 6 in, which is a published case; 2017 and later: only closer than 7/8 in; the edge itself is taken on the safe side.</summary>
    [Theory]
    [InlineData(EditionId.Nec2014, 0, 60)]
    [InlineData(EditionId.Nec2014, 0.5, 60)]
    [InlineData(EditionId.Nec2014, 0.51, 40)]
    [InlineData(EditionId.Nec2014, 3.5, 40)]
    [InlineData(EditionId.Nec2014, 3.51, 30)]
    [InlineData(EditionId.Nec2014, 12, 30)]
    [InlineData(EditionId.Nec2014, 12.1, 25)]
    [InlineData(EditionId.Nec2014, 36, 25)]
    [InlineData(EditionId.Nec2014, 36.1, 0)]
    [InlineData(EditionId.Nec2017, 0, 60)]
    [InlineData(EditionId.Nec2017, 0.87, 60)]
    [InlineData(EditionId.Nec2017, 0.875, 60)]
    [InlineData(EditionId.Nec2017, 0.88, 0)]
    [InlineData(EditionId.Nec2020, 0.87, 60)]
    [InlineData(EditionId.Nec2020, 0.88, 0)]
    [InlineData(EditionId.Nec2023, 0.87, 60)]
    [InlineData(EditionId.Nec2023, 0.88, 0)]
    public void The_roof_adds_by_height_and_edition(EditionId edition, double inches, double fahrenheit)
    {
        RuleSet rules = RuleSet.For(edition);
        RouteSegment segment = Given.Segment() with { HeightAboveRoof = Length.FromInches(inches) };
        var answer = Ampacity.Determine(rules, Given.Ampacity(ConductorSize.Awg8, Given.Raceway(InsulationType.Thhn, segment)));
        Answer.Of(rules, answer);
        double[] added = [.. answer.Derivation.Where(s => s.Name == "adder-fahrenheit").Select(s => s.Value)];
        Assert.Equal(fahrenheit == 0 ? [] : [fahrenheit], added);

        // XHHW-2 is exempt: from memory.
        var exempt = Ampacity.Determine(rules, Given.Ampacity(ConductorSize.Awg8, Given.Raceway(InsulationType.Xhhw2, segment)));
        Assert.DoesNotContain(exempt.Derivation, s => s.Name == "adder-fahrenheit");
        Assert.Equal(55, Answer.Of(rules, exempt).CorrectedAmpacity.Amperes);
    }

    /// <summary>The lesser of 10 ft and a tenth of the rest: https://iaeimagazine.org/magazine/columns/focus-on-the-code/whats-happening-to-table-310-15b7/</summary>
    [Theory]
    [InlineData(100, 10, true)]
    [InlineData(100, 10.01, false)]
    [InlineData(50, 5, true)]
    [InlineData(50, 5.01, false)]
    [InlineData(1000, 10, true)]
    [InlineData(1000, 10.01, false)]
    [InlineData(99, 10, false)]
    public void A_short_portion_is_left_out(double cool, double hot, bool leftOut)
    {
        ConductorRun run = Given.Raceway(InsulationType.Thhn, Given.Segment(feet: cool), Given.Segment(feet: hot, celsius: 50));
        double ampacity = Answer.Of(Rules, Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, run))).CorrectedAmpacity.Amperes;
        Assert.Equal(leftOut ? 30 : 24.6, ampacity, 1e-9);
    }

    [Fact]
    public void Two_short_portions_are_taken_together()
    {
        ConductorRun run = Given.Raceway(
            InsulationType.Thhn, Given.Segment(feet: 6, celsius: 50), Given.Segment(feet: 500), Given.Segment(feet: 6, celsius: 50));
        Assert.Equal(24.6, Answer.Of(Rules, Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, run))).CorrectedAmpacity.Amperes, 1e-9);
    }

    /// <summary>Unmarked terminations, 60 °C up to 100 A: https://xenforo.mikeholt.com/goto/post?id=1531828</summary>
    [Theory]
    [InlineData(15, 60)]
    [InlineData(100, 60)]
    [InlineData(100.1, 75)]
    [InlineData(101, 75)]
    [InlineData(4000, 75)]
    public void Unmarked_terminations_go_by_the_rating_of_the_circuit(double rating, double column)
    {
        foreach (EditionId edition in VerifiedEditions.List)
        {
            RuleSet rules = RuleSet.For(edition);
            ConductorRun run = Given.Raceway(InsulationType.Thhn).Marked(null);
            ConductorAmpacity value = Answer.Of(rules, Ampacity.Determine(rules, Given.Ampacity(ConductorSize.Awg1, run, rating)));
            Assert.Equal(column, value.TerminationColumn.DegreesCelsius);
            Assert.Equal(column == 60 ? 110 : 130, value.Ampacity.Amperes);
        }
    }

    /// <summary>Two cables in a sealed opening need no adjustment, three do: https://forums.mikeholt.com/threads/clarification-on-334-80.2554040</summary>
    [Theory]
    [InlineData(1, 2, 1)]
    [InlineData(2, 4, 0.8)]
    public void More_than_two_cables_in_a_sealed_opening_are_adjusted(int otherCables, int others, double factor)
    {
        RouteSegment hole = Given.Segment(feet: 0.5, others: others) with { Grouping = CableGrouping.SealedOpening, OtherCables = otherCables };
        Assert.Equal(factor, Adjustment(Given.Nonmetallic(hole)));
        Assert.Equal(factor, Adjustment(Given.Nonmetallic(hole with { Grouping = CableGrouping.TouchingInInsulation })));
    }

    private static double Expected(int conductor, int edge) =>
        Math.Round(Math.Sqrt((conductor - edge) / (conductor - 30.0)), 2, MidpointRounding.AwayFromZero);

    private static double Ambient(InsulationType insulation, double celsius)
    {
        var answer = Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, Given.Raceway(insulation, Given.Segment(celsius: celsius))));
        return Answer.Of(Rules, answer).Segments[0].AmbientFactor.DecimalFractions;
    }

    private static double Adjustment(ConductorRun run) =>
        Answer.Of(Rules, Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, run))).Segments[0].AdjustmentFactor.DecimalFractions;
}
