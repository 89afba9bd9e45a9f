using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Overcurrent;
using UnitsNet;

namespace ElectroRules.Tests.Support;

/// <summary>Short ways to say the facts of a test.</summary>
internal static class Given
{
    internal static ElectricCurrent Amperes(double value) => ElectricCurrent.FromAmperes(value);

    internal static Length Feet(double value) => Length.FromFeet(value);

    internal static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);

    internal static Ratio Share(double value) => Ratio.FromDecimalFractions(value);

    internal static CircuitWires TwoWires { get; } = new()
    {
        System = SupplySystem.SplitPhase120V240V,
        Connection = CircuitConnection.LineToNeutral,
        Neutral = true,
    };

    internal static RouteSegment Segment(double feet = 100, double celsius = 30, int others = 0, LocationKind location = LocationKind.Dry) => new()
    {
        Length = Feet(feet),
        Ambient = Celsius(celsius),
        Location = location,
        OtherCurrentCarryingConductors = others,
    };

    internal static ConductorRun Raceway(InsulationType insulation, params RouteSegment[] route) => new()
    {
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.ElectricalMetallicTubing,
        Insulation = insulation,
        Wires = TwoWires,
        Route = route.Length == 0 ? [Segment()] : route,
        SupplyTermination = TerminationRating.C75,
        LoadTermination = TerminationRating.C75,
    };

    internal static ConductorRun Cable(WiringMethod method, params RouteSegment[] route) => Raceway(InsulationType.Thhn, route) with
    {
        Method = method,
        Insulation = null,
    };

    internal static ConductorRun Nonmetallic(params RouteSegment[] route) => Cable(WiringMethod.NonmetallicSheathedCable, route);

    internal static ConductorRun Marked(this ConductorRun run, TerminationRating? both) =>
        run with { SupplyTermination = both, LoadTermination = both };

    internal static AmpacityRequest Ampacity(ConductorSize size, ConductorRun run, double? rating = null) => new()
    {
        Size = size,
        Run = run,
        CircuitRating = rating is { } amperes ? Amperes(amperes) : null,
    };

    internal static SmallestConductorRequest Smallest(ConductorRun run, double continuous, double noncontinuous = 0, double? rating = null) => new()
    {
        Run = run,
        Continuous = Amperes(continuous),
        Noncontinuous = Amperes(noncontinuous),
        CircuitRating = rating is { } amperes ? Amperes(amperes) : null,
    };

    internal static OvercurrentRequest Device(double continuous, double noncontinuous = 0) => new()
    {
        Continuous = Amperes(continuous),
        Noncontinuous = Amperes(noncontinuous),
        Connection = CircuitConnection.LineToLine,
    };

    /// <summary>A device that protects a conductor and has next to no load, so that the largest device is what is asked for.</summary>
    internal static OvercurrentRequest Protecting(double ampacity, ConductorSize size, bool receptacles = false) => Device(0, 1) with
    {
        ConductorAmpacity = Amperes(ampacity),
        ConductorSize = size,
        ConductorMaterial = ConductorMaterial.Copper,
        SeveralReceptacles = receptacles,
    };

    internal static VoltageDropRequest Drop(ConductorSize size, double amperes, double volts, double feet) => new()
    {
        Size = size,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.ElectricalMetallicTubing,
        Connection = CircuitConnection.LineToNeutral,
        Current = Amperes(amperes),
        SourceVoltage = ElectricPotential.FromVolts(volts),
        Length = Feet(feet),
        PowerFactor = Share(1),
    };

    internal static EquipmentGroundingRequest Ground(double device, ConductorSize installed, ConductorSize? needed = null) => new()
    {
        Device = Amperes(device),
        Material = ConductorMaterial.Copper,
        InstalledSize = installed,
        InstalledMaterial = ConductorMaterial.Copper,
        SmallestAfterCorrection = needed ?? installed,
        SmallestBeforeCorrection = needed ?? installed,
    };
}
