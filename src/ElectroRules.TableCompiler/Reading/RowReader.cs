using ElectroRules.TableCompiler.Json;
using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Reading;

/// <summary>Reads the rows of a block: [key, values, letters].</summary>
internal sealed class RowReader(string unit, string lookup, IReadOnlyList<string> columns, FileErrors errors)
{
    internal List<RowData> Read(DataNode list)
    {
        var rows = new List<RowData>();
        foreach (DataNode item in list.Items)
        {
            RowData? row = ReadRow(item);
            if (row is not null)
            {
                rows.Add(row);
            }
        }

        return rows;
    }

    private RowData? ReadRow(DataNode node)
    {
        const string shape = "a row must be a list of a key, a list of values and the letters of confirmation";
        if (node.Kind != NodeKind.Array || node.Items.Count != 3 || node.Items[0].Kind != NodeKind.Text
            || node.Items[1].Kind != NodeKind.Array || node.Items[2].Kind != NodeKind.Text)
        {
            errors.Add(DataErrorCode.WrongType, node.Line, shape);
            return null;
        }

        DataNode key = node.Items[0];
        if (string.IsNullOrWhiteSpace(key.Text))
        {
            errors.Add(DataErrorCode.EmptyText, key.Line, "the key of a row must not be empty");
        }

        IReadOnlyList<DataNode> cells = node.Items[1].Items;
        List<double> values = ReadValues(cells);
        CheckCounts(node.Items[1], node.Items[2]);
        CheckLetters(cells, node.Items[2]);
        return new RowData(key.Text, node.Line, ReadEdge(key), values, node.Items[2].Text);
    }

    private List<double> ReadValues(IReadOnlyList<DataNode> cells)
    {
        var values = new List<double>(cells.Count);
        foreach (DataNode cell in cells)
        {
            bool hasValue = cell.Kind != NodeKind.Null && ObjectReader.Is(cell, NodeKind.Text, "a value (or null for none)", errors);
            values.Add(hasValue ? Numbers.ReadValue(cell.Text, unit, cell.Line, errors) : double.NaN);
        }

        return values;
    }

    private void CheckCounts(DataNode values, DataNode letters)
    {
        if (values.Items.Count != columns.Count)
        {
            errors.Add(
                DataErrorCode.WrongNumberOfValues, values.Line,
                $"there are {values.Items.Count} values for {columns.Count} columns");
        }

        if (letters.Text.Length != columns.Count)
        {
            errors.Add(
                DataErrorCode.WrongNumberOfLetters, letters.Line,
                $"there are {letters.Text.Length} letters for {columns.Count} columns");
        }
    }

    private void CheckLetters(IReadOnlyList<DataNode> cells, DataNode letters)
    {
        for (int i = 0; i < letters.Text.Length; i++)
        {
            char letter = letters.Text[i];
            if (!Vocabulary.Letters.Contains(letter, StringComparison.Ordinal))
            {
                errors.Add(
                    DataErrorCode.UnknownLetter, letters.Line,
                    $"'{letter}' is not a letter of confirmation; there are {Vocabulary.Letters}");
            }
            else if (i < cells.Count && (letter == Vocabulary.NoValueLetter) != (cells[i].Kind == NodeKind.Null))
            {
                errors.Add(
                    DataErrorCode.LetterAgainstValue, letters.Line,
                    $"letter {i + 1} and value {i + 1} do not agree on whether there is a value");
            }
        }
    }

    private double ReadEdge(DataNode key)
    {
        if (!Vocabulary.IsByNumber(lookup))
        {
            return double.NaN;
        }

        if (string.Equals(key.Text, Vocabulary.OpenBand, StringComparison.Ordinal))
        {
            return double.PositiveInfinity;
        }

        if (!Numbers.TryRead(key.Text, out double edge))
        {
            errors.Add(
                DataErrorCode.NotANumber, key.Line,
                $"the key '{key.Text}' must be a number, or '{Vocabulary.OpenBand}' for an open last band");
        }

        return edge;
    }
}
