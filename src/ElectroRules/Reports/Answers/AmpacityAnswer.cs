using System.Globalization;
using ElectroRules.Conductors;

namespace ElectroRules.Reports.Answers;

internal static class AmpacityAnswer
{
    internal static void Write(ConductorAmpacity answer, AnswerWriter writer)
    {
        writer.Add(nameof(answer.Ampacity), answer.Ampacity);
        writer.AddLimit("limit." + answer.Limit.ToString());
        writer.Add(nameof(answer.CorrectedAmpacity), answer.CorrectedAmpacity);
        writer.Add(nameof(answer.TerminationAmpacity), answer.TerminationAmpacity);
        writer.Add(nameof(answer.TerminationColumn), answer.TerminationColumn);
        var rows = new List<IReadOnlyList<string>>();
        foreach (SegmentAmpacityResult segment in answer.Segments)
        {
            rows.Add(
            [
                (rows.Count + 1).ToString(CultureInfo.InvariantCulture),
                writer.Text(segment.AmbientFactor),
                writer.Text(segment.AdjustmentFactor),
                writer.Text(segment.Ampacity),
            ]);
        }

        writer.AddTable(["segment", nameof(SegmentAmpacityResult.AmbientFactor), nameof(SegmentAmpacityResult.AdjustmentFactor), "segmentAmpacity"], rows);
    }
}
