using BenchmarkDotNet.Attributes;
using ElectroRules.Conductors;
using UnitsNet;

namespace ElectroRules.Benchmarks;

/// <summary>The bare look-ups: no steps, no allocation.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class LookUps
{
    private readonly RuleSet _rules = Inputs.Rules;
    private readonly ElectricCurrent _need = ElectricCurrent.FromAmperes(59.9);
    private readonly Ratio _factor = Ratio.FromDecimalFractions(0.82);

    [Benchmark]
    public ElectricCurrent? LookUp() =>
        Ampacity.Listed(_rules, ConductorSize.Awg6, ConductorMaterial.Copper, TerminationRating.C75);

    [Benchmark]
    public ConductorSize? Search() => ConductorSearch.Smallest(
        _rules, _need, ConductorMaterial.Copper, TerminationRating.C90, TerminationRating.C60, _factor);
}
