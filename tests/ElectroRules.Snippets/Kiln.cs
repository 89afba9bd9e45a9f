using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using UnitsNet;

namespace ElectroRules.Snippets;

/// <summary>The request that the examples share.</summary>
internal static class Kiln
{
    public static BranchCircuitRequest Known { get; } = new()
    {
        Load = new Load
        {
            Kind = LoadKind.Kiln,
            Connection = CircuitConnection.LineToLine,
            Power = Power.FromWatts(11_500),
            RatedVoltage = ElectricPotential.FromVolts(240),
            Duty = LoadDuty.Continuous,
        },
        System = SupplySystem.SplitPhase120V240V,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.NonmetallicSheathedCable,
        Route =
        [
            new RouteSegment
            {
                Length = Length.FromFeet(95),
                Ambient = Temperature.FromDegreesCelsius(50),
                Location = LocationKind.Dry,
                OtherCurrentCarryingConductors = 0,
            },
        ],
        SupplyTermination = TerminationRating.C75,
        LoadTermination = TerminationRating.C75,
    };

    public static BranchCircuitRequest UnknownDuty { get; } = Known with { Load = Known.Load with { Duty = null } };
}
