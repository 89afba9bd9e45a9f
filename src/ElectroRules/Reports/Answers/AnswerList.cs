using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Overcurrent;
using ElectroRules.Results;

namespace ElectroRules.Reports.Answers;

/// <summary>Every kind of answer that reports can write: one line each.</summary>
internal static class AnswerList
{
    internal static IReadOnlyList<IAnswer> All { get; } =
    [
        new Answer<ConductorAmpacity>(nameof(ConductorAmpacity), AmpacityAnswer.Write),
        new Answer<SmallestConductorResult>(nameof(SmallestConductorResult), SmallestConductorAnswer.Write),
        new Answer<OvercurrentSelection>(nameof(OvercurrentSelection), OvercurrentAnswer.Write),
        new Answer<VoltageDropResult>(nameof(VoltageDropResult), VoltageDropAnswer.Write),
        new Answer<EquipmentGroundingResult>(nameof(EquipmentGroundingResult), EquipmentGroundingAnswer.Write),
        new Answer<BranchCircuitDesign>(nameof(BranchCircuitDesign), BranchCircuitAnswer.Write),
        new Answer<ConductorLimitsResult>(nameof(ConductorLimitsResult), ConductorLimitsAnswer.Write),
    ];

    internal static IAnswer? For(Determination determination)
    {
        foreach (IAnswer answer in All)
        {
            if (answer.Handles(determination))
            {
                return answer;
            }
        }

        return null;
    }
}
