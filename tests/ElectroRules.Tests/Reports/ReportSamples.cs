using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Tests.Reports;

/// <summary>Determinations of every kind and status.</summary>
internal static class ReportSamples
{
    internal static readonly RuleSet Rules = RuleSet.For(EditionId.Nec2023);

    internal static ConductorRun Run(double? ambient = 40, TerminationRating? load = TerminationRating.C75) => new()
    {
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.ElectricalMetallicTubing,
        Insulation = InsulationType.Thhn,
        Wires = new CircuitWires { System = SupplySystem.SplitPhase120V240V, Connection = CircuitConnection.LineToLine, Neutral = false },
        SupplyTermination = TerminationRating.C75,
        LoadTermination = load,
        Route =
        [
            new RouteSegment
            {
                Length = Length.FromFeet(40),
                Ambient = ambient is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null,
                Location = LocationKind.Dry,
                OtherCurrentCarryingConductors = 2,
            },
        ],
    };

    internal static Determination<SmallestConductorResult> Smallest(RuleSet? rules = null, TerminationRating? load = null) =>
        SmallestConductor.Determine(rules ?? Rules, new SmallestConductorRequest
        {
            Run = Run(load: load),
            Continuous = ElectricCurrent.FromAmperes(11500.0 / 240),
            Noncontinuous = ElectricCurrent.FromAmperes(0),
            CircuitRating = ElectricCurrent.FromAmperes(60),
        });

    internal static Determination<VoltageDropResult> Drop() => VoltageDrop.Compute(Rules, new VoltageDropRequest
    {
        Size = ConductorSize.Awg12,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.NonmetallicSheathedCable,
        Connection = CircuitConnection.LineToNeutral,
        Current = ElectricCurrent.FromAmperes(16),
        SourceVoltage = ElectricPotential.FromVolts(120),
        Length = Length.FromFeet(120),
        PowerFactor = Ratio.FromDecimalFractions(0.95),
    });

    internal static Determination<OvercurrentSelection> Device(double ampacity = 65) => OvercurrentDevice.Select(Rules, new OvercurrentRequest
    {
        Continuous = ElectricCurrent.FromAmperes(40),
        Noncontinuous = ElectricCurrent.FromAmperes(5),
        Connection = CircuitConnection.LineToLine,
        ConductorAmpacity = ElectricCurrent.FromAmperes(ampacity),
        ConductorSize = ConductorSize.Awg6,
        ConductorMaterial = ConductorMaterial.Copper,
        SeveralReceptacles = false,
    });

    internal static Determination<EquipmentGroundingResult> Ground() => EquipmentGrounding.Size(Rules, new EquipmentGroundingRequest
    {
        Device = ElectricCurrent.FromAmperes(40),
        Material = ConductorMaterial.Copper,
        InstalledSize = ConductorSize.Awg4,
        InstalledMaterial = ConductorMaterial.Copper,
        SmallestAfterCorrection = ConductorSize.Awg8,
        SmallestBeforeCorrection = ConductorSize.Awg8,
    });

    internal static Determination<BranchCircuitDesign> Design() => BranchCircuit.Design(Rules, new BranchCircuitRequest
    {
        Load = new Load
        {
            Kind = LoadKind.Kiln,
            Connection = CircuitConnection.LineToLine,
            Power = Power.FromWatts(11500),
            RatedVoltage = ElectricPotential.FromVolts(240),
            Duty = LoadDuty.Continuous,
            NeedsNeutral = false,
        },
        System = SupplySystem.SplitPhase120V240V,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.ElectricalMetallicTubing,
        Insulation = InsulationType.Thhn,
        Route = Run().Route,
        SupplyTermination = TerminationRating.C75,
    });

    internal static Determination<ConductorLimitsResult> Existing() => ConductorLimits.Determine(Rules, new ConductorLimitsRequest
    {
        Size = ConductorSize.Awg6,
        Run = Run(),
        SeveralReceptacles = false,
        PowerFactor = Ratio.FromDecimalFractions(1),
    });

    internal static IEnumerable<Determination> All()
    {
        AmpacityRequest ampacity = new() { Size = ConductorSize.Awg4, Run = Run() };
        yield return Ampacity.Determine(Rules, ampacity);
        yield return Ampacity.Determine(Rules, ampacity with { Run = Run(ambient: null) });
        yield return Ampacity.Determine(Rules, ampacity with { Run = Run(ambient: 95) });
        yield return Ampacity.Determine(RuleSet.For(EditionId.Nec2026), ampacity);
        yield return Smallest();
        yield return Drop();
        yield return Device();
        yield return Device(ampacity: 30);
        yield return Ground();
        yield return Design();
        yield return Existing();
    }
}
