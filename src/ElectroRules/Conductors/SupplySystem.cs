namespace ElectroRules.Conductors;

/// <summary>The system that supplies the circuit.</summary>
public enum SupplySystem
{
    /// <summary>120/240 V, single-phase, three-wire.</summary>
    SplitPhase120V240V = 1,

    /// <summary>120/208 V wye.</summary>
    Wye120V208V,

    /// <summary>277/480 V wye.</summary>
    Wye277V480V,

    /// <summary>120/240 V delta with a high leg.</summary>
    HighLegDelta120V240V,
}
