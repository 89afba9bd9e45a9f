using System.Globalization;
using System.Text;
using ElectroRules.TableCompiler;
using ElectroRules.TableCompiler.Writing;

namespace ElectroRules.Tests.Tables;

/// <summary>The checked-in generated files are what the data gives, the same on every machine.</summary>
public class GeneratedFilesTests
{
    [Fact]
    public void The_checked_in_files_are_those_of_the_data()
    {
        DataFolder data = DataFolder.Load(RepositoryFiles.Data);
        Assert.Empty(data.Errors);
        Assert.Empty(GeneratedFolder.Differences(RepositoryFiles.Generated, CodeWriter.Write(data)));
    }

    [Fact]
    public void The_files_do_not_depend_on_the_culture()
    {
        IReadOnlyDictionary<string, string> plain = CodeWriter.Write(DataFolder.Load(RepositoryFiles.Data));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(plain, CodeWriter.Write(DataFolder.Load(RepositoryFiles.Data)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void The_data_version_changes_with_any_file()
    {
        Dictionary<string, byte[]> files = Directory.GetFiles(RepositoryFiles.Data, "*.json")
            .ToDictionary(file => Path.GetFileName(file), File.ReadAllBytes, StringComparer.Ordinal);
        var versions = new HashSet<string>(StringComparer.Ordinal) { DataFolder.Read(files).Version };
        foreach (string name in files.Keys)
        {
            var changed = new Dictionary<string, byte[]>(files, StringComparer.Ordinal);
            byte[] content = (byte[])files[name].Clone();
            content[^2] ^= 1;
            changed[name] = content;
            Assert.True(versions.Add(DataFolder.Read(changed).Version), $"{name} does not count.");
        }

        Assert.All(versions, version => Assert.Matches("^[0-9a-f]{16}$", version));
    }

    [Fact]
    public void The_data_version_does_not_depend_on_line_ends()
    {
        string windows = CompilerSamples.Table.ReplaceLineEndings("\r\n");
        Assert.Equal(
            CompilerSamples.Read((CompilerSamples.TableFile, CompilerSamples.Table)).Version,
            CompilerSamples.Read((CompilerSamples.TableFile, windows)).Version);
    }

    [Fact]
    public void The_library_carries_the_data_version() =>
        Assert.Equal(DataFolder.Load(RepositoryFiles.Data).Version, RuleSet.For(EditionId.Nec2020).Stamp.DataVersion);

    [Fact]
    public void Nothing_is_written_from_data_with_errors() =>
        Assert.Throws<ArgumentException>(() => CodeWriter.Write(CompilerSamples.Read((CompilerSamples.TableFile, "{"))));

    [Fact]
    public void Columns_and_rows_get_names()
    {
        string text = CompilerSamples.Change(CompilerSamples.Table, ("\"first\"", "\"2-wire\""), ("\"al\"", "\"column\""));
        string code = CodeWriter.Write(CompilerSamples.Read((CompilerSamples.TableFile, text)))["SampleTableTable.g.cs"];
        Assert.Contains("internal const int Cu = 0;", code, StringComparison.Ordinal);
        Assert.Contains("internal const int CColumn = 1;", code, StringComparison.Ordinal);
        Assert.Contains("internal const int R2Wire = 0;", code, StringComparison.Ordinal);
        Assert.Contains("internal const int Second = 1;", code, StringComparison.Ordinal);
        Assert.DoesNotContain("\r", code, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_found_by_number_or_by_size_get_no_names()
    {
        foreach (string text in new[] { CompilerSamples.TableByNumber, CompilerSamples.TableBySize })
        {
            string code = CodeWriter.Write(CompilerSamples.Read((CompilerSamples.TableFile, text)))["SampleTableTable.g.cs"];
            Assert.DoesNotContain("class Row", code, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Stale_and_changed_files_are_seen_and_put_right()
    {
        string folder = Directory.CreateTempSubdirectory("electrorules").FullName;
        try
        {
            DataFolder data = CompilerSamples.Read((CompilerSamples.TableFile, CompilerSamples.Table));
            SortedDictionary<string, string> wanted = CodeWriter.Write(data);
            GeneratedFolder.Write(folder, wanted);
            Assert.Empty(GeneratedFolder.Differences(folder, wanted));

            File.AppendAllText(Path.Combine(folder, "Rules.g.cs"), "// changed\n", Encoding.UTF8);
            File.WriteAllText(Path.Combine(folder, "OldTable.g.cs"), string.Empty);
            Assert.Equal(["OldTable.g.cs", "Rules.g.cs"], GeneratedFolder.Differences(folder, wanted));

            GeneratedFolder.Write(folder, wanted);
            Assert.Empty(GeneratedFolder.Differences(folder, wanted));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
