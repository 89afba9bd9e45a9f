using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Results;

namespace ElectroRules.Tests.Circuits;

/// <summary>Faults that the library once had, each said beside its test, so that they do not come back.</summary>
public sealed class MendedFaultTests
{
    // Was a fault: DesignSteps.Write makes an ElectricPotential of NaN before it is asked whether the derivation was stopped, and UnitsNet throws.
    // A load of 380 A at 60 degrees needs 700 kcmil (385 A), which has no impedance in the table: the answer is "not covered".
    [Fact]
    public void A_size_without_an_impedance_is_not_covered_and_does_not_throw()
    {
        BranchCircuitRequest request = Sample.Pipe(Sample.Amperes(LoadKind.Other, 380, LoadDuty.Noncontinuous)) with
        {
            SupplyTermination = TerminationRating.C60,
            LoadTermination = TerminationRating.C60,
        };
        Determination<BranchCircuitDesign> found = BranchCircuit.Design(Sample.Rules2023, request);
        Assert.Equal("no-impedance-in-table", found.NotCovered?.Code);
    }

    // Was a fault: ListedWithinCable looks at the terminations and the kind of cable, not at the insulation: 6 AWG TW counts as 65 A at
    // 75 degree terminations. TW is 60 degree wire: 55 A, below the 60 A that a 48 A continuous load asks for (210.19(A)).
    [Fact]
    public void The_test_at_the_terminations_goes_no_higher_than_the_insulation()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Pipe(Sample.Amperes(LoadKind.Other, 48, LoadDuty.Continuous), InsulationType.Tw));
        Assert.Equal(ConductorSize.Awg4, design.Conductors.Size);
    }

    // Was a fault: the same in what an existing conductor allows: 6 AWG TW, 55 A / 1.25 = 44 A, not 48 A.
    [Fact]
    public void An_existing_conductor_of_60_degrees_carries_its_own_column()
    {
        ConductorLimitsResult limits = Sample.Limit(Sample.Limits(ConductorSize.Awg6, Sample.Pipe(Sample.Amperes(LoadKind.Other, 1), InsulationType.Tw)));
        Assert.Equal(44, limits.MostContinuousLoad.Amperes, 9);
    }

    // Was a fault: the design asks for "/wires/mostlyNonlinear", which its request does not have, so the question cannot be answered.
    [Fact]
    public void A_three_phase_load_with_a_neutral_asks_only_for_what_the_request_has()
    {
        Load load = Sample.Amperes(LoadKind.Other, 20, LoadDuty.Noncontinuous, CircuitConnection.ThreePhase) with { NeedsNeutral = true };
        Determination<BranchCircuitDesign> found = BranchCircuit.Design(Sample.Rules2023, Sample.Pipe(load) with { System = SupplySystem.Wye120V208V });
        Assert.DoesNotContain(found.Needs, n => n.Path.StartsWith("/wires", StringComparison.Ordinal));
    }

    // Was a fault: in 2023 the step says "next up from 8 A" and gives 15 A, past the 10 A row of the table; it does not replay.
    [Fact]
    public void The_rating_for_receptacles_follows_from_the_input_of_its_step()
    {
        Load load = Sample.Amperes(LoadKind.Receptacles, 8, LoadDuty.Noncontinuous, CircuitConnection.LineToNeutral);
        Determination<BranchCircuitDesign> found = BranchCircuit.Design(Sample.Rules2023, Sample.Cable(load));
        Assert.Equal(15, found.Value.Device.Rating.Amperes);
        Step step = Assert.Single(found.Derivation, s => s.Name == "rating-for-several-outlets");
        Assert.Equal(PlainTable.Of("branch-circuit.outlet-ratings", EditionId.Nec2023).Up(found.Derivation[step.Inputs[0]].Value, "rating"), step.Value);
    }
}
