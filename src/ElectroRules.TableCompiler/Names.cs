using System.Text;

namespace ElectroRules.TableCompiler;

/// <summary>The forms that keys and names may have, and the identifiers that are made from them.</summary>
internal static class Names
{
    /// <summary>The classes that hold the numbers of the columns and of the rows.</summary>
    internal const string ColumnClass = "Column";
    internal const string RowClass = "Row";

    /// <summary>Whether a text is a key such as "conductor.ambient-correction": lower-case words joined by dots and hyphens.</summary>
    internal static bool IsKey(string text)
    {
        bool startOfWord = true;
        foreach (char c in text)
        {
            if (c is '.' or '-')
            {
                if (startOfWord)
                {
                    return false;
                }

                startOfWord = true;
            }
            else if (char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c))
            {
                startOfWord = false;
            }
            else
            {
                return false;
            }
        }

        return !startOfWord && char.IsAsciiLetterLower(text[0]);
    }

    /// <summary>Whether a text is a code such as "ER2010".</summary>
    internal static bool IsRuleCode(string text) =>
        text.Length == 6 && text.StartsWith("ER", StringComparison.Ordinal) && text.AsSpan(2).IndexOfAnyExceptInRange('0', '9') < 0;

    /// <summary>Whether a text is an identifier such as "ContinuousLoad".</summary>
    internal static bool IsPascalCase(string text) =>
        text.Length > 0 && char.IsAsciiLetterUpper(text[0]) && text.All(char.IsAsciiLetterOrDigit);

    /// <summary>
    /// The identifier of a key: its words with capitals, all other signs left out; the prefix comes before a leading digit and before the
    /// name of the class itself.
    /// </summary>
    internal static string Identifier(string key, char prefix)
    {
        var name = new StringBuilder();
        bool startOfWord = true;
        foreach (char c in key)
        {
            if (!char.IsAsciiLetterOrDigit(c))
            {
                startOfWord = true;
                continue;
            }

            name.Append(startOfWord ? char.ToUpperInvariant(c) : c);
            startOfWord = false;
        }

        if (name.Length == 0 || char.IsAsciiDigit(name[0]) || name.Equals(ColumnClass) || name.Equals(RowClass))
        {
            name.Insert(0, prefix);
        }

        return name.ToString();
    }

    /// <summary>The class of a table.</summary>
    internal static string TableClass(string key) => Identifier(key, 'T') + "Table";
}
