using System.Globalization;
using ElectroRules.Reports;
using ElectroRules.Results;
using ElectroRules.Tests.Tables;
using ElectroRules.Wording;

namespace ElectroRules.Tests.Reports;

public sealed class ReportTests
{
    private static readonly WordingSet English = WordingSet.English;

    [Fact]
    public void The_samples_have_every_status() =>
        Assert.Equal(
            Enum.GetValues<DeterminationStatus>().Order(),
            ReportSamples.All().Select(d => d.Status).Distinct().Order());

    [Fact]
    public void Every_kind_of_answer_is_among_the_samples_and_has_a_summary()
    {
        foreach (ElectroRules.Reports.Answers.IAnswer answer in ElectroRules.Reports.Answers.AnswerList.All)
        {
            Assert.Contains(ReportSamples.All(), d => d.Status == DeterminationStatus.Determined && answer.Handles(d));
        }

        Assert.All(ReportSamples.All(), d => Assert.DoesNotContain(English.Text("report.noRenderer"), PlainTextReport.Write(d, English), StringComparison.Ordinal));
    }

    [Fact]
    public void Every_report_has_all_cautions_once()
    {
        foreach (Determination determination in ReportSamples.All())
        {
            string text = Unwrapped(PlainTextReport.Write(determination, English));
            string markdown = MarkdownReport.Write(determination, English);
            foreach (string caution in Cautions.All(English))
            {
                Assert.Equal(2, text.Split(caution).Length);
                Assert.Equal(2, markdown.Split(MarkdownReport.Escape(caution)).Length);
            }
        }
    }

    [Fact]
    public void Plain_text_keeps_to_its_width_and_ends_lines_neatly()
    {
        foreach (Determination determination in ReportSamples.All())
        {
            foreach (string line in PlainTextReport.Write(determination, English).Split('\n'))
            {
                Assert.True(line.Length <= 110, line);
                Assert.Equal(line.TrimEnd(), line);
                Assert.DoesNotContain('{', line);
                Assert.DoesNotMatch("(step|rule|finding|notCovered|need|remedy|column|method|limit|answer|report)[.][A-Za-z]", line);
            }
        }
    }

    [Fact]
    public void No_sentence_is_repeated()
    {
        foreach (Determination determination in ReportSamples.All())
        {
            string[] points = [.. ReportDocument.Build(determination, English).SelectMany(Texts)];
            Assert.Empty(points.GroupBy(p => p, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key));
        }
    }

    [Fact]
    public void Reports_do_not_depend_on_the_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string[] expected = [.. ReportSamples.All().Select(d => PlainTextReport.Write(d, English) + MarkdownReport.Write(d, English))];
        try
        {
            foreach (string name in new[] { "ar-SA", "de-DE", "tr-TR" })
            {
                CultureInfo.CurrentCulture = new CultureInfo(name);
                Assert.Equal(expected, ReportSamples.All().Select(d => PlainTextReport.Write(d, English) + MarkdownReport.Write(d, English)));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("a|b", "a\\|b")]
    [InlineData("<b>", "\\<b\\>")]
    [InlineData("*x* [y](z)", "\\*x\\* \\[y\\](z)")]
    [InlineData("one\ntwo", "one two")]
    public void Markdown_is_escaped(string text, string escaped) => Assert.Equal(escaped, MarkdownReport.Escape(text));

    [Fact]
    public void A_report_is_the_reviewed_file_byte_for_byte()
    {
        string path = Path.Combine(RepositoryFiles.Root, "tests", "ElectroRules.Tests", "Reports", "smallest-conductor.txt");
        string actual = WithoutVersions(PlainTextReport.Write(ReportSamples.Smallest(), English));
        Assert.Equal(File.ReadAllText(path), actual);
    }

    [Fact]
    public void Findings_stand_with_the_most_dangerous_first()
    {
        string text = Unwrapped(PlainTextReport.Write(ReportSamples.Device(ampacity: 30), English));
        Assert.Contains("Fix soon, against the code: The conductor cannot carry its load.", text, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Texts(ReportBlock block) => block switch
    {
        ParagraphBlock paragraph => [paragraph.Text],
        ListBlock list => list.Items,
        LinesBlock lines => lines.Lines,
        _ => [],
    };

    private static string WithoutVersions(string report) => string.Join(
        '\n',
        report.Split('\n').Where(l => !l.StartsWith("Data version", StringComparison.Ordinal) && !l.StartsWith("Library version", StringComparison.Ordinal)));

    private static string Unwrapped(string report) =>
        string.Join(' ', report.Split('\n').Select(l => l.Trim()));
}
