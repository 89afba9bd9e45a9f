using ElectroRules.TableCompiler.Writing;

namespace ElectroRules.TableCompiler;

/// <summary>The folder of generated files: compared with, or made equal to, what the data gives.</summary>
internal static class GeneratedFolder
{
    /// <summary>The names of the files that are missing, different or no longer wanted.</summary>
    /// <remarks>Line ends do not count: a checkout may change them.</remarks>
    internal static IReadOnlyList<string> Differences(string path, IReadOnlyDictionary<string, string> wanted)
    {
        var names = new SortedSet<string>(StringComparer.Ordinal);
        names.UnionWith(wanted.Keys);
        names.UnionWith(Present(path));
        return [.. names.Where(name => !wanted.TryGetValue(name, out string? text) || !IsSame(Path.Combine(path, name), text))];
    }

    /// <summary>Writes the files and takes away those no longer wanted.</summary>
    internal static void Write(string path, IReadOnlyDictionary<string, string> wanted)
    {
        Directory.CreateDirectory(path);
        foreach (string name in Present(path).Where(name => !wanted.ContainsKey(name)))
        {
            File.Delete(Path.Combine(path, name));
        }

        foreach ((string name, string text) in wanted)
        {
            File.WriteAllText(Path.Combine(path, name), text);
        }
    }

    private static bool IsSame(string file, string text) =>
        File.Exists(file) && File.ReadAllText(file).Replace("\r\n", "\n", StringComparison.Ordinal) == text;

    private static IEnumerable<string> Present(string path) =>
        Directory.Exists(path) ? Directory.GetFiles(path, "*" + CodeWriter.FileEnding).Select(file => Path.GetFileName(file)) : [];
}
