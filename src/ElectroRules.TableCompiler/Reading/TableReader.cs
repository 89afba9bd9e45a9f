using ElectroRules.TableCompiler.Json;
using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Reading;

/// <summary>Reads and checks one table file.</summary>
internal sealed class TableReader
{
    private const string Up = "up";
    private const string Down = "down";
    private readonly FileErrors _errors;
    private readonly EditionReader _editions;

    private TableReader(FileErrors errors)
    {
        _errors = errors;
        _editions = new EditionReader(errors);
    }

    /// <summary>The table; to be used only when no error was reported.</summary>
    internal static TableData? Read(byte[] bytes, FileErrors errors)
    {
        DataNode? root = JsonTree.Read(bytes, errors);
        ObjectReader? table = root is null ? null : ObjectReader.Open(root, "a table", errors);
        return table is null ? null : new TableReader(errors).Read(table);
    }

    private TableData Read(ObjectReader table)
    {
        string key = ReadKey(table);
        string title = table.TakeText("title")?.Text ?? string.Empty;
        string unit = table.TakeChoice("unit", Vocabulary.Units, DataErrorCode.UnknownUnit) ?? string.Empty;
        string stricter = table.TakeChoice("stricter", Vocabulary.Directions, DataErrorCode.UnknownDirection) ?? string.Empty;
        (string rowName, string lookup) = ReadRowAxis(table);
        (string columnName, List<string> columns) = ReadColumnAxis(table);
        List<(int Column, bool Up)> monotone = ReadMonotone(table, columns);
        List<BlockData> blocks = ReadBlocks(table, new RowReader(unit, lookup, columns, _errors));
        DataNode? absent = table.Take("absent", NodeKind.Object);
        List<EditionText> absentEditions = absent is null ? [] : _editions.Read(absent);
        DataNode? sourceMap = table.Take("sources", NodeKind.Object);
        List<SourceData> sources = sourceMap is null ? [] : SourceReader.Read(sourceMap, _errors);
        table.Close();

        _editions.RequireAll(table.Line);
        CheckRows(blocks, rowName, lookup);
        foreach ((int column, bool up) in monotone)
        {
            blocks.ForEach(block => BlockChecks.Monotone(block, column, columns[column], up, _errors));
        }

        var read = new TableData
        {
            Key = key,
            Title = title,
            Unit = unit,
            Stricter = stricter,
            RowName = rowName,
            Lookup = lookup,
            ColumnName = columnName,
            Columns = columns,
            Blocks = blocks,
            Absent = absentEditions,
            Sources = sources,
        };
        TableChecks.Sources(read, _errors);
        TableChecks.RowIdentifiers(read, _errors);
        return read;
    }

    private string ReadKey(ObjectReader table)
    {
        DataNode? key = table.TakeText("key");
        if (key is null)
        {
            return string.Empty;
        }

        if (!Names.IsKey(key.Text))
        {
            _errors.Add(DataErrorCode.MalformedKey, key.Line, $"the key '{key.Text}' must be lower-case words joined by dots and hyphens");
        }

        if (!string.Equals(key.Text + ".json", _errors.File, StringComparison.Ordinal))
        {
            _errors.Add(DataErrorCode.FileNameIsNotKey, key.Line, $"the table '{key.Text}' must stand in the file {key.Text}.json");
        }

        return key.Text;
    }

    private (string Name, string Lookup) ReadRowAxis(ObjectReader table)
    {
        DataNode? node = table.Take("rows", NodeKind.Object);
        ObjectReader? axis = node is null ? null : ObjectReader.Open(node, "'rows'", _errors);
        if (axis is null)
        {
            return (string.Empty, string.Empty);
        }

        string name = axis.TakeText("name")?.Text ?? string.Empty;
        string lookup = axis.TakeChoice("lookup", Vocabulary.Lookups, DataErrorCode.UnknownLookup) ?? string.Empty;
        axis.Close();
        return (name, lookup);
    }

    private (string Name, List<string> Keys) ReadColumnAxis(ObjectReader table)
    {
        DataNode? node = table.Take("columns", NodeKind.Object);
        ObjectReader? axis = node is null ? null : ObjectReader.Open(node, "'columns'", _errors);
        if (axis is null)
        {
            return (string.Empty, []);
        }

        string name = axis.TakeText("name")?.Text ?? string.Empty;
        DataNode? list = axis.Take("keys", NodeKind.Array);
        axis.Close();
        List<string> keys = list is null ? [] : ReadTexts(list, "a column").ConvertAll(node => node.Text);
        if (list is { Items.Count: 0 })
        {
            _errors.Add(DataErrorCode.EmptyList, list.Line, "a table must have a column");
        }

        TableChecks.IdentifiersOnce(keys, 'C', list?.Line ?? axis.Line, _errors);

        return (name, keys);
    }

