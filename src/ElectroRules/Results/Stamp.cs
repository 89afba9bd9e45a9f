namespace ElectroRules.Results;

/// <summary>Which rules made an answer. It is part of every determination, so that a stored answer can be explained later.</summary>
public sealed class Stamp
{
    internal Stamp(EditionId edition, IReadOnlyList<string> amendments, string dataVersion, string libraryVersion)
    {
        Edition = edition;
        Amendments = amendments;
        DataVersion = dataVersion;
        LibraryVersion = libraryVersion;
    }

    /// <summary>The edition.</summary>
    public EditionId Edition { get; }

    /// <summary>The ids of the amendments, in the order in which they were laid over the edition.</summary>
    public IReadOnlyList<string> Amendments { get; }

    /// <summary>A hash of all the tables and rules of the library, before amendments.</summary>
    public string DataVersion { get; }

    /// <summary>The version of the library.</summary>
    public string LibraryVersion { get; }
}
