using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Reading;

/// <summary>Checks of a table as a whole.</summary>
internal static class TableChecks
{
    /// <summary>Every named source is there, and every source is named.</summary>
    internal static void Sources(TableData table, FileErrors errors)
    {
        var used = new HashSet<string>(StringComparer.Ordinal);
        foreach (BlockData block in table.Blocks)
        {
            foreach (SourceReference reference in block.Sources)
            {
                used.Add(reference.Id);
                if (!table.Sources.Any(source => source.Id == reference.Id))
                {
                    errors.Add(DataErrorCode.UnknownSource, reference.Line, $"there is no source '{reference.Id}'");
                }
            }
        }

        foreach (SourceData source in table.Sources)
        {
            if (!used.Contains(source.Id))
            {
                errors.Add(DataErrorCode.UnusedSource, source.Line, $"no block names the source '{source.Id}'");
            }
        }
    }

    /// <summary>No two rows may give the same identifier in the generated code.</summary>
    internal static void RowIdentifiers(TableData table, FileErrors errors)
    {
        if (table.HasRowNames)
        {
            IdentifiersOnce([.. table.Blocks[0].Rows.Select(row => row.Key)], 'R', table.Blocks[0].Line, errors);
        }
    }

    /// <summary>No two keys may give the same identifier in the generated code.</summary>
    internal static void IdentifiersOnce(IReadOnlyList<string> keys, char prefix, int line, FileErrors errors)
    {
        var seen = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string key in keys)
        {
            string identifier = Names.Identifier(key, prefix);
            if (!seen.TryAdd(identifier, key) && seen[identifier] != key)
            {
                errors.Add(
                    DataErrorCode.IdentifiersCollide, line,
                    $"'{key}' and '{seen[identifier]}' give the same identifier {identifier}");
            }
        }
    }
}
