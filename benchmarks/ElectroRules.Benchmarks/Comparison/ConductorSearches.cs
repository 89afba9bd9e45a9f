using BenchmarkDotNet.Attributes;
using ElectroRules.Conductors;
using UnitsNet;

namespace ElectroRules.Benchmarks.Comparison;

/// <summary>The same search for a size, in the library and by general means. All give the same answers: the setup checks it.</summary>
/// <remarks>The other ways are one straightforward version each, not tuned. One query is measured again and again.</remarks>
[MemoryDiagnoser]
[ShortRunJob]
public class ConductorSearches
{
    private readonly RuleSet _rules = Inputs.Rules;

    private readonly SearchQuery _query = new(
        59.9, ConductorMaterial.Copper, TerminationRating.C90, TerminationRating.C60, 0.82);

    private readonly LinqSearch _linq = new(SearchData.Rows(Inputs.Rules));
    private readonly RulesEngineSearch _rulesEngine = new(SearchData.Rows(Inputs.Rules));
    private readonly NRulesSearch _nRules = new(SearchData.Rows(Inputs.Rules));

    [GlobalSetup]
    public void AllAgree()
    {
        int answers = 0;
        foreach (SearchQuery query in SearchData.Grid().Append(_query))
        {
            ConductorSize? expected = Ours(query);
            answers += expected is null ? 0 : 1;
            Same(nameof(LinqSearch), query, expected, _linq.Smallest(query));
            Same(nameof(RulesEngineSearch), query, expected, _rulesEngine.Smallest(query));
            Same(nameof(NRulesSearch), query, expected, _nRules.Smallest(query));
        }

        if (answers == 0)
        {
            throw new InvalidOperationException("No query has an answer.");
        }
    }

    [Benchmark(Baseline = true)]
    public ConductorSize? ElectroRulesSearch() => Ours(_query);

    [Benchmark]
    public ConductorSize? LinqOverRecords() => _linq.Smallest(_query);

    [Benchmark]
    public ConductorSize? RulesEngine() => _rulesEngine.Smallest(_query);

    [Benchmark]
    public ConductorSize? NRulesWithOneSession() => _nRules.Smallest(_query);

    private static void Same(string way, SearchQuery query, ConductorSize? expected, ConductorSize? actual)
    {
        if (actual != expected)
        {
            throw new InvalidOperationException($"{way} gives {actual} in place of {expected} for {query}.");
        }
    }

    private ConductorSize? Ours(SearchQuery query) => ConductorSearch.Smallest(
        _rules,
        ElectricCurrent.FromAmperes(query.Need),
        query.Material,
        query.Insulation,
        query.Terminations,
        Ratio.FromDecimalFractions(query.Factor));
}
