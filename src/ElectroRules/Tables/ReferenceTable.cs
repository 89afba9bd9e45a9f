using ElectroRules.Internal;
using ElectroRules.Results;

namespace ElectroRules.Tables;

/// <summary>A table as it stands in one rule set: one edition, with its amendments laid over it.</summary>
public sealed class ReferenceTable
{
    private readonly TableBlock? _block;
    private readonly double[] _values;
    private readonly CellAmendment?[]? _amended;
    private readonly int _columns;

    internal ReferenceTable(TableDefinition definition, int index, EditionId edition)
    {
        Definition = definition;
        Index = index;
        Edition = edition;
        _columns = definition.Columns.Length;
        foreach (TableBlock block in definition.Blocks)
        {
            foreach (EditionSection place in block.Editions)
            {
                if (place.Edition == edition)
                {
                    _block = block;
                    Section = place.Section;
                }
            }
        }

        _values = _block?.Values ?? [];
        Edges = _block?.Edges ?? [];
        AbsentReason = _block is null ? ReasonOf(definition, edition) : null;
    }

    private ReferenceTable(ReferenceTable basis, double[] values, CellAmendment?[] amended)
    {
        Definition = basis.Definition;
        Index = basis.Index;
        Edition = basis.Edition;
        Section = basis.Section;
        Edges = basis.Edges;
        _block = basis._block;
        _columns = basis._columns;
        _values = values;
        _amended = amended;
    }

    /// <summary>The permanent key, for example "conductor.ampacity".</summary>
    public string Key => Definition.Key;

    /// <summary>What the table holds, in our own words.</summary>
    public string Title => Definition.Title;

    /// <summary>The unit of the values.</summary>
    public QuantityUnit Unit => Definition.Unit;

    /// <summary>The edition.</summary>
    public EditionId Edition { get; }

    /// <summary>The section of the edition in which the table stands; empty when it is absent.</summary>
    public string Section { get; } = string.Empty;

    /// <summary>Why the table is absent in this edition; null when it is present.</summary>
    public string? AbsentReason { get; }

    /// <summary>Whether the table has values in this edition.</summary>
    public bool IsPresent => _block is not null;

    /// <summary>How a row is found.</summary>
    public RowLookup Lookup => Definition.Lookup;

    /// <summary>The keys of the rows, in order; empty when the table is absent.</summary>
    public IReadOnlyList<string> Rows => _block?.Rows ?? [];

    /// <summary>The keys of the columns, in order.</summary>
    public IReadOnlyList<string> Columns => Definition.Columns;

    /// <summary>Where the values were seen.</summary>
    public IReadOnlyList<TableSource> Sources => Definition.Sources;

    internal TableDefinition Definition { get; }

    internal int Index { get; }

    internal double[] Edges { get; }

    internal int RowCount => _block?.Rows.Length ?? 0;

    /// <summary>The value of a cell; null when the table has none there.</summary>
    /// <param name="row">The key of the row.</param>
    /// <param name="column">The key of the column.</param>
    /// <exception cref="ArgumentException">There is no such row or column.</exception>
    public double? Value(string row, string column)
    {
        double value = _values[CellOf(row, column)];
        return double.IsNaN(value) ? null : value;
    }

    /// <summary>How the value of a cell was confirmed.</summary>
    /// <param name="row">The key of the row.</param>
    /// <param name="column">The key of the column.</param>
    /// <exception cref="ArgumentException">There is no such row or column.</exception>
    public Confidence ConfidenceOf(string row, string column) => ConfidenceAt(CellOf(row, column));

    /// <summary>The id of the amendment that set a cell; null when the edition's own value stands.</summary>
    /// <param name="row">The key of the row.</param>
    /// <param name="column">The key of the column.</param>
    /// <exception cref="ArgumentException">There is no such row or column.</exception>
    public string? AmendedBy(string row, string column) => AmendedByAt(CellOf(row, column));

    /// <summary>The value at a place; NaN when the table has none there.</summary>
    internal double At(int row, int column) => _values[(row * _columns) + column];

    internal int CellIndex(int row, int column) => (row * _columns) + column;

    internal double AtCell(int cell) => _values[cell];

    internal string? AmendedByAt(int cell) => _amended?[cell]?.Amendment;

    internal Confidence ConfidenceAt(int cell) => ConfidenceLetters.Read(_block!.Confirmation[cell]);

    internal TableCell CellName(int cell) => new(Key, _block!.Rows[cell / _columns], Definition.Columns[cell % _columns]);

    internal Citation CiteCell(int cell)
    {
        if (_amended?[cell] is { } amended)
        {
            return new Citation(CitationKind.Amendment, Edition, amended.Section, Confidence.OneSource, amended.Amendment);
        }

        Confidence confidence = ConfidenceAt(cell);
        CitationKind kind = confidence == Confidence.Practice ? CitationKind.CommonPractice : CitationKind.Code;
        return new Citation(kind, Edition, kind == CitationKind.Code ? Section : string.Empty, confidence, amendment: null);
    }

    /// <summary>The first row whose edge is not below a value; -1 when the value lies above the last edge.</summary>
    internal int RowNotBelow(double value)
    {
        double[] edges = Edges;
        for (int i = 0; i < edges.Length; i++)
        {
            if (Limit.AtLeast(edges[i], value))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>The same table with some cells changed.</summary>
    internal ReferenceTable With(IReadOnlyDictionary<int, CellAmendment> changes)
    {
        double[] values = (double[])_values.Clone();
        CellAmendment?[] amended = _amended is null ? new CellAmendment?[values.Length] : (CellAmendment?[])_amended.Clone();
        foreach ((int cell, CellAmendment change) in changes)
        {
            values[cell] = change.Value;
            amended[cell] = change;
        }

        return new ReferenceTable(this, values, amended);
    }

    internal int RowOf(string key) => _block is null ? -1 : Array.IndexOf(_block.Rows, key);

    internal int ColumnOf(string key) => Array.IndexOf(Definition.Columns, key);

    private int CellOf(string row, string column)
    {
        int r = RowOf(row);
        if (r < 0)
        {
            throw new ArgumentException($"Table {Key} has no row '{row}' in {Edition}.", nameof(row));
        }

        int c = ColumnOf(column);
        return c >= 0
            ? CellIndex(r, c)
            : throw new ArgumentException($"Table {Key} has no column '{column}'.", nameof(column));
    }

    private static string ReasonOf(TableDefinition definition, EditionId edition)
    {
        foreach (EditionReason absent in definition.Absent)
        {
            if (absent.Edition == edition)
            {
                return absent.Reason;
            }
        }

        return "not recorded";
    }
}
