namespace ElectroRules.TableCompiler.Model;

/// <summary>One table as its file says it, read and checked. Vocabulary words are held as the members that stand for them.</summary>
internal sealed class TableData
{
    internal required string Key { get; init; }

    internal required string Title { get; init; }

    internal required string Unit { get; init; }

    internal required string Stricter { get; init; }

    internal required string RowName { get; init; }

    internal required string Lookup { get; init; }

    internal required string ColumnName { get; init; }

    internal required IReadOnlyList<string> Columns { get; init; }

    internal required IReadOnlyList<BlockData> Blocks { get; init; }

    internal required IReadOnlyList<EditionText> Absent { get; init; }

    internal required IReadOnlyList<SourceData> Sources { get; init; }

    /// <summary>Whether the rows get names in the code: found by key, not the sizes, and the same in every block.</summary>
    internal bool HasRowNames =>
        !Vocabulary.IsByNumber(Lookup)
        && RowName != Vocabulary.SizeAxis
        && Blocks.Count > 0
        && Blocks.All(block => block.Rows.Select(row => row.Key).SequenceEqual(Blocks[0].Rows.Select(row => row.Key), StringComparer.Ordinal));
}

/// <summary>The values that hold for one or more editions.</summary>
internal sealed record BlockData(
    string Id,
    int Line,
    IReadOnlyList<EditionText> Editions,
    IReadOnlyList<RowData> Rows,
    IReadOnlyList<SourceReference> Sources);

/// <summary>A source as a block names it.</summary>
internal sealed record SourceReference(string Id, int Line);

/// <summary>One row: its number (for a look-up by number), its values (NaN for none) and their letters.</summary>
internal sealed record RowData(string Key, int Line, double Edge, IReadOnlyList<double> Values, string Letters);

/// <summary>An edition (the member that stands for it) with its section, or with the reason why it has none.</summary>
internal sealed record EditionText(string Edition, string Text);

/// <summary>Where values were seen.</summary>
internal sealed record SourceData(string Id, int Line, string Kind, string Title, string Address);
