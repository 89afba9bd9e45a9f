using ElectroRules.Amendments;

namespace ElectroRules.Tests.Amendments;

public class RuleSetDiffTests
{
    public static TheoryData<EditionId, EditionId> Pairs
    {
        get
        {
            var pairs = new TheoryData<EditionId, EditionId>();
            foreach (EditionId a in Editions.All)
            {
                foreach (EditionId b in Editions.All)
                {
                    pairs.Add(a, b);
                }
            }

            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(Pairs))]
    public void The_way_back_is_the_way_there_turned_round(EditionId a, EditionId b)
    {
        IReadOnlyList<RuleSetDifference> there = RuleSet.Diff(RuleSet.For(a), RuleSet.For(b));
        IReadOnlyList<RuleSetDifference> back = RuleSet.Diff(RuleSet.For(b), RuleSet.For(a));

        Assert.Equal(there.ToHashSet(), back.Select(d => d with { From = d.To, To = d.From }).ToHashSet());
        Assert.Equal(there, RuleSet.Diff(RuleSet.For(a), RuleSet.For(b)));
        Assert.Equal(there.Count, there.Distinct().Count());
        Assert.Equal(a == b, there.Count == 0);
    }

    [Fact]
    public void The_rooftop_table_lost_its_bands()
    {
        var cells = RuleSet.Diff(RuleSet.For(EditionId.Nec2014), RuleSet.For(EditionId.Nec2023))
            .Where(d => string.Equals(d.Key, "conductor.rooftop-adder", StringComparison.Ordinal)).ToList();

        Assert.Equal(
            [
                new(RuleSetDifferenceKind.Section, "conductor.rooftop-adder", "", "", "Table 310.15(B)(3)(c)", "310.15(B)(2)"),
                Cell("0.5", "60", ""), Cell("3.5", "40", ""), Cell("12", "30", ""), Cell("36", "25", ""), Cell("0.875", "", "60"),
            ],
            cells);

        static RuleSetDifference Cell(string row, string from, string to) =>
            new(RuleSetDifferenceKind.Cell, "conductor.rooftop-adder", row, "fahrenheit", from, to);
    }

    [Fact]
    public void An_absent_table_is_one_difference()
    {
        IReadOnlyList<RuleSetDifference> found = RuleSet.Diff(RuleSet.For(EditionId.Nec2023), RuleSet.For(EditionId.Nec2026));

        Assert.Equal(
            new RuleSetDifference(RuleSetDifferenceKind.Absence, "wiring.methods", "", "", "", "not verified for this edition"),
            Assert.Single(found, d => string.Equals(d.Key, "wiring.methods", StringComparison.Ordinal)));
        Assert.Contains(new RuleSetDifference(RuleSetDifferenceKind.RuleAbsence, "ER1010", "", "", "", "not verified for this edition"), found);
        Assert.DoesNotContain(found, d => string.Equals(d.Key, "ER1010", StringComparison.Ordinal) && d.Kind == RuleSetDifferenceKind.RuleSection);
    }

    [Fact]
    public void A_rule_that_moved_is_shown_with_both_sections() => Assert.Contains(
        new RuleSetDifference(RuleSetDifferenceKind.RuleSection, "ER1010", "", "", "210.19(A)(1), 210.20(A)", "210.19, 210.20(A)"),
        RuleSet.Diff(RuleSet.For(EditionId.Nec2020), RuleSet.For(EditionId.Nec2023)));

    [Fact]
    public void An_amendment_shows_as_its_cells_and_remarks() => Assert.Equal(
        [
            new(RuleSetDifferenceKind.Cell, "conductor.minimum-size", "copper", "size", "14 AWG", "12 AWG"),
            new(RuleSetDifferenceKind.Cell, "wiring.methods", "nonmetallicSheathedCable", "permitted", "1", "0"),
            new(RuleSetDifferenceKind.Cell, "wiring.methods", "metalCladCable", "wet", "", "1"),
            new(RuleSetDifferenceKind.Remark, "ER1010", "inspect-before-cover", "", "", "Ord. 12-9"),
        ],
        RuleSet.Diff(AmendmentSamples.Rules(), AmendmentSamples.Rules().With(AmendmentReader.Read(AmendmentSamples.Complete))));
}
