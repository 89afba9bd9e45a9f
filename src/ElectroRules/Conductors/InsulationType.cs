namespace ElectroRules.Conductors;

/// <summary>The insulation of single conductors, by the trade's letters.</summary>
public enum InsulationType
{
    /// <summary>TW.</summary>
    Tw = 1,

    /// <summary>THW.</summary>
    Thw,

    /// <summary>THW-2.</summary>
    Thw2,

    /// <summary>THHW.</summary>
    Thhw,

    /// <summary>THWN.</summary>
    Thwn,

    /// <summary>THWN-2.</summary>
    Thwn2,

    /// <summary>THHN.</summary>
    Thhn,

    /// <summary>XHHW.</summary>
    Xhhw,

    /// <summary>XHHW-2.</summary>
    Xhhw2,

    /// <summary>RHH.</summary>
    Rhh,

    /// <summary>RHW.</summary>
    Rhw,

    /// <summary>RHW-2.</summary>
    Rhw2,

    /// <summary>USE.</summary>
    Use,

    /// <summary>USE-2.</summary>
    Use2,
}
