using ElectroRules.Results;

namespace ElectroRules.Wording;

/// <summary>What a step or a finding rests on, in words.</summary>
public static class CitationWording
{
    /// <summary>Writes a citation, for example "NEC 2023 210.20(A)".</summary>
    public static string Write(Citation citation, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(citation);
        ArgumentNullException.ThrowIfNull(words);
        string text = Ground(citation, words);
        bool unsure = citation.Kind == CitationKind.Code && citation.Confidence is Confidence.Memory or Confidence.OlderEdition;
        return unsure ? words.Fill("citation.sure", ("citation", text), ("confidence", words.Text(Key(citation.Confidence)))) : text;
    }

    /// <summary>The name of an edition, for example "NEC 2023".</summary>
    public static string Edition(EditionId edition, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(words);
        return words.Text("edition." + edition.ToString());
    }

    internal static string WriteCell(Citation citation, TableCell cell, WordingSet words) => words.Fill(
        "citation.cell",
        ("citation", Ground(citation, words)),
        ("row", cell.Row),
        ("column", cell.Column),
        ("confidence", words.Text(Key(citation.Confidence))));

    private static string Ground(Citation citation, WordingSet words)
    {
        string edition = Edition(citation.Edition, words);
        if (citation.Kind == CitationKind.Code && citation.Section.Length == 0)
        {
            return words.Fill("citation.noSection", ("edition", edition));
        }

        return words.Fill(
            "citation." + citation.Kind.ToString(),
            ("edition", edition),
            ("section", citation.Section),
            ("amendment", citation.Amendment ?? string.Empty));
    }

    private static string Key(Confidence confidence) => "confidence." + confidence.ToString();
}
