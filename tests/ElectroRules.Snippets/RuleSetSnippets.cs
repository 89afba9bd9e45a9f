using ElectroRules.Amendments;
using ElectroRules.Circuits;
using ElectroRules.Results;

namespace ElectroRules.Snippets;

/// <summary>The examples of DEVELOPERS.md: amendments and editions.</summary>
public sealed class RuleSetSnippets
{
    [Fact]
    public void A_local_change_is_laid_over_an_edition()
    {
        #region amendment
        Amendment local = AmendmentReader.Read("""
            {
              "id": "hilltown-2024",
              "title": "Hilltown, local changes",
              "editions": ["2023"],
              "supersedes": [],
              "changes": [
                {"table": "conductor.minimum-size", "row": "copper", "column": "size", "expects": "14 AWG", "value": "12 AWG", "relaxes": false, "section": "Ord. 7-1"}
              ],
              "remarks": [
                {"rule": "ER1010", "code": "inspect-before-cover", "section": "Ord. 7-2"}
              ]
            }
            """);
        RuleSet rules = RuleSet.For(EditionId.Nec2023).With(local);
        #endregion

        Assert.Equal(["hilltown-2024"], rules.Stamp.Amendments);
        Assert.Equal(2, RuleSet.Diff(RuleSet.For(EditionId.Nec2023), rules).Count);
    }

    [Fact]
    public void A_wrong_expectation_is_an_error()
    {
        #region amendment-error
        CellChange change = CellChange.SmallestConductor("copper", expects: "12 AWG", size: "10 AWG", section: "Ord. 7-1");
        var local = new Amendment
        {
            Id = "hilltown-2024",
            Title = "Hilltown, local changes",
            Editions = [EditionId.Nec2023],
            Supersedes = [],
            Changes = [change],
            Remarks = [],
        };
        AmendmentException wrong = Assert.Throws<AmendmentException>(() => RuleSet.For(EditionId.Nec2023).With(local));
        string pointer = wrong.Errors[0].Pointer;
        // pointer is "/changes/0/expects"
        #endregion

        Assert.Equal("/changes/0/expects", pointer);
    }

    [Fact]
    public void Two_editions_are_compared()
    {
        #region editions
        RuleSet older = RuleSet.For(EditionId.Nec2020);
        RuleSet newer = RuleSet.For(EditionId.Nec2023);
        RuleSetDifference[] numbers = [.. RuleSet.Diff(older, newer).Where(d => d.Kind == RuleSetDifferenceKind.Cell)];
        RuleSetDifference[] moved = [.. RuleSet.Diff(older, newer).Where(d => d.Kind == RuleSetDifferenceKind.RuleSection)];
        #endregion

        Assert.NotEmpty(moved);
        Assert.DoesNotContain(numbers, d => d.Key == "conductor.ampacity");
    }

    [Fact]
    public void A_method_can_be_forbidden()
    {
        var local = new Amendment
        {
            Id = "hilltown-2024",
            Title = "Hilltown, local changes",
            Editions = [EditionId.Nec2023],
            Supersedes = [],
            Changes = [CellChange.ForbidMethod("nonmetallicSheathedCable", "Ord. 7-3")],
            Remarks = [],
        };
        Determination<BranchCircuitDesign> answer = BranchCircuit.Design(RuleSet.For(EditionId.Nec2023).With(local), Kiln.Known);

        Assert.Contains(answer.Findings, f => f.Standing == CodeStanding.Violation && f.Citation.Section == "Ord. 7-3");
    }
}
