using System.Text;
using ElectroRules.Results;
using ElectroRules.Wording;

namespace ElectroRules.Reports;

/// <summary>A determination as plain text, in lines of at most 110 characters that end in a line feed.</summary>
public static class PlainTextReport
{
    private const int Width = 110;

    /// <summary>Writes a report of any determination.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static string Write(Determination determination, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(determination);
        ArgumentNullException.ThrowIfNull(words);
        var text = new StringBuilder();
        foreach (ReportBlock block in ReportDocument.Build(determination, words))
        {
            if (text.Length > 0 && block is HeadingBlock)
            {
                text.Append('\n');
            }

            Write(text, block);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, ReportBlock block)
    {
        switch (block)
        {
            case HeadingBlock heading:
                string line = heading.Level == 1 ? heading.Text.ToUpperInvariant() : heading.Text;
                Wrap(text, string.Empty, line);
                text.Append(heading.Level == 1 ? '=' : '-', Math.Min(Width, line.Length)).Append('\n');
                break;
            case ParagraphBlock paragraph:
                Wrap(text, string.Empty, paragraph.Text);
                break;
            case PairsBlock pairs:
                int width = pairs.Pairs.Max(p => p.Label.Length) + 2;
                foreach (LabelledValue pair in pairs.Pairs)
                {
                    Wrap(text, (pair.Label + ":").PadRight(width), pair.Value);
                }

                break;
            case ListBlock list:
                foreach (string item in list.Items)
                {
                    Wrap(text, "* ", item);
                }

                break;
            case LinesBlock lines:
                int digits = lines.Lines.Max(l => l.IndexOf('.', StringComparison.Ordinal));
                foreach (string item in lines.Lines)
                {
                    int dot = item.IndexOf('.', StringComparison.Ordinal);
                    Wrap(text, string.Concat(item[..dot].PadLeft(digits), ". "), item[(dot + 2)..]);
                }

                break;
            case TableBlock table:
                WriteTable(text, table);
                break;
        }
    }

    private static void WriteTable(StringBuilder text, TableBlock table)
    {
        text.Append('\n');
        var widths = new int[table.Header.Count];
        for (int i = 0; i < widths.Length; i++)
        {
            widths[i] = Math.Max(table.Header[i].Length, table.Rows.Count == 0 ? 0 : table.Rows.Max(r => r[i].Length));
        }

        WriteRow(text, table.Header, widths);
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            WriteRow(text, row, widths);
        }
    }

    private static void WriteRow(StringBuilder text, IReadOnlyList<string> row, int[] widths) =>
        text.Append(string.Join("  ", row.Select((cell, i) => cell.PadRight(widths[i]))).TrimEnd()).Append('\n');

    /// <summary>Writes a text after a mark; further lines are indented by the width of the mark.</summary>
    private static void Wrap(StringBuilder text, string mark, string content)
    {
        text.Append(mark);
        int at = mark.Length;
        bool first = true;
        foreach (string word in content.Split(' '))
        {
            if (!first && at + 1 + word.Length > Width)
            {
                TrimLineEnd(text);
                text.Append('\n').Append(' ', mark.Length);
                at = mark.Length;
                first = true;
            }

            if (first && word.Length == 0)
            {
                continue;
            }

            text.Append(first ? string.Empty : " ").Append(word);
            at += word.Length + (first ? 0 : 1);
            first = false;
        }

        TrimLineEnd(text);
        text.Append('\n');
    }

    private static void TrimLineEnd(StringBuilder text)
    {
        while (text.Length > 0 && text[^1] == ' ')
        {
            text.Length--;
        }
    }
}
