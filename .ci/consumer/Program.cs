using System.Globalization;
using System.Text.Json;
using ElectroRules;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Operations;
using ElectroRules.Results;
using UnitsNet;

// A program outside the repository that knows the library only as a package. The expected answers are worked by hand:
// 11 500 W / 240 V = 47.92 A, times 1.25 = 59.90 A: a 60 A device; 6 AWG in nonmetallic-sheathed cable is 55 A, 4 AWG 70 A;
// the equipment grounding conductor for 60 A is 10 AWG copper; 2 x 95 / 1000 x 0.31 x 47.92 = 2.82 V of 240 V.
Determination<BranchCircuitDesign> answer = BranchCircuit.Design(RuleSet.For(EditionId.Nec2023), new BranchCircuitRequest
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
});
BranchCircuitDesign circuit = answer.Value;
Console.WriteLine(string.Create(
    CultureInfo.InvariantCulture,
    $"{circuit.Device.Rating.Amperes} A, {circuit.Device.Poles} poles, {circuit.Conductors.Size.Label()}, ground {circuit.EquipmentGround.Size.Label()}, {circuit.Drop.VoltageAtLoad.Volts:F1} V"));

// The same library through JSON: every operation answers its own example.
foreach (Operation operation in OperationCatalog.All)
{
    using JsonDocument json = JsonDocument.Parse(OperationCatalog.Run(operation.Id, operation.ExampleRequest()));
    Console.WriteLine($"{operation.Id}: {json.RootElement.GetProperty("status").GetString()}");
}
