namespace ElectroRules.Snippets;

/// <summary>The files of the repository that the tests read.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    /// <summary>README.md, DEVELOPERS.md and everything in docs, as paths from the root.</summary>
    public static IReadOnlyList<string> Documents()
    {
        var files = new List<string> { "README.md", "DEVELOPERS.md" };
        string docs = Path.Combine(Root, "docs");
        files.AddRange(Directory.EnumerateFiles(docs, "*.md", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(Root, file))
            .Where(file => !file.Contains("_site", StringComparison.Ordinal) && !file.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal));
        return files;
    }

    /// <summary>The C# files of this project.</summary>
    public static IEnumerable<string> SnippetFiles() =>
        Directory.EnumerateFiles(Path.Combine(Root, "tests", "ElectroRules.Snippets"), "*.cs").Order(StringComparer.Ordinal);

    public static string[] Lines(string path) => File.ReadAllText(Path.Combine(Root, path)).Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n');

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "ElectroRules.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("ElectroRules.sln is in no folder above the tests.");
    }
}
