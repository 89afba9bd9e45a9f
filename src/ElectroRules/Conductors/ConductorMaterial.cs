namespace ElectroRules.Conductors;

/// <summary>The metal of a conductor.</summary>
public enum ConductorMaterial
{
    /// <summary>Copper.</summary>
    Copper = 1,

    /// <summary>Aluminum of the alloy made for building wire.</summary>
    Aluminum,

    /// <summary>Copper-clad aluminum.</summary>
    CopperCladAluminum,
}
