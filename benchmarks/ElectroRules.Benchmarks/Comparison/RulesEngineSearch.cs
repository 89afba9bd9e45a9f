using System.Globalization;
using ElectroRules.Conductors;
using RulesEngine.Models;

namespace ElectroRules.Benchmarks.Comparison;

/// <summary>The search in RulesEngine: one workflow for each metal and pair of columns, one lambda rule for each size.</summary>
internal sealed class RulesEngineSearch
{
    private readonly RulesEngine.RulesEngine _engine;

    internal RulesEngineSearch(SizeRow[] rows)
    {
        IEnumerable<Workflow> workflows =
            from material in SearchData.Materials
            from insulation in SearchData.Insulations
            from terminations in SearchData.Terminations
            select new Workflow
            {
                WorkflowName = Name(material, insulation, terminations),
                Rules = [.. rows.Where(r => r.Material == material).Select(r => RuleOf(r, insulation, terminations))],
            };
        _engine = new RulesEngine.RulesEngine([.. workflows]);
    }

    internal ConductorSize? Smallest(SearchQuery query)
    {
        List<RuleResultTree> results = _engine
            .ExecuteAllRulesAsync(Name(query.Material, query.Insulation, query.Terminations), new RuleParameter("q", query))
            .AsTask().GetAwaiter().GetResult();
        foreach (RuleResultTree result in results)
        {
            if (result.IsSuccess)
            {
                return Enum.Parse<ConductorSize>(result.Rule.RuleName);
            }
        }

        return null;
    }

    private static Rule RuleOf(SizeRow row, TerminationRating insulation, TerminationRating terminations) => new()
    {
        RuleName = row.Size.ToString(),
        RuleExpressionType = RuleExpressionType.LambdaExpression,
        Expression = string.Create(
            CultureInfo.InvariantCulture, $"{row.At(insulation):F1} * q.Factor >= q.Least && {row.At(terminations):F1} >= q.Least"),
    };

    private static string Name(ConductorMaterial material, TerminationRating insulation, TerminationRating terminations) =>
        (material, insulation, terminations) switch
        {
            (ConductorMaterial.Copper, TerminationRating.C75, TerminationRating.C60) => "copper-75-60",
            (ConductorMaterial.Copper, TerminationRating.C75, _) => "copper-75-75",
            (ConductorMaterial.Copper, _, TerminationRating.C60) => "copper-90-60",
            (ConductorMaterial.Copper, _, _) => "copper-90-75",
            (_, TerminationRating.C75, TerminationRating.C60) => "aluminum-75-60",
            (_, TerminationRating.C75, _) => "aluminum-75-75",
            (_, _, TerminationRating.C60) => "aluminum-90-60",
            _ => "aluminum-90-75",
        };
}
