using ElectroRules.Conductors;

namespace ElectroRules.Reports.Answers;

internal static class VoltageDropAnswer
{
    internal static void Write(VoltageDropResult answer, AnswerWriter writer)
    {
        writer.Add(nameof(answer.Drop), answer.Drop);
        writer.AddPercent(nameof(answer.Share), answer.Share);
        writer.Add(nameof(answer.VoltageAtLoad), answer.VoltageAtLoad);
        writer.AddPercent(nameof(answer.LimitShare), answer.LimitShare);
        writer.Add(nameof(answer.LongestRun), answer.LongestRun);
        writer.Add(nameof(answer.SmallestSize), answer.SmallestSize);
    }
}
