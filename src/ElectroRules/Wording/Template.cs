using System.Text;

namespace ElectroRules.Wording;

/// <summary>Texts with named placeholders in braces.</summary>
internal static class Template
{
    internal static string Fill(string text, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var result = new StringBuilder(text.Length + 32);
        int at = 0;
        while (at < text.Length)
        {
            int open = text.IndexOf('{', at);
            int close = open < 0 ? -1 : text.IndexOf('}', open);
            if (close < 0)
            {
                break;
            }

            result.Append(text, at, open - at);
            string name = text[(open + 1)..close];
            result.Append(Find(name, values) ?? text[open..(close + 1)]);
            at = close + 1;
        }

        return result.Append(text, at, text.Length - at).ToString();
    }

    internal static List<string> Placeholders(string text)
    {
        var names = new List<string>();
        int open = text.IndexOf('{', StringComparison.Ordinal);
        while (open >= 0)
        {
            int close = text.IndexOf('}', open);
            if (close < 0)
            {
                break;
            }

            names.Add(text[(open + 1)..close]);
            open = text.IndexOf('{', close);
        }

        return names;
    }

    private static string? Find(string name, ReadOnlySpan<(string Name, string Value)> values)
    {
        foreach ((string candidate, string value) in values)
        {
            if (string.Equals(candidate, name, StringComparison.Ordinal))
            {
                return value;
            }
        }

        return null;
    }
}
