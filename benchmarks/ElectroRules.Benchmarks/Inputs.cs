using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using UnitsNet;

namespace ElectroRules.Benchmarks;

/// <summary>What the benchmarks ask for.</summary>
internal static class Inputs
{
    internal static RuleSet Rules { get; } = RuleSet.For(EditionId.Nec2023);

    /// <summary>A kiln of 11.5 kW at 240 V, 95 ft away, with 75 ft of the run at 50 °C, and a spare neutral.</summary>
    internal static BranchCircuitRequest Kiln() => Circuit(11.5, Stretch(20, 25), Stretch(75, 50));

    internal static BranchCircuitRequest Circuit(double kilowatts, params RouteSegment[] route) => new()
    {
        Load = new Load
        {
            Kind = LoadKind.Kiln,
            Connection = CircuitConnection.LineToLine,
            Power = Power.FromKilowatts(kilowatts),
            RatedVoltage = ElectricPotential.FromVolts(240),
            Duty = LoadDuty.Continuous,
        },
        System = SupplySystem.SplitPhase120V240V,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.NonmetallicSheathedCable,
        Route = route,
        SupplyTermination = TerminationRating.C75,
        LoadTermination = TerminationRating.C75,
        Preferences = new DesignPreferences { SpareNeutral = true },
    };

    internal static RouteSegment Stretch(double feet, double celsius, int others = 0) => new()
    {
        Length = Length.FromFeet(feet),
        Ambient = Temperature.FromDegreesCelsius(celsius),
        Location = LocationKind.Dry,
        OtherCurrentCarryingConductors = others,
        Grouping = CableGrouping.Apart,
    };

    internal static ConductorRun ConduitOfThreeStretches() => new()
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
        Route = [Stretch(20, 25), Stretch(60, 45, others: 4), Stretch(15, 38, others: 2)],
        SupplyTermination = TerminationRating.C75,
        LoadTermination = TerminationRating.C75,
    };
}
