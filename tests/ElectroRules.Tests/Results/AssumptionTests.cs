using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Tests.Results;

/// <summary>Every answer lists the facts that it rests on, with where they come from.</summary>
public sealed class AssumptionTests
{
    [Fact]
    public void An_unmarked_termination_is_a_default_of_the_code()
    {
        Determination<BranchCircuitDesign> answer = Design(termination: null);
        Assert.Contains(answer.Assumptions, a => a.Origin == AssumptionOrigin.CodeDefault && answer.Derivation[a.Step].Name == "unmarked-limit");
    }

    [Fact]
    public void A_marked_termination_is_not()
    {
        Assert.DoesNotContain(Design(TerminationRating.C75).Assumptions, a => a.Origin == AssumptionOrigin.CodeDefault);
    }

    [Fact]
    public void What_the_nameplate_says_is_given_and_a_kiln_is_continuous_by_practice()
    {
        Determination<BranchCircuitDesign> answer = Design(termination: null);
        Assert.Contains(answer.Assumptions, a => a.Origin == AssumptionOrigin.Given && answer.Derivation[a.Step].Name == "marked-power");
        Assert.Contains(answer.Assumptions, a => a.Origin == AssumptionOrigin.CommonPractice && answer.Derivation[a.Step].Name == "continuous-by-kind");
    }

    private static Determination<BranchCircuitDesign> Design(TerminationRating? termination) => BranchCircuit.Design(
        RuleSet.For(EditionId.Nec2023),
        new BranchCircuitRequest
        {
            Load = new Load
            {
                Kind = LoadKind.Kiln,
                Connection = CircuitConnection.LineToLine,
                Power = Power.FromWatts(11_500),
                RatedVoltage = ElectricPotential.FromVolts(240),
                Duty = LoadDuty.ByKind,
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
            SupplyTermination = termination,
            LoadTermination = termination,
        });
}
