namespace ElectroRules.TableCompiler;

/// <summary>The places in the repository that the tool reads and writes.</summary>
internal static class Repository
{
    private const string RootMark = "ElectroRules.sln";

    /// <summary>The root: the nearest folder above a place that holds the solution; null when there is none.</summary>
    internal static string? RootAbove(string place)
    {
        for (DirectoryInfo? folder = new(place); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, RootMark)))
            {
                return folder.FullName;
            }
        }

        return null;
    }

    internal static string DataFolder(string root) => Path.Combine(root, "src", "ElectroRules", "Tables", "Data");

    internal static string GeneratedFolder(string root) => Path.Combine(root, "src", "ElectroRules", "Tables", "Generated");
}
