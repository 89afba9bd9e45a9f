namespace ElectroRules;

/// <summary>The editions that the library knows.</summary>
public static class Editions
{
    /// <summary>All editions, oldest first.</summary>
    public static IReadOnlyList<EditionId> All { get; } =
        [EditionId.Nec2014, EditionId.Nec2017, EditionId.Nec2020, EditionId.Nec2023, EditionId.Nec2026];

    /// <summary>Whether the library knows an edition.</summary>
    public static bool IsKnown(EditionId edition)
    {
        foreach (EditionId known in All)
        {
            if (known == edition)
            {
                return true;
            }
        }

        return false;
    }
}
