namespace ElectroRules.Amendments;

/// <summary>Local changes to one or more editions, as data. The host supplies it; <see cref="AmendmentComposition"/> lays it over a rule set.</summary>
/// <remarks>A list in it must not be changed after the amendment was made.</remarks>
public sealed record Amendment
{
    /// <summary>The permanent id: lower-case letters, digits, hyphens and dots, for example "springfield-2024". Every stamp lists it.</summary>
    public required string Id { get; init; }

    /// <summary>What a person calls it. Not empty.</summary>
    public required string Title { get; init; }

    /// <summary>The editions that it is written for. At least one.</summary>
    public required IReadOnlyList<EditionId> Editions { get; init; }

    /// <summary>The ids of the amendments that it takes the place of, where both change the same cell. They need not be present.</summary>
    public required IReadOnlyList<string> Supersedes { get; init; }

    /// <summary>The changed cells.</summary>
    public required IReadOnlyList<CellChange> Changes { get; init; }

    /// <summary>The local findings to add.</summary>
    public required IReadOnlyList<AmendmentRemark> Remarks { get; init; }
}

/// <summary>A local finding to add to every determination that used a rule.</summary>
public sealed record AmendmentRemark
{
    /// <summary>The code of the rule, for example "ER3092".</summary>
    public required string Rule { get; init; }

    /// <summary>The code of the finding: lower-case words with hyphens, for example "inspect-before-cover".</summary>
    public required string Code { get; init; }

    /// <summary>The place in the local law. Not empty.</summary>
    public required string Section { get; init; }
}
