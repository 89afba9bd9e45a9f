namespace ElectroRules.Conductors;

/// <summary>The standard sizes of conductors, smallest first. A greater value is a larger conductor.</summary>
public enum ConductorSize
{
    /// <summary>18 AWG.</summary>
    Awg18 = 1,

    /// <summary>16 AWG.</summary>
    Awg16,

    /// <summary>14 AWG.</summary>
    Awg14,

    /// <summary>12 AWG.</summary>
    Awg12,

    /// <summary>10 AWG.</summary>
    Awg10,

    /// <summary>8 AWG.</summary>
    Awg8,

    /// <summary>6 AWG.</summary>
    Awg6,

    /// <summary>4 AWG.</summary>
    Awg4,

    /// <summary>3 AWG.</summary>
    Awg3,

    /// <summary>2 AWG.</summary>
    Awg2,

    /// <summary>1 AWG.</summary>
    Awg1,

    /// <summary>1/0 AWG.</summary>
    OneAught,

    /// <summary>2/0 AWG.</summary>
    TwoAught,

    /// <summary>3/0 AWG.</summary>
    ThreeAught,

    /// <summary>4/0 AWG.</summary>
    FourAught,

    /// <summary>250 kcmil.</summary>
    Kcmil250,

    /// <summary>300 kcmil.</summary>
    Kcmil300,

    /// <summary>350 kcmil.</summary>
    Kcmil350,

    /// <summary>400 kcmil.</summary>
    Kcmil400,

    /// <summary>500 kcmil.</summary>
    Kcmil500,

    /// <summary>600 kcmil.</summary>
    Kcmil600,

    /// <summary>700 kcmil.</summary>
    Kcmil700,

    /// <summary>750 kcmil.</summary>
    Kcmil750,

    /// <summary>800 kcmil.</summary>
    Kcmil800,

    /// <summary>900 kcmil.</summary>
    Kcmil900,

    /// <summary>1000 kcmil.</summary>
    Kcmil1000,

    /// <summary>1250 kcmil.</summary>
    Kcmil1250,

    /// <summary>1500 kcmil.</summary>
    Kcmil1500,

    /// <summary>1750 kcmil.</summary>
    Kcmil1750,

    /// <summary>2000 kcmil.</summary>
    Kcmil2000,
}

/// <summary>The written labels of conductor sizes.</summary>
public static class ConductorSizes
{
    private static readonly string[] Labels =
    [
        "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG", "4 AWG", "3 AWG", "2 AWG", "1 AWG",
        "1/0 AWG", "2/0 AWG", "3/0 AWG", "4/0 AWG",
        "250 kcmil", "300 kcmil", "350 kcmil", "400 kcmil", "500 kcmil", "600 kcmil", "700 kcmil", "750 kcmil", "800 kcmil", "900 kcmil",
        "1000 kcmil", "1250 kcmil", "1500 kcmil", "1750 kcmil", "2000 kcmil",
    ];

    /// <summary>All sizes, smallest first.</summary>
    public static IReadOnlyList<ConductorSize> All { get; } = Enum.GetValues<ConductorSize>();

    /// <summary>The label, for example "6 AWG", "1/0 AWG" or "250 kcmil".</summary>
    /// <exception cref="ArgumentOutOfRangeException">The size is not a defined one.</exception>
    public static string Label(this ConductorSize size) =>
        size is >= ConductorSize.Awg18 and <= ConductorSize.Kcmil2000
            ? Labels[(int)size - 1]
            : throw new ArgumentOutOfRangeException(nameof(size), size, "Not a defined conductor size.");

    /// <summary>Reads a label, letter for letter.</summary>
    /// <returns>Whether it is the label of a size.</returns>
    public static bool TryParse(string? label, out ConductorSize size)
    {
        int index = label is null ? -1 : Array.IndexOf(Labels, label);
        size = (ConductorSize)(index + 1);
        return index >= 0;
    }
}
