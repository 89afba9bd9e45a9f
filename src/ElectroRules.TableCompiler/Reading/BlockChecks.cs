using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Reading;

/// <summary>Checks of the rows of a block against one another.</summary>
internal static class BlockChecks
{
    /// <summary>No key may stand twice.</summary>
    internal static void KeysOnce(BlockData block, FileErrors errors)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (RowData row in block.Rows)
        {
            if (!seen.Add(row.Key))
            {
                errors.Add(DataErrorCode.KeyTwice, row.Line, $"the row '{row.Key}' stands here a second time");
            }
        }
    }

    /// <summary>A table by size has all the sizes, in order. The first row that is wrong is reported.</summary>
    internal static void AllSizes(BlockData block, FileErrors errors)
    {
        for (int i = 0; i < block.Rows.Count; i++)
        {
            RowData row = block.Rows[i];
            if (Vocabulary.OrdinalOf(row.Key) == 0)
            {
                errors.Add(DataErrorCode.UnknownSize, row.Line, $"'{row.Key}' is not a conductor size");
                return;
            }

            if (i >= Vocabulary.Sizes.Count || !string.Equals(row.Key, Vocabulary.Sizes[i], StringComparison.Ordinal))
            {
                string expected = i < Vocabulary.Sizes.Count ? $"'{Vocabulary.Sizes[i]}'" : "the end of the rows";
                errors.Add(
                    DataErrorCode.RowsDisordered, row.Line,
                    $"here {expected} must stand, not '{row.Key}': the rows are all the sizes, in order");
                return;
            }
        }

        if (block.Rows.Count < Vocabulary.Sizes.Count)
        {
            errors.Add(
                DataErrorCode.RowsDisordered, block.Line,
                $"'{Vocabulary.Sizes[block.Rows.Count]}' is missing: the rows are all the sizes, in order");
        }
    }

    /// <summary>The numbers of the rows rise from row to row; with this an open band can only be the last.</summary>
    internal static void EdgesRise(BlockData block, FileErrors errors)
    {
        for (int i = 1; i < block.Rows.Count; i++)
        {
            RowData row = block.Rows[i];
            if (row.Edge <= block.Rows[i - 1].Edge)
            {
                errors.Add(DataErrorCode.EdgesNotIncreasing, row.Line, $"'{row.Key}' is not above '{block.Rows[i - 1].Key}'");
            }
        }
    }

    /// <summary>The values of a column never fall (or never rise); blanks are passed over.</summary>
    internal static void Monotone(BlockData block, int column, string name, bool up, FileErrors errors)
    {
        double last = double.NaN;
        foreach (RowData row in block.Rows)
        {
            double value = column < row.Values.Count ? row.Values[column] : double.NaN;
            if (double.IsNaN(value))
            {
                continue;
            }

            if (up ? value < last : value > last)
            {
                errors.Add(DataErrorCode.NotMonotone, row.Line, $"column '{name}' {(up ? "falls" : "rises")} at row '{row.Key}'");
            }

            last = value;
        }
    }
}
