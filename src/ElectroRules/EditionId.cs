namespace ElectroRules;

/// <summary>The editions of the National Electrical Code that the library knows. The value is the year of the edition.</summary>
/// <remarks>An edition is always named by the caller; nothing in the library picks one by date.</remarks>
public enum EditionId
{
    /// <summary>The 2014 edition.</summary>
    Nec2014 = 2014,

    /// <summary>The 2017 edition.</summary>
    Nec2017 = 2017,

    /// <summary>The 2020 edition.</summary>
    Nec2020 = 2020,

    /// <summary>The 2023 edition.</summary>
    Nec2023 = 2023,

    /// <summary>The 2026 edition: only what could be verified; everything else answers "not covered" and says so.</summary>
    Nec2026 = 2026,
}
