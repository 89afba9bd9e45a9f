using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Writing;

/// <summary>Writes the class of one table.</summary>
internal sealed class TableWriter
{
    private readonly TableData _table;
    private readonly Code _code = Code.NewFile();

    private TableWriter(TableData table)
    {
        _table = table;
    }

    internal static string Write(TableData table, int index)
    {
        var writer = new TableWriter(table);
        writer.WriteClass(index);
        return writer._code.ToString();
    }

    private void WriteClass(int index)
    {
        _code.Line($"/// <summary>The table {_table.Key}.</summary>");
        _code.Line($"internal static class {Names.TableClass(_table.Key)}");
        _code.Open();
        _code.Line($"internal const int Index = {Code.Literal(index)};");
        _code.Line();
        foreach (BlockData block in _table.Blocks)
        {
            WriteValues(block);
        }

        WriteDefine();
        _code.Line();
        WriteNames(Names.ColumnClass, 'C', _table.Columns);
        if (_table.HasRowNames)
        {
            _code.Line();
            WriteNames(Names.RowClass, 'R', [.. _table.Blocks[0].Rows.Select(row => row.Key)]);
        }

        _code.Close();
    }

    private void WriteNames(string name, char prefix, IReadOnlyList<string> keys)
    {
        _code.Line($"internal static class {name}");
        _code.Open();
        for (int i = 0; i < keys.Count; i++)
        {
            _code.Line($"internal const int {Names.Identifier(keys[i], prefix)} = {Code.Literal(i)};");
        }

        _code.Close();
    }

    private void WriteValues(BlockData block)
    {
        _code.Line($"private static ReadOnlySpan<double> {BlockName(block)} =>");
        _code.Open("[");
        foreach (RowData row in block.Rows)
        {
            _code.Line($"{string.Join(", ", row.Values.Select(Code.Literal))}, // {row.Key.ReplaceLineEndings(" ")}");
        }

        _code.Close("];");
        _code.Line();
    }

    private void WriteDefine()
    {
        _code.Line("internal static TableDefinition Define() => new()");
        _code.Open();
        _code.Line($"Key = {Code.Literal(_table.Key)},");
        _code.Line($"Title = {Code.Literal(_table.Title)},");
        _code.Line($"Unit = QuantityUnit.{_table.Unit},");
        _code.Line($"RowName = {Code.Literal(_table.RowName)},");
        _code.Line($"Lookup = RowLookup.{_table.Lookup},");
        _code.Line($"ColumnName = {Code.Literal(_table.ColumnName)},");
        _code.Line($"Columns = [{string.Join(", ", _table.Columns.Select(Code.Literal))}],");
        _code.Line($"Stricter = StricterDirection.{_table.Stricter},");
        _code.Line("Blocks =");
        _code.Open("[");
        foreach (BlockData block in _table.Blocks)
        {
            WriteBlock(block);
        }

        _code.Close("],");
        Entries.WriteList(_code, "Absent", _table.Absent.Select(Entries.Reason));
        Entries.WriteList(_code, "Sources", _table.Sources.Select(Source));
        _code.Close("};");
    }

    private void WriteBlock(BlockData block)
    {
        IEnumerable<string> edges = Vocabulary.IsByNumber(_table.Lookup) ? block.Rows.Select(row => Code.Literal(row.Edge)) : [];
        _code.Line("new()");
        _code.Open();
        _code.Line($"Id = {Code.Literal(block.Id)},");
        Entries.WriteList(_code, "Editions", block.Editions.Select(Entries.Section));
        _code.Line($"Rows = [{string.Join(", ", block.Rows.Select(row => Code.Literal(row.Key)))}],");
        _code.Line($"Edges = [{string.Join(", ", edges)}],");
        _code.Line($"Values = {BlockName(block)}.ToArray(),");
        _code.Line($"Confirmation = {Code.Literal(string.Concat(block.Rows.Select(row => row.Letters)))},");
        _code.Line($"Sources = [{string.Join(", ", block.Sources.Select(source => Code.Literal(source.Id)))}],");
        _code.Close("},");
    }

    private static string Source(SourceData source) =>
        $"new({Code.Literal(source.Id)}, {Code.Literal(source.Kind)}, {Code.Literal(source.Title)}, {Code.Literal(source.Address)})";

    private static string BlockName(BlockData block) => "Block" + Names.Identifier(block.Id, 'B');
}
