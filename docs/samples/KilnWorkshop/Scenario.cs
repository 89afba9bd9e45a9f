using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using UnitsNet;

namespace KilnWorkshop;

/// <summary>The demo's facts, all invented: a potter put a kiln of 11.5 kW where a smaller one was. Its breaker trips after an hour.</summary>
internal static class Scenario
{
    /// <summary>95 ft from the subpanel: down the wall, through the hot attic, down to the kiln.</summary>
    public static IReadOnlyList<RouteSegment> Route { get; } = [Stretch(10, 30), Stretch(75, 50), Stretch(10, 30)];

    /// <summary>The new kiln, by its nameplate.</summary>
    public static Load Kiln { get; } = new()
    {
        Kind = LoadKind.Kiln,
        Connection = CircuitConnection.LineToLine,
        Power = Power.FromWatts(11_500),
        RatedVoltage = ElectricPotential.FromVolts(240),
        Duty = LoadDuty.Continuous,
    };

    /// <summary>The cable of the smaller kiln, still there: 6 AWG copper NM-B on a 50 A breaker.</summary>
    public static ConductorLimitsRequest Existing { get; } = new()
    {
        Size = ConductorSize.Awg6,
        Run = new ConductorRun
        {
            Material = ConductorMaterial.Copper,
            Method = WiringMethod.NonmetallicSheathedCable,
            Wires = new CircuitWires { System = SupplySystem.SplitPhase120V240V, Connection = CircuitConnection.LineToLine, Neutral = false },
            Route = Route,
            SupplyTermination = TerminationRating.C75,
            LoadTermination = TerminationRating.C75,
        },
        CircuitRating = ElectricCurrent.FromAmperes(50),
        SeveralReceptacles = false,
        PowerFactor = Ratio.FromDecimalFractions(1),
    };

    /// <summary>The circuit that the new kiln asks for.</summary>
    public static BranchCircuitRequest Wanted { get; } = new()
    {
        Load = Kiln,
        System = SupplySystem.SplitPhase120V240V,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.NonmetallicSheathedCable,
        Route = Route,
        SupplyTermination = TerminationRating.C75,
        LoadTermination = TerminationRating.C75,
    };

    private static RouteSegment Stretch(double feet, double celsius) => new()
    {
        Length = Length.FromFeet(feet),
        Ambient = Temperature.FromDegreesCelsius(celsius),
        Location = LocationKind.Dry,
        OtherCurrentCarryingConductors = 0,
    };
}
