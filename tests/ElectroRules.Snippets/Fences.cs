namespace ElectroRules.Snippets;

/// <summary>A fenced block of a document.</summary>
/// <param name="Place">The document and the line.</param>
/// <param name="Language">The word after the fence.</param>
/// <param name="Source">The file that the line before the fence names, as in "&lt;!-- from src/… --&gt;"; empty when it names none.</param>
/// <param name="Text">What stands in it.</param>
internal sealed record Fence(string Place, string Language, string Source, string Text);

/// <summary>Reads fences of documents and regions of C# files.</summary>
internal static class Fences
{
    private const string Mark = "```";
    private const string From = "<!-- from ";

    public static List<Fence> In(string document)
    {
        var found = new List<Fence>();
        string[] lines = Repository.Lines(document);
        int open = -1;
        for (int i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith(Mark, StringComparison.Ordinal))
            {
                continue;
            }

            if (open < 0)
            {
                open = i;
                continue;
            }

            string before = open > 0 ? lines[open - 1] : string.Empty;
            string source = before.StartsWith(From, StringComparison.Ordinal) ? before[From.Length..].Replace("-->", string.Empty, StringComparison.Ordinal).Trim() : string.Empty;
            found.Add(new Fence($"{document}:{open + 1}", lines[open][Mark.Length..].Trim(), source, string.Join('\n', lines[(open + 1)..i])));
            open = -1;
        }

        return open < 0 ? found : throw new InvalidOperationException($"{document}:{open + 1}: the fence is not closed.");
    }

    /// <summary>The regions of this project, by name. A region stands in a test method, so that it is executed.</summary>
    public static Dictionary<string, string> Regions()
    {
        var regions = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string file in Repository.SnippetFiles())
        {
            string[] lines = Repository.Lines(file);
            int open = -1;
            for (int i = 0; i < lines.Length; i++)
            {
                string line = lines[i].Trim();
                if (line.StartsWith("#region ", StringComparison.Ordinal))
                {
                    open = i;
                }
                else if (line == "#endregion")
                {
                    regions.Add(lines[open].Trim()["#region ".Length..], Unindent(lines[(open + 1)..i]));
                }
            }
        }

        return regions;
    }

    public static string Unindent(IReadOnlyCollection<string> lines)
    {
        int indent = lines.Where(l => l.Trim().Length > 0).Select(l => l.Length - l.TrimStart().Length).DefaultIfEmpty(0).Min();
        return string.Join('\n', lines.Select(l => l.Length >= indent ? l[indent..] : string.Empty)).Trim('\n');
    }
}
