using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Snippets;

/// <summary>The examples of README.md.</summary>
public sealed class ReadmeSnippets
{
    [Fact]
    public void The_circuit_of_a_kiln()
    {
        #region kiln
        RuleSet rules = RuleSet.For(EditionId.Nec2023);
        var request = new BranchCircuitRequest
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

        Determination<BranchCircuitDesign> answer = BranchCircuit.Design(rules, request);
        BranchCircuitDesign circuit = answer.Value;
        // circuit.Device.Rating is 60 A, circuit.Conductors.Size is 4 AWG,
        // circuit.EquipmentGround.Size is 10 AWG, circuit.Drop.VoltageAtLoad is 237.2 V.
        #endregion

        Assert.Equal(DeterminationStatus.Determined, answer.Status);
        Assert.Equal(60, circuit.Device.Rating.Amperes);
        Assert.Equal(ConductorSize.Awg4, circuit.Conductors.Size);
        Assert.Equal(ConductorSize.Awg10, circuit.EquipmentGround.Size);
        Assert.Equal(237.2, circuit.Drop.VoltageAtLoad.Volts, 1);
    }
}
