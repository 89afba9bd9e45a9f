using ElectroRules.Results;

namespace ElectroRules.Wording;

/// <summary>Findings, missing facts and reasons in words.</summary>
public static class FindingWording
{
    /// <summary>Writes a finding: how dangerous it is, its standing, what is wrong, the numbers, the remedy and the citation.</summary>
    public static string Write(Finding finding, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(words);
        var parts = new List<string>(6) { Head(finding, words), Text(finding, words) };
        if (Numbers(finding, words) is { } numbers)
        {
            parts.Add(numbers);
        }

        if (finding.Remedy is { } remedy)
        {
            parts.Add(words.Text("remedy." + remedy));
        }

        if (finding.Path.Length > 0)
        {
            parts.Add(words.Fill("finding.where", ("path", finding.Path)));
        }

        if (finding.Citation.Confidence == Confidence.Memory)
        {
            parts.Add(words.Text("finding.memory"));
        }

        parts.Add($"[{CitationWording.Write(finding.Citation, words)}]");
        return string.Join(' ', parts);
    }

    /// <summary>What is wrong or worth knowing, without the numbers.</summary>
    public static string Text(Finding finding, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(words);
        string key = "finding." + finding.Rule.Slug + "." + finding.Code;
        return words.Has(key) ? words.Text(key) : words.Fill("finding.local", ("code", finding.Code.Replace('-', ' ')));
    }

    /// <summary>Writes a missing fact as a question, with the answers that are still possible.</summary>
    public static string Write(Need need, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(need);
        ArgumentNullException.ThrowIfNull(words);
        string question = words.Fill("need.where", ("question", words.Text(KeyOf(need))), ("path", need.Path));
        return need.StillPossible.Count == 0
            ? question
            : $"{question} {words.Fill("need.stillPossible", ("answers", string.Join(", ", need.StillPossible)))}";
    }

    /// <summary>Writes why there is no answer.</summary>
    public static string Write(NotCoveredReason reason, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(reason);
        ArgumentNullException.ThrowIfNull(words);
        var parts = new List<string>(3) { words.Text("notCovered." + reason.Code) };
        if (reason.Detail.Length > 0)
        {
            parts.Add(words.Fill("notCovered.about", ("detail", reason.Detail)));
        }

        // The code of the finding says it already in words.
        if (reason.Reason.Length > 0 && reason.Reason.Contains(' ', StringComparison.Ordinal))
        {
            parts.Add(words.Fill("notCovered.reason", ("reason", reason.Reason)));
        }

        return string.Join(' ', parts);
    }

    internal static string KeyOf(Need need) => "need." + need.Path[(need.Path.LastIndexOf('/') + 1)..];

    private static string Head(Finding finding, WordingSet words) =>
        $"{words.Text("hazard." + finding.Hazard.ToString())}, {words.Text("standing." + finding.Standing.ToString())}:";

    private static string? Numbers(Finding finding, WordingSet words)
    {
        if (finding.Measured is not { } measured)
        {
            return null;
        }

        bool percent = measured.Unit == QuantityUnit.One && IsDrop(finding);
        if (finding.Limit is not { } limit)
        {
            return words.Fill("finding.measuredOnly", ("measured", NumberWording.Write(words, measured.Value, measured.Unit, percent)));
        }

        (string value, string against) = NumberWording.Compared(words, measured.Value, limit.Value, measured.Unit, percent);
        return words.Fill("finding.measured", ("measured", value), ("limit", against));
    }

    /// <summary>A drop is measured as a part of the source voltage.</summary>
    private static bool IsDrop(Finding finding) => finding.Rule.Slug.StartsWith("voltage-drop.", StringComparison.Ordinal);
}
