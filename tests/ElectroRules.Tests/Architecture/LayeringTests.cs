using System.Text.RegularExpressions;
using ElectroRules.Tests.Tables;

namespace ElectroRules.Tests.Architecture;

/// <summary>The parts of the library lie in layers, and each file keeps the rules of the house.</summary>
public partial class LayeringTests
{
    private const int MostLines = 400;

    /// <summary>From the ground up: a part may use only itself and the parts before it. The root is the empty name.</summary>
    private static readonly string[] Parts =
    [
        "Results", "Internal", "Tables", "", "Amendments", "Conductors", "Overcurrent", "Loads", "Grounding", "Raceways", "Boxes", "Cables",
        "Protection", "Circuits", "Panels", "Services", "Jobs", "Wording", "Reports", "Operations", "DependencyInjection",
    ];

    private static string Source { get; } = Path.Combine(RepositoryFiles.Root, "src", "ElectroRules");

    private static List<(string Path, string Text)> Files { get; } = ReadFiles();

    private static IEnumerable<(string Path, string Text)> HandWritten => Files.Where(f => !f.Path.EndsWith(".g.cs", StringComparison.Ordinal));

    [Fact]
    public void There_are_files_to_check() => Assert.True(Files.Count > 50);

    [Fact]
    public void The_namespace_of_a_file_is_its_folder() => Assert.All(Files, file =>
    {
        Match match = NamespaceLine().Match(file.Text);
        string folder = Path.GetDirectoryName(file.Path)!.Replace(Path.DirectorySeparatorChar, '.');
        if (folder == "DependencyInjection")
        {
            // Registrations stand in the namespace of the framework, where callers look for them.
            Assert.Equal("Microsoft.Extensions.DependencyInjection", match.Groups[1].Value);
            return;
        }

        Assert.Equal(folder.Length == 0 ? "ElectroRules" : "ElectroRules." + folder, match.Groups[1].Value);
    });

    [Fact]
    public void A_part_uses_only_the_parts_below_it()
    {
        IEnumerable<string> wrong = Files.SelectMany(file => UsingLine().Matches(file.Text)
            .Select(m => m.Groups[1].Value)
            .Concat(FullName().Matches(file.Text).Select(m => m.Groups[1].Value))
            .Where(used => !MayUse(PartOf(file.Path), used))
            .Distinct(StringComparer.Ordinal)
            .Select(used => $"{file.Path} uses {used}"));
        Assert.Empty(wrong);
    }

    [Fact]
    public void Every_folder_is_a_known_part() => Assert.All(Files, file => Assert.Contains(PartOf(file.Path), Parts));

    [Fact]
    public void Files_are_short() =>
        Assert.Empty(HandWritten.Where(f => f.Text.Count(c => c == '\n') > MostLines).Select(f => f.Path));

    /// <summary>Editions differ by their data; only the root, which lists them, and what the compiler writes may name one.</summary>
    [Fact]
    public void No_rule_asks_which_edition_it_is()
    {
        IEnumerable<string> wrong = HandWritten
            .Where(f => PartOf(f.Path) is not ("" or "Operations")) // Operations name editions in their examples; no rule is there.
            .Where(f => EditionNamed().IsMatch(WithoutComments(f.Text)))
            .Where(f => !IsTableOrAmendment(f.Path) || NamedEdition().IsMatch(WithoutComments(f.Text)))
            .Select(f => f.Path);
        Assert.Empty(wrong);
    }

    [Fact]
    public void Only_one_file_touches_the_members_of_quantities()
    {
        IEnumerable<string> wrong = HandWritten
            .Where(f => f.Path != Path.Combine("Internal", "Canonical.cs"))
            .Where(f => QuantityMember().IsMatch(WithoutComments(f.Text)))
            .Select(f => f.Path);
        Assert.Empty(wrong);
    }

    [Fact]
    public void Values_are_compared_with_limits_in_one_place()
    {
        Assert.Contains(Files, f => f.Path == Path.Combine("Internal", "Limit.cs"));
        Assert.Empty(HandWritten.Where(f => FigureCompared().IsMatch(WithoutComments(f.Text))).Select(f => f.Path));
    }

    private static bool IsTableOrAmendment(string path) => PartOf(path) is "Tables" or "Amendments";

    /// <summary>A rule set carries its amendments, so the root and the amendments are one floor.</summary>
    private static bool MayUse(string part, string used)
    {
        int index = Array.IndexOf(Parts, used);
        return index < 0 || index <= Array.IndexOf(Parts, part) || (part.Length == 0 && used == "Amendments");
    }

    private static string PartOf(string path)
    {
        int end = path.IndexOf(Path.DirectorySeparatorChar, StringComparison.Ordinal);
        return end < 0 ? string.Empty : path[..end];
    }

    private static string WithoutComments(string text) => Comment().Replace(text, string.Empty);

    private static List<(string Path, string Text)> ReadFiles()
    {
        string[] built = ["bin", "obj"];
        return [.. Directory.EnumerateFiles(Source, "*.cs", SearchOption.AllDirectories)
            .Select(file => (Path: Path.GetRelativePath(Source, file), File: file))
            .Where(f => !built.Contains(f.Path.Split(Path.DirectorySeparatorChar)[0]))
            .OrderBy(f => f.Path, StringComparer.Ordinal)
            .Select(f => (f.Path, File.ReadAllText(f.File)))];
    }

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(@"^using (?:static |\w+ = )?ElectroRules\.(\w+)", RegexOptions.Multiline)]
    private static partial Regex UsingLine();

    [GeneratedRegex(@"(?<![\w.""/])ElectroRules\.(\w+)\.\w", RegexOptions.Multiline)]
    private static partial Regex FullName();

    [GeneratedRegex(@"EditionId\.Nec\d+|[=!]=\s*EditionId|[eE]dition\s*(?:[=!<>]=|[<>]\s)")]
    private static partial Regex EditionNamed();

    [GeneratedRegex(@"EditionId\.Nec\d+")]
    private static partial Regex NamedEdition();

    [GeneratedRegex(@"(?<!Canonical|[nN]eed)\.(?:From)?(?:Amperes|Volts|Watts|Voltamperes|DegreesCelsius|DegreesFahrenheit|Feet|Inches|Meters|Ohms|DecimalFractions|Percent)\b(?!\s*=)")]
    private static partial Regex QuantityMember();

    [GeneratedRegex(@"\.Value\s*[<>]=?\s*\w+\.Value")]
    private static partial Regex FigureCompared();

    [GeneratedRegex(@"//[^\n]*")]
    private static partial Regex Comment();
}
