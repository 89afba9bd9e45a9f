namespace ElectroRules.Tests.Tables;

/// <summary>The files of the repository that the table tests read.</summary>
internal static class RepositoryFiles
{
    internal static string Root { get; } = FindRoot();

    internal static string Data { get; } = Path.Combine(Root, "src", "ElectroRules", "Tables", "Data");

    internal static string Generated { get; } = Path.Combine(Root, "src", "ElectroRules", "Tables", "Generated");

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ElectroRules.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run inside the repository.");
    }
}
