using ElectroRules.Results;

namespace KilnWorkshop;

/// <summary>In which two answers to one request differ: the sections they cite and the numbers.</summary>
internal static class Differences
{
    public static IEnumerable<string> Between(Determination older, Determination newer)
    {
        foreach (string moved in older.Derivation.Zip(newer.Derivation).Where(Moved).Select(Describe).Distinct(StringComparer.Ordinal))
        {
            yield return moved;
        }

        bool same = older.Derivation.Select(step => step.Value).SequenceEqual(newer.Derivation.Select(step => step.Value));
        yield return same ? "Every number is the same." : "The numbers differ.";
    }

    private static bool Moved((Step Older, Step Newer) pair) =>
        !string.Equals(pair.Older.Citation.Section, pair.Newer.Citation.Section, StringComparison.Ordinal);

    private static string Describe((Step Older, Step Newer) pair) =>
        $"{pair.Newer.Rule.Code} {pair.Newer.Rule.Slug}: {pair.Older.Citation.Section} in {(int)pair.Older.Citation.Edition}, {pair.Newer.Citation.Section} in {(int)pair.Newer.Citation.Edition}";
}
