using System.Text;
using ElectroRules.Results;
using ElectroRules.Wording;

namespace ElectroRules.Reports;

/// <summary>A determination as Markdown; all text is escaped, so nothing in a request can become markup.</summary>
public static class MarkdownReport
{
    private const string Special = "\\`*_{}[]<>#+-!|~&";

    /// <summary>Writes a report of any determination.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static string Write(Determination determination, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(determination);
        ArgumentNullException.ThrowIfNull(words);
        var text = new StringBuilder();
        foreach (ReportBlock block in ReportDocument.Build(determination, words))
        {
            if (text.Length > 0)
            {
                text.Append('\n');
            }

            Write(text, block);
        }

        return text.ToString();
    }

    internal static string Escape(string content)
    {
        var text = new StringBuilder(content.Length + 16);
        foreach (char c in content)
        {
            if (Special.Contains(c, StringComparison.Ordinal))
            {
                text.Append('\\');
            }

            text.Append(c is '\r' or '\n' ? ' ' : c);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, ReportBlock block)
    {
        switch (block)
        {
            case HeadingBlock heading:
                text.Append('#', heading.Level).Append(' ').Append(Escape(heading.Text)).Append('\n');
                break;
            case ParagraphBlock paragraph:
                text.Append(Escape(paragraph.Text)).Append('\n');
                break;
            case PairsBlock pairs:
                foreach (LabelledValue pair in pairs.Pairs)
                {
                    text.Append("- **").Append(Escape(pair.Label)).Append(":** ").Append(Escape(pair.Value)).Append('\n');
                }

                break;
            case ListBlock list:
                foreach (string item in list.Items)
                {
                    text.Append("- ").Append(Escape(item)).Append('\n');
                }

                break;
            case LinesBlock lines:
                foreach (string line in lines.Lines)
                {
                    text.Append(Escape(line)).Append('\n');
                }

                break;
            case TableBlock table:
                WriteRow(text, table.Header);
                text.Append('|').Insert(text.Length, " --- |", table.Header.Count).Append('\n');
                foreach (IReadOnlyList<string> row in table.Rows)
                {
                    WriteRow(text, row);
                }

                break;
        }
    }

    private static void WriteRow(StringBuilder text, IReadOnlyList<string> row) =>
        text.Append("| ").AppendJoin(" | ", row.Select(Escape)).Append(" |\n");
}
