namespace ElectroRules.Conductors;

/// <summary>The wires of a circuit, as far as it matters which of them carry current.</summary>
public sealed record CircuitWires
{
    /// <summary>The supply system.</summary>
    public required SupplySystem System { get; init; }

    /// <summary>Between what the circuit is connected.</summary>
    public required CircuitConnection Connection { get; init; }

    /// <summary>Whether a neutral is run with the circuit. One that is only run as a spare is counted like one in use. A line-to-neutral circuit always has one.</summary>
    public required bool Neutral { get; init; }

    /// <summary>Whether most of the load is nonlinear; matters for a neutral with three phases of a wye only. Null when not known.</summary>
    public bool? MostlyNonlinear { get; init; }
}
