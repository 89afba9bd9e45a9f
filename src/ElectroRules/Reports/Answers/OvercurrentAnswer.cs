using System.Globalization;
using ElectroRules.Overcurrent;

namespace ElectroRules.Reports.Answers;

internal static class OvercurrentAnswer
{
    internal static void Write(OvercurrentSelection answer, AnswerWriter writer)
    {
        writer.Add(nameof(answer.Device), answer.Device.Rating);
        writer.Add(nameof(answer.Device.Kind), writer.Words.Text("deviceKind." + answer.Device.Kind.ToString()));
        writer.Add(nameof(answer.Device.Poles), answer.Device.Poles.ToString(CultureInfo.InvariantCulture));
        writer.Add(nameof(answer.Required), answer.Required);
        writer.Add(nameof(answer.Largest), answer.Largest is { } largest ? writer.Text(largest) : writer.Own("noLargest"));
        writer.Add(nameof(answer.Allowed), string.Join(", ", answer.Allowed.Select(writer.Text)));
    }
}
