using ElectroRules.Results;

namespace ElectroRules.Tables;

/// <summary>How a row of a table is found.</summary>
public enum RowLookup
{
    /// <summary>By its key, letter for letter.</summary>
    Exact,

    /// <summary>The first row whose number is not below the value asked for.</summary>
    NextUp,

    /// <summary>The row of the band that the value falls in; the number of a row is the upper edge of its band, and belongs to it.</summary>
    BandUpperEdge,
}

/// <summary>In which direction a changed value is the stricter one.</summary>
public enum StricterDirection
{
    /// <summary>Neither; every change must be marked as one that relaxes.</summary>
    Neither,

    /// <summary>A greater value is stricter.</summary>
    Up,

    /// <summary>A smaller value is stricter.</summary>
    Down,
}

/// <summary>Where the values of a block were seen.</summary>
/// <param name="Id">The id within the table.</param>
/// <param name="Kind">What kind of source: for example "adopted code", "textbook", "maker", "trade magazine", "forum", "memory", "physics".</param>
/// <param name="Title">What it is.</param>
/// <param name="Address">Where it was seen; empty when it has no address.</param>
public sealed record TableSource(string Id, string Kind, string Title, string Address);

/// <summary>Everything the library holds of one table, all editions, as the table compiler writes it.</summary>
internal sealed class TableDefinition
{
    internal required string Key { get; init; }

    internal required string Title { get; init; }

    internal required QuantityUnit Unit { get; init; }

    internal required string RowName { get; init; }

    internal required RowLookup Lookup { get; init; }

    internal required string ColumnName { get; init; }

    internal required string[] Columns { get; init; }

    internal required StricterDirection Stricter { get; init; }

    internal required TableBlock[] Blocks { get; init; }

    internal required EditionReason[] Absent { get; init; }

    internal required TableSource[] Sources { get; init; }
}

/// <summary>The values that hold for one or more editions.</summary>
internal sealed class TableBlock
{
    internal required string Id { get; init; }

    internal required EditionSection[] Editions { get; init; }

    internal required string[] Rows { get; init; }

    /// <summary>The numbers of the rows for a look-up by number; empty for an exact one. An open last band is positive infinity.</summary>
    internal required double[] Edges { get; init; }

    /// <summary>Row after row; NaN where the table has no value.</summary>
    internal required double[] Values { get; init; }

    /// <summary>One letter a value: how it was confirmed. See <see cref="ConfidenceLetters"/>.</summary>
    internal required string Confirmation { get; init; }

    /// <summary>The ids of the sources.</summary>
    internal required string[] Sources { get; init; }
}

/// <summary>The section in which an edition has the table.</summary>
internal readonly record struct EditionSection(EditionId Edition, string Section);

/// <summary>Why an edition has no such table here.</summary>
internal readonly record struct EditionReason(EditionId Edition, string Reason);

/// <summary>The letters that the data files use for how a value was confirmed.</summary>
internal static class ConfidenceLetters
{
    internal static Confidence Read(char letter) => letter switch
    {
        't' => Confidence.TwoSources,
        'o' => Confidence.OneSource,
        'f' => Confidence.Formula,
        'd' => Confidence.OlderEdition,
        'm' or '-' => Confidence.Memory,
        'p' => Confidence.Practice,
        _ => throw new ArgumentOutOfRangeException(nameof(letter), letter, "Not a confirmation letter."),
    };
}
