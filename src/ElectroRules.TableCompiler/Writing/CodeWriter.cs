using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Writing;

/// <summary>Turns data that has no errors into the files of the library.</summary>
internal static class CodeWriter
{
    internal const string FileEnding = ".g.cs";

    /// <summary>The contents of all generated files, by name.</summary>
    /// <exception cref="ArgumentException">The data has errors.</exception>
    internal static SortedDictionary<string, string> Write(DataFolder data)
    {
        if (data.Errors.Count > 0)
        {
            throw new ArgumentException("The data has errors.", nameof(data));
        }

        var files = new SortedDictionary<string, string>(StringComparer.Ordinal)
        {
            ["GeneratedTables" + FileEnding] = WriteList(data),
            ["Rules" + FileEnding] = RulesWriter.Write(data.Rules),
        };
        for (int i = 0; i < data.Tables.Count; i++)
        {
            files[Names.TableClass(data.Tables[i].Key) + FileEnding] = TableWriter.Write(data.Tables[i], i);
        }

        return files;
    }

    private static string WriteList(DataFolder data)
    {
        Code code = Code.NewFile();
        code.Line("/// <summary>All the tables, in the order of their numbers.</summary>");
        code.Line("internal static partial class GeneratedTables");
        code.Open();
        code.Line("/// <summary>A hash over all the data files.</summary>");
        code.Line($"internal const string DataVersion = {Code.Literal(data.Version)};");
        code.Line();
        code.Line("internal static TableDefinition[] All() =>");
        code.Open("[");
        foreach (TableData table in data.Tables)
        {
            code.Line($"{Names.TableClass(table.Key)}.Define(),");
        }

        code.Close("];");
        code.Close();
        return code.ToString();
    }
}
