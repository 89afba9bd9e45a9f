using ElectroRules.Tables;

namespace ElectroRules.Tests.Tables;

/// <summary>A table in each edition that has it: what must hold of its numbers must hold in all of them.</summary>
internal static class PresentTables
{
    internal static IReadOnlyList<ReferenceTable> Of(string key)
    {
        ReferenceTable[] tables = [.. Editions.All.Select(edition => RuleSet.For(edition).Table(key)).Where(table => table.IsPresent)];
        Assert.NotEmpty(tables);
        return tables;
    }

    /// <summary>The rows that have a value in a column, in order.</summary>
    internal static IEnumerable<(string Row, double Value)> Values(this ReferenceTable table, string column)
    {
        foreach (string row in table.Rows)
        {
            if (table.Value(row, column) is { } value)
            {
                yield return (row, value);
            }
        }
    }
}
