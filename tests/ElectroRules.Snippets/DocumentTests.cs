using ElectroRules.Operations;

namespace ElectroRules.Snippets;

/// <summary>What the documents show is what the tests run.</summary>
public sealed class DocumentTests
{
    [Fact]
    public void Every_CSharp_fence_is_a_region_that_is_run_or_a_quote_of_a_file()
    {
        var regions = Fences.Regions().Values.ToHashSet(StringComparer.Ordinal);
        var wrong = new List<string>();
        foreach (Fence fence in AllFences().Where(f => f.Language is "csharp" or "cs" or "c#"))
        {
            bool good = fence.Source.Length == 0
                ? regions.Contains(fence.Text)
                : Quotes(fence);
            if (!good)
            {
                wrong.Add(fence.Place);
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void Every_region_is_shown_in_a_document()
    {
        var shown = AllFences().Select(f => f.Text).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(Fences.Regions().Where(r => !shown.Contains(r.Value)).Select(r => r.Key));
    }

    [Fact]
    public void Every_region_stands_in_a_test_method()
    {
        var wrong = new List<string>();
        foreach (string file in Repository.SnippetFiles())
        {
            string[] lines = Repository.Lines(file);
            for (int i = 0; i < lines.Length; i++)
            {
                if (lines[i].Trim().StartsWith("#region ", StringComparison.Ordinal) && !IsInTest(lines, i))
                {
                    wrong.Add($"{Path.GetFileName(file)}:{i + 1}");
                }
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void The_README_has_two_commands_and_is_short()
    {
        string[] commands = [.. Fences.In("README.md").Where(f => f.Language is "bash" or "sh" or "shell" or "console").Select(f => f.Text)];
        Assert.Equal(["dotnet run --project docs/samples/KilnWorkshop", "dotnet test"], commands);
        Assert.InRange(Repository.Lines("README.md").Length, 1, 200);
    }

    [Fact]
    public void Links_to_files_lead_somewhere()
    {
        var wrong = new List<string>();
        foreach (string document in Repository.Documents())
        {
            string text = string.Join('\n', Repository.Lines(document));
            string folder = Path.GetDirectoryName(Path.Combine(Repository.Root, document))!;
            foreach (string target in text.Split("](").Skip(1).Select(part => part.Split(')')[0].Split('#')[0]))
            {
                bool local = target.Length > 0 && !target.Contains("://", StringComparison.Ordinal);
                string path = Path.Combine(folder, target);
                if (local && !File.Exists(path) && !Directory.Exists(path))
                {
                    wrong.Add($"{document}: {target}");
                }
            }
        }

        Assert.Empty(wrong);
    }

    [Fact]
    public void DEVELOPERS_names_every_folder_of_the_library()
    {
        string[] named = [.. Repository.Lines("DEVELOPERS.md")
            .Where(l => l.StartsWith("| `", StringComparison.Ordinal) && l.Contains("/` |", StringComparison.Ordinal))
            .Select(l => l[3..l.IndexOf("/`", StringComparison.Ordinal)])];
        string[] there = [.. Directory.GetDirectories(Path.Combine(Repository.Root, "src", "ElectroRules"))
            .Select(f => Path.GetFileName(f)!)
            .Where(f => f is not ("bin" or "obj"))];
        Assert.Empty(there.Except(named, StringComparer.Ordinal));
    }

    [Fact]
    public void The_README_lists_the_operations_that_exist()
    {
        string[] listed = [.. Repository.Lines("README.md")
            .Select(l => l.Split('|'))
            .Where(cells => cells.Length == 5 && cells[2].Trim().StartsWith('`'))
            .Select(cells => cells[2].Trim().Trim('`'))];
        Assert.Equal(OperationCatalog.All.Select(o => o.Id).Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
    }

    private static IEnumerable<Fence> AllFences() => Repository.Documents().SelectMany(Fences.In);

    private static bool Quotes(Fence fence)
    {
        string[] lines = Repository.Lines(fence.Source);
        int length = fence.Text.Split('\n').Length;
        return Enumerable.Range(0, Math.Max(0, lines.Length - length + 1))
            .Any(i => Fences.Unindent(lines[i..(i + length)]) == fence.Text);
    }

    private static bool IsInTest(string[] lines, int region)
    {
        int method = Array.FindLastIndex(lines, region, l => l.StartsWith("    public void ", StringComparison.Ordinal));
        return method > 0 && lines[method - 1].Trim() == "[Fact]";
    }
}
