namespace ElectroRules.Conductors;

/// <summary>How wet the place is that a stretch of the circuit lies in.</summary>
public enum LocationKind
{
    /// <summary>Dry.</summary>
    Dry = 1,

    /// <summary>Damp.</summary>
    Damp,

    /// <summary>Wet: outdoors in the weather, underground, or inside a raceway that is.</summary>
    Wet,
}
