using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Circuits;

/// <summary>What the caller would rather have, within the rules.</summary>
public sealed record DesignPreferences
{
    /// <summary>Run a neutral although the load needs none, for a later appliance.</summary>
    public bool SpareNeutral { get; init; }

    /// <summary>The most voltage drop wanted on this circuit, as a share, more than 0 and at most 1; null to leave the size to the ampacity.</summary>
    public Ratio? DropLimit { get; init; }

    /// <summary>Do without the next size up of the device.</summary>
    public bool NoNextSizeUp { get; init; }

    /// <summary>A size that the conductors shall not be smaller than; null for none.</summary>
    public ConductorSize? SmallestSize { get; init; }
}

/// <summary>Asks for the branch circuit of one load. A fact that is not known is null.</summary>
public sealed record BranchCircuitRequest
{
    /// <summary>The load.</summary>
    public required Load Load { get; init; }

    /// <summary>The supply system.</summary>
    public required SupplySystem System { get; init; }

    /// <summary>The metal of the conductors.</summary>
    public required ConductorMaterial Material { get; init; }

    /// <summary>The wiring method.</summary>
    public required WiringMethod Method { get; init; }

    /// <summary>The insulation; asked for in a raceway.</summary>
    public InsulationType? Insulation { get; init; }

    /// <summary>The stretches of the route, from the panel to the load: at least one and at most 64.</summary>
    public required IReadOnlyList<RouteSegment> Route { get; init; }

    /// <summary>The marking of the device's terminals; null when not known.</summary>
    public TerminationRating? SupplyTermination { get; init; }

    /// <summary>The marking of the terminals at the load; null when not known.</summary>
    public TerminationRating? LoadTermination { get; init; }

    /// <summary>The kind of the device.</summary>
    public OvercurrentDeviceKind DeviceKind { get; init; } = OvercurrentDeviceKind.CircuitBreaker;

    /// <summary>Whether the device and its assembly are listed for continuous operation at 100 percent of their rating. Null counts as no.</summary>
    public bool? HundredPercentRated { get; init; }

    /// <summary>How the terminations are tested.</summary>
    public TerminalTest TerminalTest { get; init; } = TerminalTest.LowerEnd;

    /// <summary>The voltage found at the panel; null takes the nominal voltage. For the drop only: more than 0 V.</summary>
    public ElectricPotential? PanelVoltage { get; init; }

    /// <summary>What the caller would rather have.</summary>
    public DesignPreferences Preferences { get; init; } = new();

    internal void Check(RequestCheck check)
    {
        check.NotNull(Load, nameof(Load));
        Load?.Check(check.In(nameof(Load)));
        check.NotNull(Preferences, nameof(Preferences));
        if (Preferences is { } wishes)
        {
            RequestCheck inner = check.In(nameof(Preferences));
            inner.Share(wishes.DropLimit is { } s ? Canonical.Fraction(s) : null, nameof(wishes.DropLimit));
            inner.Defined(wishes.SmallestSize, nameof(wishes.SmallestSize));
        }

        check.Defined<SupplySystem>(System, nameof(System));
        check.Defined<ConductorMaterial>(Material, nameof(Material));
        check.Defined<WiringMethod>(Method, nameof(Method));
        check.Defined(Insulation, nameof(Insulation));
        check.Defined(SupplyTermination, nameof(SupplyTermination));
        check.Defined(LoadTermination, nameof(LoadTermination));
        check.Defined<OvercurrentDeviceKind>(DeviceKind, nameof(DeviceKind));
        check.Defined<TerminalTest>(TerminalTest, nameof(TerminalTest));
        check.MoreThanZero(PanelVoltage is { } v ? Canonical.Volts(v) : null, nameof(PanelVoltage), QuantityUnit.Volt);
        check.Require(
            System != SupplySystem.SplitPhase120V240V || Load?.Connection != CircuitConnection.ThreePhase,
            "Load.Connection",
            "cannot be ThreePhase on a single-phase system.");
        check.NotNull(Route, nameof(Route));
        RouteChecks.Check(Route, check);
    }

    internal ConductorRun Run(bool neutral) => Run(neutral, Material, Method, Insulation);

    internal ConductorRun Run(bool neutral, ConductorMaterial material, WiringMethod method, InsulationType? insulation) => new()
    {
        Material = material,
        Method = method,
        Insulation = insulation,
        Wires = new CircuitWires { System = System, Connection = Load.Connection, Neutral = neutral, MostlyNonlinear = Load.MostlyNonlinear },
        Route = Route,
        SupplyTermination = SupplyTermination,
        LoadTermination = LoadTermination,
    };
}
