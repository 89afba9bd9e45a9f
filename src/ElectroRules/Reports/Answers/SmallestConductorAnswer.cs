using ElectroRules.Conductors;

namespace ElectroRules.Reports.Answers;

internal static class SmallestConductorAnswer
{
    internal static void Write(SmallestConductorResult answer, AnswerWriter writer)
    {
        writer.Add(nameof(answer.Size), answer.Size);
        writer.Add(nameof(answer.Ampacity), answer.Ampacity);
        writer.Add(nameof(answer.RequiredAtTerminations), answer.RequiredAtTerminations);
        writer.Add(nameof(answer.RequiredAfterCorrection), answer.RequiredAfterCorrection);
    }
}
