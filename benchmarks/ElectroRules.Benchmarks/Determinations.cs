using BenchmarkDotNet.Attributes;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Benchmarks;

/// <summary>The operations, each with its derivation. The steps are kept packed: unfolding them is not measured.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class Determinations
{
    private readonly RuleSet _rules = Inputs.Rules;
    private readonly BranchCircuitRequest _kiln = Inputs.Kiln();

    private readonly AmpacityRequest _ampacity = new() { Size = ConductorSize.Awg6, Run = Inputs.ConduitOfThreeStretches() };

    private readonly SmallestConductorRequest _smallest = new()
    {
        Run = Inputs.ConduitOfThreeStretches(),
        Continuous = ElectricCurrent.FromAmperes(47.9),
        Noncontinuous = ElectricCurrent.Zero,
    };

    private readonly OvercurrentRequest _overcurrent = new()
    {
        Continuous = ElectricCurrent.FromAmperes(47.9),
        Noncontinuous = ElectricCurrent.Zero,
        Connection = CircuitConnection.LineToLine,
        ConductorAmpacity = ElectricCurrent.FromAmperes(65),
        ConductorSize = ConductorSize.Awg6,
        ConductorMaterial = ConductorMaterial.Copper,
        SeveralReceptacles = false,
    };

    private readonly VoltageDropRequest _drop = new()
    {
        Size = ConductorSize.Awg6,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.NonmetallicSheathedCable,
        Connection = CircuitConnection.LineToLine,
        Current = ElectricCurrent.FromAmperes(47.9),
        SourceVoltage = ElectricPotential.FromVolts(240),
        Length = Length.FromFeet(95),
        PowerFactor = Ratio.FromDecimalFractions(1),
    };

    private readonly EquipmentGroundingRequest _ground = new()
    {
        Device = ElectricCurrent.FromAmperes(60),
        Material = ConductorMaterial.Copper,
        InstalledSize = ConductorSize.Awg3,
        InstalledMaterial = ConductorMaterial.Copper,
        SmallestAfterCorrection = ConductorSize.Awg4,
        SmallestBeforeCorrection = ConductorSize.Awg6,
    };

    /// <summary>Says when a request does not lead to an answer: then something else would be measured.</summary>
    [GlobalSetup]
    public void AllAnswer()
    {
        Determination[] all = [CorrectedAmpacity(), Smallest(), OvercurrentSelection(), Drop(), EquipmentGround(), DesignWithDerivation()];
        foreach (Determination determination in all)
        {
            if (determination.Status != DeterminationStatus.Determined)
            {
                throw new InvalidOperationException(
                    $"{determination.GetType()} is {determination.Status}: {string.Join(", ", determination.Needs)} {determination.NotCovered}");
            }
        }
    }

    [Benchmark]
    public Determination<ConductorAmpacity> CorrectedAmpacity() => Ampacity.Determine(_rules, _ampacity);

    [Benchmark(Description = "SmallestConductor")]
    public Determination<SmallestConductorResult> Smallest() => SmallestConductor.Determine(_rules, _smallest);

    [Benchmark]
    public Determination<OvercurrentSelection> OvercurrentSelection() => OvercurrentDevice.Select(_rules, _overcurrent);

    [Benchmark(Description = "VoltageDrop")]
    public Determination<VoltageDropResult> Drop() => VoltageDrop.Compute(_rules, _drop);

    [Benchmark]
    public Determination<EquipmentGroundingResult> EquipmentGround() => EquipmentGrounding.Size(_rules, _ground);

    [Benchmark]
    public Determination<BranchCircuitDesign> DesignWithDerivation() => BranchCircuit.Design(_rules, _kiln);
}
