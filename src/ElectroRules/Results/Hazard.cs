namespace ElectroRules.Results;

/// <summary>How dangerous a found condition is, apart from what the code says of it.</summary>
public enum Hazard
{
    /// <summary>No danger of its own.</summary>
    None,

    /// <summary>To be put right soon; it can become dangerous.</summary>
    FixSoon,

    /// <summary>Dangerous now: do not energize, or turn off.</summary>
    Danger,
}

/// <summary>What the code says of a found condition, apart from how dangerous it is.</summary>
public enum CodeStanding
{
    /// <summary>Against the edition (or amendment) in force for the work.</summary>
    Violation,

    /// <summary>Allowed by the edition in force when it was built, but not for new work.</summary>
    WasLegalWhenBuilt,

    /// <summary>A matter the code does not rule on.</summary>
    NotACodeMatter,

    /// <summary>Good practice; never changes a verdict.</summary>
    Advice,

    /// <summary>A remark worth knowing.</summary>
    Note,
}
