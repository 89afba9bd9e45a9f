namespace ElectroRules.Conductors;

/// <summary>Between what a circuit is connected.</summary>
public enum CircuitConnection
{
    /// <summary>One ungrounded conductor and the neutral.</summary>
    LineToNeutral = 1,

    /// <summary>Two ungrounded conductors, with or without a neutral.</summary>
    LineToLine,

    /// <summary>Three ungrounded conductors, with or without a neutral.</summary>
    ThreePhase,
}