    /// <summary>A list of texts, none empty and none twice.</summary>
    private List<DataNode> ReadTexts(DataNode list, string what)
    {
        var texts = new List<DataNode>();
        foreach (DataNode item in list.Items)
        {
            if (!ObjectReader.Is(item, NodeKind.Text, what, _errors))
            {
                continue;
            }

            if (string.IsNullOrWhiteSpace(item.Text))
            {
                _errors.Add(DataErrorCode.EmptyText, item.Line, $"{what} must not be empty");
            }

            if (texts.Exists(earlier => earlier.Text == item.Text))
            {
                _errors.Add(DataErrorCode.KeyTwice, item.Line, $"'{item.Text}' stands here a second time");
            }

            texts.Add(item);
        }

        return texts;
    }

    private List<(int Column, bool Up)> ReadMonotone(ObjectReader table, List<string> columns)
    {
        var monotone = new List<(int, bool)>();
        DataNode? map = table.TakeOptional("monotone", NodeKind.Object);
        foreach (DataMember member in map?.Members ?? [])
        {
            int column = columns.FindIndex(key => string.Equals(key, member.Name, StringComparison.Ordinal));
            if (column < 0)
            {
                _errors.Add(DataErrorCode.UnknownColumn, member.Line, $"there is no column '{member.Name}'");
            }

            bool up = member.Value.Text == Up;
            if (ObjectReader.Is(member.Value, NodeKind.Text, "a direction", _errors) && !up && member.Value.Text != Down)
            {
                _errors.Add(DataErrorCode.UnknownDirection, member.Value.Line, $"'{member.Value.Text}' must be up or down");
            }
            else if (column >= 0)
            {
                monotone.Add((column, up));
            }
        }

        return monotone;
    }

    private List<BlockData> ReadBlocks(ObjectReader table, RowReader rows)
    {
        var blocks = new List<BlockData>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        DataNode? list = table.Take("blocks", NodeKind.Array);
        foreach (DataNode item in list?.Items ?? [])
        {
            ObjectReader? block = ObjectReader.Open(item, "a block", _errors);
            if (block is null)
            {
                continue;
            }

            DataNode? id = block.TakeText("id");
            DataNode? editions = block.Take("editions", NodeKind.Object);
            DataNode? rowList = block.Take("rows", NodeKind.Array);
            DataNode? sources = block.Take("sources", NodeKind.Array);
            block.Close();
            CheckBlock(id, editions, rowList, sources, ids);
            blocks.Add(new BlockData(
                id?.Text ?? string.Empty,
                block.Line,
                editions is null ? [] : _editions.Read(editions),
                rowList is null ? [] : rows.Read(rowList),
                sources is null ? [] : ReadTexts(sources, "a source").ConvertAll(node => new SourceReference(node.Text, node.Line))));
        }

        return blocks;
    }

    private void CheckBlock(DataNode? id, DataNode? editions, DataNode? rows, DataNode? sources, HashSet<string> ids)
    {
        if (id is not null && !Names.IsKey(id.Text))
        {
            _errors.Add(DataErrorCode.MalformedKey, id.Line, $"the id '{id.Text}' must be lower-case words joined by dots and hyphens");
        }

        if (id is not null && !ids.Add(id.Text))
        {
            _errors.Add(DataErrorCode.KeyTwice, id.Line, $"the block '{id.Text}' stands here a second time");
        }

        if (editions is { Members.Count: 0 })
        {
            _errors.Add(DataErrorCode.EmptyList, editions.Line, "a block must hold for an edition");
        }

        if (rows is { Items.Count: 0 })
        {
            _errors.Add(DataErrorCode.EmptyList, rows.Line, "a block must have a row");
        }

        if (sources is { Items.Count: 0 })
        {
            _errors.Add(DataErrorCode.BlockWithoutSource, sources.Line, "a block must name a source");
        }
    }

    private void CheckRows(List<BlockData> blocks, string rowName, string lookup)
    {
        foreach (BlockData block in blocks)
        {
            BlockChecks.KeysOnce(block, _errors);
            if (rowName == Vocabulary.SizeAxis)
            {
                BlockChecks.AllSizes(block, _errors);
            }

            if (Vocabulary.IsByNumber(lookup))
            {
                BlockChecks.EdgesRise(block, _errors);
            }
        }
    }
}
