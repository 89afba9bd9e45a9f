using System.Security.Cryptography;
using System.Text;
using ElectroRules.TableCompiler.Model;
using ElectroRules.TableCompiler.Reading;

namespace ElectroRules.TableCompiler;

/// <summary>All the data files: what they say, and everything that is wrong with them.</summary>
internal sealed class DataFolder
{
    internal const string RulesFile = "rules.json";

    private DataFolder(IReadOnlyList<TableData> tables, IReadOnlyList<RuleData> rules, IReadOnlyList<DataError> errors, string version)
    {
        Tables = tables;
        Rules = rules;
        Errors = errors;
        Version = version;
    }

    /// <summary>The tables in the order of their keys.</summary>
    internal IReadOnlyList<TableData> Tables { get; }

    /// <summary>The rules in the order of their codes.</summary>
    internal IReadOnlyList<RuleData> Rules { get; }

    /// <summary>Everything that is wrong, by file; nothing may be written unless this is empty.</summary>
    internal IReadOnlyList<DataError> Errors { get; }

    /// <summary>A hash over the names and the contents of all the files; line ends do not count.</summary>
    internal string Version { get; }

    /// <summary>Reads a folder.</summary>
    internal static DataFolder Load(string path) =>
        Read(Directory.GetFiles(path, "*.json").ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes, StringComparer.Ordinal));

    /// <summary>Reads files held in memory, by their names.</summary>
    internal static DataFolder Read(IReadOnlyDictionary<string, byte[]> files)
    {
        var tables = new List<TableData>();
        var errors = new List<DataError>();
        var classes = new HashSet<string>(StringComparer.Ordinal);
        IReadOnlyList<RuleData> rules = [];
        foreach (string name in files.Keys.Order(StringComparer.Ordinal))
        {
            var fileErrors = new FileErrors(name);
            if (name == RulesFile)
            {
                rules = RuleReader.Read(files[name], fileErrors);
            }
            else if (TableReader.Read(files[name], fileErrors) is { } table)
            {
                tables.Add(table);
            }

            string tableClass = Names.TableClass(Path.GetFileNameWithoutExtension(name));
            if (name != RulesFile && !classes.Add(tableClass))
            {
                fileErrors.Add(
                    DataErrorCode.IdentifiersCollide, 1,
                    $"another table gives the same class {tableClass}");
            }

            errors.AddRange(fileErrors.All.OrderBy(error => error.Line));
        }

        tables.Sort((a, b) => string.CompareOrdinal(a.Key, b.Key));
        return new DataFolder(tables, rules, errors, VersionOf(files));
    }

    private static string VersionOf(IReadOnlyDictionary<string, byte[]> files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string name in files.Keys.Order(StringComparer.Ordinal))
        {
            byte[] content = Array.FindAll(files[name], b => b != (byte)'\r');
            hash.AppendData(Encoding.UTF8.GetBytes($"{name}\n{content.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)}\n"));
            hash.AppendData(content);
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
