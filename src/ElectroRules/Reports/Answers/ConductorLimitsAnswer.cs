using ElectroRules.Circuits;

namespace ElectroRules.Reports.Answers;

internal static class ConductorLimitsAnswer
{
    internal static void Write(ConductorLimitsResult answer, AnswerWriter writer)
    {
        writer.Add(nameof(answer.Ampacity), answer.Ampacity);
        writer.Add(nameof(answer.LargestDevice), answer.LargestDevice);
        writer.Add(nameof(answer.MostNoncontinuousLoad), answer.MostNoncontinuousLoad);
        writer.Add(nameof(answer.MostContinuousLoad), answer.MostContinuousLoad);
        writer.Add(nameof(answer.LongestRun), answer.LongestRun);
    }
}
