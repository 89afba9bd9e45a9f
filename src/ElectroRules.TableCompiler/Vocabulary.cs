namespace ElectroRules.TableCompiler;

/// <summary>The closed lists that the data files may use. A test holds them equal to those of the library.</summary>
internal static class Vocabulary
{
    internal const string SizeAxis = "size";
    internal const string SizeUnit = "size";
    internal const string YesNoUnit = "yes-no";
    internal const string OpenBand = "inf";
    internal const char NoValueLetter = '-';
    private const string NextUp = "NextUp";
    private const string BandUpperEdge = "BandUpperEdge";

    /// <summary>The letters of confirmation, and the one for "no value".</summary>
    internal const string Letters = "tofdmp-";

    /// <summary>The editions by year, with the member that stands for each.</summary>
    internal static IReadOnlyList<(string Code, string Member)> Editions { get; } =
    [
        ("2014", "Nec2014"),
        ("2017", "Nec2017"),
        ("2020", "Nec2020"),
        ("2023", "Nec2023"),
        ("2026", "Nec2026"),
    ];

    internal static IReadOnlyList<(string Code, string Member)> Units { get; } =
    [
        ("1", "One"),
        ("count", "Count"),
        ("A", "Ampere"),
        ("V", "Volt"),
        ("W", "Watt"),
        ("VA", "VoltAmpere"),
        ("Cel", "Celsius"),
        ("K", "Kelvin"),
        ("ft", "Foot"),
        ("in", "Inch"),
        ("Ohm", "Ohm"),
        ("Ohm/kft", "OhmPerThousandFeet"),
        ("cmil", "CircularMil"),
        ("Ohm.cmil/ft", "OhmCircularMilPerFoot"),
        (SizeUnit, "ConductorSize"),
        (YesNoUnit, "YesNo"),
    ];

    internal static IReadOnlyList<(string Code, string Member)> Lookups { get; } =
    [
        ("exact", "Exact"),
        ("next-up", NextUp),
        ("band-upper-edge", BandUpperEdge),
    ];

    internal static IReadOnlyList<(string Code, string Member)> Directions { get; } =
    [
        ("neither", "Neither"),
        ("up", "Up"),
        ("down", "Down"),
    ];

    internal static IReadOnlyList<(string Code, string Member)> RuleKinds { get; } =
    [
        ("code", "Code"),
        ("practice", "CommonPractice"),
        ("physics", "Physics"),
    ];

    internal static IReadOnlyList<(string Code, string Member)> Confidences { get; } =
    [
        ("two-sources", "TwoSources"),
        ("one-source", "OneSource"),
        ("formula", "Formula"),
        ("older-edition", "OlderEdition"),
        ("memory", "Memory"),
        ("practice", "Practice"),
    ];

    /// <summary>The conductor sizes, smallest first; the ordinal of a size is its place here, from 1.</summary>
    internal static IReadOnlyList<string> Sizes { get; } =
    [
        "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "3 AWG", "2 AWG", "1 AWG",
        "1/0 AWG", "2/0 AWG", "3/0 AWG", "4/0 AWG",
        "250 kcmil", "300 kcmil", "350 kcmil", "400 kcmil", "500 kcmil", "600 kcmil", "700 kcmil", "750 kcmil",
        "800 kcmil", "900 kcmil", "1000 kcmil", "1250 kcmil", "1500 kcmil", "1750 kcmil", "2000 kcmil",
    ];

    /// <summary>The member that stands for a code; null when the list has no such code.</summary>
    internal static string? MemberOf(IReadOnlyList<(string Code, string Member)> list, string code)
    {
        foreach ((string known, string member) in list)
        {
            if (string.Equals(known, code, StringComparison.Ordinal))
            {
                return member;
            }
        }

        return null;
    }

    /// <summary>Whether a look-up (by its member) goes by the numbers of the rows.</summary>
    internal static bool IsByNumber(string lookup) => lookup is NextUp or BandUpperEdge;

    /// <summary>The codes of a list, for a message.</summary>
    internal static string CodesOf(IReadOnlyList<(string Code, string Member)> list) => string.Join(", ", list.Select(entry => entry.Code));

    /// <summary>The ordinal of a size, from 1; 0 when there is no such size.</summary>
    internal static int OrdinalOf(string size)
    {
        for (int i = 0; i < Sizes.Count; i++)
        {
            if (string.Equals(Sizes[i], size, StringComparison.Ordinal))
            {
                return i + 1;
            }
        }

        return 0;
    }
}
