namespace ElectroRules.Results;

/// <summary>What a step or a finding rests on.</summary>
public enum CitationKind
{
    /// <summary>A section of the named edition.</summary>
    Code,

    /// <summary>Common practice of the trade; no published source.</summary>
    CommonPractice,

    /// <summary>A law of physics or plain arithmetic.</summary>
    Physics,

    /// <summary>A local amendment.</summary>
    Amendment,
}

/// <summary>How a number or a section was confirmed. The order is from most to least sure.</summary>
public enum Confidence
{
    /// <summary>Seen in two or more independent published sources.</summary>
    TwoSources,

    /// <summary>Seen in one published source.</summary>
    OneSource,

    /// <summary>Proved by a formula or by the geometry of the product.</summary>
    Formula,

    /// <summary>Seen only in a printing of an older edition.</summary>
    OlderEdition,

    /// <summary>From memory; no published source was found.</summary>
    Memory,

    /// <summary>A habit of the trade or a choice of this library; no source is claimed.</summary>
    Practice,
}

/// <summary>Where a step or a finding comes from: a section of an edition, common practice or physics.</summary>
public sealed class Citation
{
    internal Citation(CitationKind kind, EditionId edition, string section, Confidence confidence, string? amendment)
    {
        Kind = kind;
        Edition = edition;
        Section = section;
        Confidence = confidence;
        Amendment = amendment;
    }

    /// <summary>What kind of ground this is.</summary>
    public CitationKind Kind { get; }

    /// <summary>The edition that the section belongs to.</summary>
    public EditionId Edition { get; }

    /// <summary>The section or table, for example "210.20(A)". Empty for common practice and physics.</summary>
    public string Section { get; }

    /// <summary>How sure the number or the section is.</summary>
    public Confidence Confidence { get; }

    /// <summary>The id of the amendment that set the value; null when the base edition stands.</summary>
    public string? Amendment { get; }
}
