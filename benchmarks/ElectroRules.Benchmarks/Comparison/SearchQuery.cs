using ElectroRules.Conductors;

namespace ElectroRules.Benchmarks.Comparison;

/// <summary>One search for a size, as plain numbers.</summary>
/// <param name="Need">The ampacity needed, in amperes.</param>
/// <param name="Material">The metal.</param>
/// <param name="Insulation">The column that correction starts from.</param>
/// <param name="Terminations">The column that the ampacity is held to.</param>
/// <param name="Factor">The product of the factors.</param>
public sealed record SearchQuery(
    double Need, ConductorMaterial Material, TerminationRating Insulation, TerminationRating Terminations, double Factor)
{
    /// <summary>The need less the tolerance that the library compares with.</summary>
    public double Least { get; } = Need * (1 - 1e-9);
}

/// <summary>A size with its ampacities in one metal, read from the rule set.</summary>
/// <param name="Size">The size.</param>
/// <param name="Material">The metal.</param>
/// <param name="At60">Its ampacity at 60 °C.</param>
/// <param name="At75">Its ampacity at 75 °C.</param>
/// <param name="At90">Its ampacity at 90 °C.</param>
public sealed record SizeRow(ConductorSize Size, ConductorMaterial Material, double At60, double At75, double At90)
{
    public double At(TerminationRating column) => column switch
    {
        TerminationRating.C60 => At60,
        TerminationRating.C75 => At75,
        _ => At90,
    };

    public bool Meets(SearchQuery query) =>
        At(query.Insulation) * query.Factor >= query.Least && At(query.Terminations) >= query.Least;
}

/// <summary>Reads the rows from the rule set and makes the queries that all ways of searching are compared over.</summary>
internal static class SearchData
{
    internal static readonly ConductorMaterial[] Materials = [ConductorMaterial.Copper, ConductorMaterial.Aluminum];
    internal static readonly TerminationRating[] Insulations = [TerminationRating.C75, TerminationRating.C90];
    internal static readonly TerminationRating[] Terminations = [TerminationRating.C60, TerminationRating.C75];

    /// <summary>The sizes of general wiring that have ampacities, smallest first within a metal.</summary>
    internal static SizeRow[] Rows(RuleSet rules)
    {
        Tables.ReferenceTable table = rules.Table("conductor.ampacity");
        var rows = new List<SizeRow>();
        foreach (ConductorMaterial material in Materials)
        {
            string metal = material == ConductorMaterial.Copper ? "cu" : "al";
            foreach (ConductorSize size in ConductorSizes.All)
            {
                string row = size.Label();
                if (table.Value(row, metal + "60") is { } at60
                    && table.Value(row, metal + "75") is { } at75
                    && table.Value(row, metal + "90") is { } at90)
                {
                    rows.Add(new SizeRow(size, material, at60, at75, at90));
                }
            }
        }

        return [.. rows];
    }

    internal static IEnumerable<SearchQuery> Grid()
    {
        foreach (ConductorMaterial material in Materials)
        {
            foreach (TerminationRating insulation in Insulations)
            {
                foreach (TerminationRating terminations in Terminations)
                {
                    foreach (double factor in (double[])[1, 0.91, 0.8, 0.71, 0.35])
                    {
                        // Steps of 5 A fall on table values; 0.8 of a table value and odd needs do too or do not.
                        for (double need = 2.5; need < 720; need += 12.5)
                        {
                            yield return new SearchQuery(need, material, insulation, terminations, factor);
                        }
                    }
                }
            }
        }
    }
}
