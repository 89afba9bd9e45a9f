using System.Globalization;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Snippets;

/// <summary>The examples of docs/first-answer.md and docs/reading-a-determination.md.</summary>
public sealed class DeterminationSnippets
{
    [Fact]
    public void The_first_answer()
    {
        #region first-answer
        RuleSet rules = RuleSet.For(EditionId.Nec2023);
        var request = new EquipmentGroundingRequest
        {
            Device = ElectricCurrent.FromAmperes(60),
            Material = ConductorMaterial.Copper,
            InstalledSize = ConductorSize.Awg4,
            InstalledMaterial = ConductorMaterial.Copper,
            SmallestAfterCorrection = ConductorSize.Awg4,
            SmallestBeforeCorrection = ConductorSize.Awg4,
        };

        Determination<EquipmentGroundingResult> answer = EquipmentGrounding.Size(rules, request);
        string size = answer.Value.Size.Label();
        // size is "10 AWG"
        #endregion

        Assert.Equal("10 AWG", size);
    }

    [Fact]
    public void Every_status_is_handled()
    {
        Determination<BranchCircuitDesign> answer = BranchCircuit.Design(RuleSet.For(EditionId.Nec2023), Kiln.UnknownDuty);

        #region status
        string text = answer.Status switch
        {
            DeterminationStatus.Determined => answer.Value.Conductors.Size.Label(),
            DeterminationStatus.NeedsInput => string.Join("; ", answer.Needs.Select(need => $"{need.Path}: {string.Join(" or ", need.StillPossible)}")),
            _ => $"{answer.NotCovered!.Code}: {answer.NotCovered.Detail}",
        };
        // text is "/load/duty: 50 A, 6 AWG or 60 A, 4 AWG"
        #endregion

        Assert.Equal("/load/duty: 50 A, 6 AWG or 60 A, 4 AWG", text);
    }

    [Fact]
    public void Steps_can_be_redone_with_a_pencil()
    {
        Determination<BranchCircuitDesign> answer = BranchCircuit.Design(RuleSet.For(EditionId.Nec2023), Kiln.Known);

        #region steps
        var lines = new List<string>();
        foreach (Step step in answer.Derivation)
        {
            string value = step.Value.ToString("0.###", CultureInfo.InvariantCulture);
            lines.Add($"{step.Index}: {step.Name} = {value} {step.Unit.Code()} ({step.Operation} of {string.Join(", ", step.Inputs)}) [{step.Citation.Section}]");
        }
        #endregion

        Assert.Equal(answer.Derivation.Count, lines.Count);
        Assert.Contains(lines, l => l.Contains("= 59.896 A (Product of", StringComparison.Ordinal));
    }

    [Fact]
    public void A_finding_has_two_axes()
    {
        Determination<BranchCircuitDesign> answer = BranchCircuit.Design(RuleSet.For(EditionId.Nec2023), Kiln.Known);

        #region findings
        Finding[] stop = [.. answer.Findings.Where(finding => finding.Hazard == Hazard.Danger)];
        Finding[] against = [.. answer.Findings.Where(finding => finding.Standing == CodeStanding.Violation)];
        #endregion

        Assert.Empty(stop);
        Assert.Empty(against);
    }

    [Fact]
    public void Values_from_memory_can_be_found()
    {
        Determination<BranchCircuitDesign> answer = BranchCircuit.Design(RuleSet.For(EditionId.Nec2023), Kiln.Known);

        #region confidence
        Step[] toCheck = [.. answer.Derivation.Where(step => step.Citation.Confidence == Confidence.Memory)];
        #endregion

        Assert.All(toCheck, step => Assert.NotEmpty(step.Citation.Section));
    }

    [Fact]
    public void The_2026_edition_is_not_answered_from_older_numbers()
    {
        RuleSet rules = RuleSet.For(EditionId.Nec2026);
        Determination<EquipmentGroundingResult> answer = EquipmentGrounding.Size(rules, new EquipmentGroundingRequest
        {
            Device = ElectricCurrent.FromAmperes(60),
            Material = ConductorMaterial.Copper,
            InstalledSize = ConductorSize.Awg4,
            InstalledMaterial = ConductorMaterial.Copper,
        });

        Assert.Equal(DeterminationStatus.NotCovered, answer.Status);
        Assert.StartsWith("not verified", answer.NotCovered!.Reason, StringComparison.Ordinal);
    }
}
