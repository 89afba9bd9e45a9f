using ElectroRules.Tables;

namespace ElectroRules.Amendments;

/// <summary>One changed cell of a reference table.</summary>
/// <remarks>
/// A wiring method is forbidden by a change of table "wiring.methods", column "permitted", from 1 to 0; a smallest conductor is a
/// change in table "conductor.minimum-size".
/// </remarks>
public sealed record CellChange
{
    /// <summary>The key of the table, for example "conductor.minimum-size".</summary>
    public required string Table { get; init; }

    /// <summary>The key of the row.</summary>
    public required string Row { get; init; }

    /// <summary>The key of the column.</summary>
    public required string Column { get; init; }

    /// <summary>
    /// The value of the edition as published, in the unit of the table; null when the cell has none. It stays the published value
    /// when another amendment is superseded. In a table of conductor sizes: the place of the size in the list of sizes, from 1.
    /// </summary>
    public required double? Expects { get; init; }

    /// <summary>The new value, in the unit of the table; finite and not negative. In a table of conductor sizes as <see cref="Expects"/>.</summary>
    public required double Value { get; init; }

    /// <summary>Whether it may allow more than the edition does. Required in a table that has no stricter direction and where the edition has no value.</summary>
    public required bool Relaxes { get; init; }

    /// <summary>The place in the local law. Not empty.</summary>
    public required string Section { get; init; }

    /// <summary>A change that forbids a wiring method.</summary>
    /// <param name="method">The key of the method, for example "nonmetallicSheathedCable".</param>
    /// <param name="section">The place in the local law.</param>
    public static CellChange ForbidMethod(string method, string section) => new()
    {
        Table = "wiring.methods",
        Row = method,
        Column = "permitted",
        Expects = 1,
        Value = 0,
        Relaxes = false,
        Section = section,
    };

    /// <summary>A change that raises the smallest conductor of a material.</summary>
    /// <param name="material">The key of the material, for example "copper".</param>
    /// <param name="expects">The published size, for example "14 AWG".</param>
    /// <param name="size">The new size, for example "12 AWG".</param>
    /// <param name="section">The place in the local law.</param>
    /// <exception cref="ArgumentException">A size is not in the list of sizes.</exception>
    public static CellChange SmallestConductor(string material, string expects, string size, string section) => new()
    {
        Table = "conductor.minimum-size",
        Row = material,
        Column = "size",
        Expects = Size(expects, nameof(expects)),
        Value = Size(size, nameof(size)),
        Relaxes = false,
        Section = section,
    };

    private static double Size(string label, string name)
    {
        ArgumentNullException.ThrowIfNull(label, name);
        int ordinal = SizeLabels.Ordinal(label);
        return ordinal > 0 ? ordinal : throw new ArgumentException($"There is no size '{label}'.", name);
    }
}
