namespace ElectroRules.Conductors;

/// <summary>How a cable lies with other cables.</summary>
public enum CableGrouping
{
    /// <summary>Apart from others, or together for no more than the length that needs no adjustment.</summary>
    Apart = 1,

    /// <summary>Together with others, unspaced.</summary>
    Bundled,

    /// <summary>Together through one opening in wood framing that is sealed with insulation, caulk or foam.</summary>
    SealedOpening,

    /// <summary>In contact with thermal insulation, unspaced.</summary>
    TouchingInInsulation,
}
