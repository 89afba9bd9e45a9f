using ElectroRules.Circuits;
using ElectroRules.Results;

namespace ElectroRules.Snippets;

/// <summary>What the README promises of the editions.</summary>
public sealed class PromiseTests
{
    [Fact]
    public void A_design_under_2026_is_not_covered()
    {
        foreach (BranchCircuitRequest request in new[] { Kiln.Known, Kiln.UnknownDuty })
        {
            Determination<BranchCircuitDesign> answer = BranchCircuit.Design(RuleSet.For(EditionId.Nec2026), request);
            Assert.Equal(DeterminationStatus.NotCovered, answer.Status);
            Assert.StartsWith("not verified", answer.NotCovered!.Reason, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_design_is_answered_under_every_older_edition()
    {
        foreach (EditionId edition in Editions.All.Where(e => e != EditionId.Nec2026))
        {
            Assert.Equal(DeterminationStatus.Determined, BranchCircuit.Design(RuleSet.For(edition), Kiln.Known).Status);
        }
    }
}
