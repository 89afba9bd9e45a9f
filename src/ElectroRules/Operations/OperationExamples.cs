using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Internal;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;

namespace ElectroRules.Operations;

/// <summary>A request of each operation that has an answer.</summary>
internal static class OperationExamples
{
    internal static AmpacityRequest Ampacity() => new()
    {
        Size = ConductorSize.Awg6,
        Run = Run(),
        CircuitRating = Canonical.Current(60),
    };

    internal static SmallestConductorRequest Smallest() => new()
    {
        Run = Run(),
        Continuous = Canonical.Current(40),
        Noncontinuous = Canonical.Current(0),
        CircuitRating = Canonical.Current(50),
    };

    internal static OvercurrentRequest Overcurrent() => new()
    {
        Continuous = Canonical.Current(40),
        Noncontinuous = Canonical.Current(0),
        Connection = CircuitConnection.LineToLine,
    };

    internal static VoltageDropRequest VoltageDrop() => new()
    {
        Size = ConductorSize.Awg6,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.RigidPvcConduit,
        Connection = CircuitConnection.LineToLine,
        Current = Canonical.Current(40),
        SourceVoltage = Canonical.Potential(240),
        Length = Canonical.Length(120),
        PowerFactor = Canonical.Ratio(0.85),
    };

    internal static EquipmentGroundingRequest EquipmentGrounding() => new()
    {
        Device = Canonical.Current(50),
        Material = ConductorMaterial.Copper,
        InstalledSize = ConductorSize.Awg6,
        InstalledMaterial = ConductorMaterial.Copper,
        SmallestAfterCorrection = ConductorSize.Awg6,
        SmallestBeforeCorrection = ConductorSize.Awg6,
    };

    internal static ConductorLimitsRequest ConductorLimits() => new()
    {
        Size = ConductorSize.Awg6,
        Run = Run(),
        CircuitRating = Canonical.Current(60),
        SeveralReceptacles = false,
        PowerFactor = Canonical.Ratio(1),
    };

    internal static BranchCircuitRequest BranchCircuit() => new()
    {
        Load = new Load
        {
            Kind = LoadKind.Kiln,
            Connection = CircuitConnection.LineToLine,
            Current = Canonical.Current(40),
            RatedVoltage = Canonical.Potential(240),
            Duty = LoadDuty.Continuous,
            NeedsNeutral = false,
        },
        System = SupplySystem.SplitPhase120V240V,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.ElectricalMetallicTubing,
        Insulation = InsulationType.Thwn2,
        Route = [Stretch()],
        SupplyTermination = TerminationRating.C75,
        LoadTermination = TerminationRating.C75,
    };

    private static ConductorRun Run() => new()
    {
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.ElectricalMetallicTubing,
        Insulation = InsulationType.Thwn2,
        Wires = new CircuitWires
        {
            System = SupplySystem.SplitPhase120V240V,
            Connection = CircuitConnection.LineToLine,
            Neutral = false,
        },
        Route = [Stretch()],
        SupplyTermination = TerminationRating.C75,
        LoadTermination = TerminationRating.C75,
    };

    private static RouteSegment Stretch() => new()
    {
        Length = Canonical.Length(60),
        Ambient = Canonical.Temperature(35),
        Location = LocationKind.Dry,
        OtherCurrentCarryingConductors = 0,
    };
}
