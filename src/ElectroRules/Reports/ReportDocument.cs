using System.Globalization;
using ElectroRules.Reports.Answers;
using ElectroRules.Results;
using ElectroRules.Wording;

namespace ElectroRules.Reports;

/// <summary>Builds the blocks of a report from any determination. Formats only write blocks.</summary>
internal static class ReportDocument
{
    internal static List<ReportBlock> Build(Determination determination, WordingSet words)
    {
        var blocks = new List<ReportBlock>();
        IAnswer? answer = AnswerList.For(determination);
        blocks.Add(new HeadingBlock(1, words.Text(answer is null ? "report.title.other" : "title." + answer.Name)));
        blocks.Add(Head(determination, words));
        AddAnswer(blocks, determination, answer, words);
        AddList(blocks, words.Text("report.findings"), Findings(determination, words));
        AddList(blocks, words.Text("report.needs"), [.. determination.Needs.Select(n => FindingWording.Write(n, words))]);
        if (determination.NotCovered is { } reason)
        {
            blocks.Add(new HeadingBlock(2, words.Text("report.notCovered")));
            blocks.Add(new ParagraphBlock(FindingWording.Write(reason, words)));
        }

        AddDerivation(blocks, determination.Derivation, words);
        AddList(blocks, words.Text("report.assumptions"), Assumptions(determination, words));
        AddList(blocks, words.Text("report.cautions"), Cautions.All(words));
        return blocks;
    }

    private static PairsBlock Head(Determination determination, WordingSet words)
    {
        Stamp stamp = determination.Stamp;
        string amendments = stamp.Amendments.Count == 0 ? words.Text("word.none") : string.Join(", ", stamp.Amendments);
        return new PairsBlock(
        [
            new LabelledValue(words.Text("report.status"), words.Text("status." + determination.Status.ToString())),
            new LabelledValue(words.Text("report.edition"), CitationWording.Edition(stamp.Edition, words)),
            new LabelledValue(words.Text("report.amendments"), amendments),
            new LabelledValue(words.Text("report.data"), stamp.DataVersion),
            new LabelledValue(words.Text("report.library"), stamp.LibraryVersion),
        ]);
    }

    private static void AddAnswer(List<ReportBlock> blocks, Determination determination, IAnswer? answer, WordingSet words)
    {
        if (determination.ValueOrNull is not { } value)
        {
            return;
        }

        blocks.Add(new HeadingBlock(2, words.Text("report.answer")));
        if (answer is null)
        {
            blocks.Add(new ParagraphBlock(words.Text("report.noRenderer")));
            return;
        }

        var writer = new AnswerWriter(words, answer.Name);
        answer.Write(value, writer);
        foreach (Step step in determination.Derivation)
        {
            if (step.Operation == StepOperation.Rejected)
            {
                writer.AddLimitText(StepWording.Body(determination.Derivation, step, words));
            }
        }

        writer.AddTo(blocks);
    }

    private static string[] Findings(Determination determination, WordingSet words) =>
    [
        .. determination.Findings
            .OrderByDescending(f => f.Hazard)
            .ThenBy(f => f.Standing)
            .Select(f => FindingWording.Write(f, words)),
    ];

    private static void AddDerivation(List<ReportBlock> blocks, Derivation derivation, WordingSet words)
    {
        if (derivation.Count == 0)
        {
            return;
        }

        var lines = new string[derivation.Count];
        for (int i = 0; i < lines.Length; i++)
        {
            lines[i] = StepWording.Write(derivation, i, words);
        }

        blocks.Add(new HeadingBlock(2, words.Text("report.derivation")));
        blocks.Add(new ParagraphBlock(words.Text("report.rounding")));
        blocks.Add(new LinesBlock(lines));
    }

    private static string[] Assumptions(Determination determination, WordingSet words) =>
    [
        .. determination.Assumptions
            .Where(a => a.Origin == AssumptionOrigin.CodeDefault)
            .Select(a => determination.Derivation[a.Step])
            .Select(s => words.Fill(
                "report.assumption",
                ("step", (s.Index + 1).ToString(CultureInfo.InvariantCulture)),
                ("name", StepWording.Name(s, words)),
                ("value", StepWording.Value(s, words)))),
    ];

    private static void AddList(List<ReportBlock> blocks, string heading, IReadOnlyList<string> items)
    {
        if (items.Count > 0)
        {
            blocks.Add(new HeadingBlock(2, heading));
            blocks.Add(new ListBlock(items));
        }
    }
}
