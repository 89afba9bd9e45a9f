using System.Globalization;

namespace ElectroRules.Wording;

/// <summary>What must be said with every answer, in its order.</summary>
public static class Cautions
{
    /// <summary>The number of cautions.</summary>
    public const int Count = 7;

    /// <summary>All cautions, in the order in which they matter.</summary>
    public static IReadOnlyList<string> All(WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(words);
        var all = new string[Count];
        for (int i = 0; i < Count; i++)
        {
            all[i] = words.Text("caution." + (i + 1).ToString(CultureInfo.InvariantCulture));
        }

        return all;
    }
}
