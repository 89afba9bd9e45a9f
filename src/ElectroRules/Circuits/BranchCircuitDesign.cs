using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Circuits;

/// <summary>What decided a choice.</summary>
public enum DesignLimit
{
    /// <summary>The load, with the factor for its continuous part.</summary>
    Load = 1,

    /// <summary>The nameplate.</summary>
    Nameplate,

    /// <summary>The need at the terminations, before correction.</summary>
    Terminations,

    /// <summary>The ampacity after correction and adjustment.</summary>
    Surroundings,

    /// <summary>What the device protects.</summary>
    DeviceProtection,

    /// <summary>The smallest size of general wiring.</summary>
    SmallestSize,

    /// <summary>The wish for a drop within a limit.</summary>
    VoltageDrop,

    /// <summary>A wish of the caller.</summary>
    Preference,

    /// <summary>What cable is commonly sold.</summary>
    CableAsSold,

    /// <summary>The table by the rating of the device.</summary>
    DeviceRating,

    /// <summary>The increase with the circuit conductors.</summary>
    ConductorIncrease,

    /// <summary>The ratings that a circuit of several outlets may have.</summary>
    OutletRatings,
}

/// <summary>The ungrounded conductors.</summary>
public sealed record ConductorChoice
{
    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>The size.</summary>
    public required ConductorSize Size { get; init; }

    /// <summary>The metal.</summary>
    public required ConductorMaterial Material { get; init; }

    /// <summary>The insulation, when it was named.</summary>
    public required InsulationType? Insulation { get; init; }

    /// <summary>The wiring method.</summary>
    public required WiringMethod Method { get; init; }

    /// <summary>The ampacity where they lie.</summary>
    public required ElectricCurrent Ampacity { get; init; }

    /// <summary>What decided the size.</summary>
    public required DesignLimit Limit { get; init; }
}

/// <summary>The neutral.</summary>
public sealed record NeutralChoice
{
    /// <summary>Whether the load needs one.</summary>
    public required bool Needed { get; init; }

    /// <summary>Whether one is run as a spare only.</summary>
    public required bool Spare { get; init; }

    /// <summary>The size; null when none is run. It is that of the ungrounded conductors.</summary>
    public required ConductorSize? Size { get; init; }
}

/// <summary>The equipment grounding conductor.</summary>
public sealed record GroundingChoice
{
    /// <summary>The smallest size that is asked for.</summary>
    public required ConductorSize Size { get; init; }

    /// <summary>The metal.</summary>
    public required ConductorMaterial Material { get; init; }

    /// <summary>The size that the cable as commonly sold has; null when that is not known or it is no such cable.</summary>
    public required ConductorSize? InCable { get; init; }

    /// <summary>What decided the size.</summary>
    public required DesignLimit Limit { get; init; }
}

/// <summary>A cable as the trade calls it.</summary>
public sealed record CableChoice
{
    /// <summary>The size and the insulated conductors, for example "6/3"; the ground wire is not counted.</summary>
    public required string TradeSize { get; init; }

    /// <summary>The insulated conductors.</summary>
    public required int InsulatedConductors { get; init; }
}

/// <summary>The voltage drop of the circuit at its load.</summary>
public sealed record DropChoice
{
    /// <summary>The drop.</summary>
    public required ElectricPotential Drop { get; init; }

    /// <summary>The drop as a share of the voltage at the panel.</summary>
    public required Ratio Share { get; init; }

    /// <summary>The voltage to expect at the load.</summary>
    public required ElectricPotential VoltageAtLoad { get; init; }
}

/// <summary>Another way that was tried.</summary>
public sealed record AlternativeCircuit
{
    /// <summary>The metal.</summary>
    public required ConductorMaterial Material { get; init; }

    /// <summary>The wiring method.</summary>
    public required WiringMethod Method { get; init; }

    /// <summary>The size by ampacity; null when it does not work.</summary>
    public required ConductorSize? Size { get; init; }

    /// <summary>Why it does not work: a permanent code such as "method-not-for-place"; null when it does.</summary>
    public required string? WhyNot { get; init; }
}

/// <summary>A branch circuit for one load.</summary>
public sealed record BranchCircuitDesign
{
    /// <summary>The current of the load at the voltage of the supply.</summary>
    public required ElectricCurrent LoadCurrent { get; init; }

    /// <summary>Whether the load counts as continuous.</summary>
    public required bool Continuous { get; init; }

    /// <summary>What device and terminations must carry: 125 percent of a continuous load.</summary>
    public required ElectricCurrent Required { get; init; }

    /// <summary>The nominal voltage between the conductors that the load is connected to.</summary>
    public required ElectricPotential SupplyVoltage { get; init; }

    /// <summary>The device.</summary>
    public required OvercurrentDeviceChoice Device { get; init; }

    /// <summary>What decided the device.</summary>
    public required DesignLimit DeviceLimit { get; init; }

    /// <summary>The largest device that these conductors and this load allow.</summary>
    public required ElectricCurrent LargestDevice { get; init; }

    /// <summary>The ungrounded conductors.</summary>
    public required ConductorChoice Conductors { get; init; }

    /// <summary>The neutral.</summary>
    public required NeutralChoice Neutral { get; init; }

    /// <summary>The equipment grounding conductor.</summary>
    public required GroundingChoice EquipmentGround { get; init; }

    /// <summary>The cable; null when the method is a raceway or its makes are not known here.</summary>
    public required CableChoice? Cable { get; init; }

    /// <summary>The voltage drop.</summary>
    public required DropChoice Drop { get; init; }

    /// <summary>What is left at the device: its rating less what it must carry.</summary>
    public required ElectricCurrent ReserveAtDevice { get; init; }

    /// <summary>What is left of the conductors: their ampacity less the load.</summary>
    public required ElectricCurrent ReserveOfConductors { get; init; }

    /// <summary>The other ways that were tried.</summary>
    public required IReadOnlyList<AlternativeCircuit> Alternatives { get; init; }
}
