using ElectroRules.Conductors;

namespace ElectroRules.Benchmarks.Comparison;

/// <summary>The search as LINQ over records.</summary>
internal sealed class LinqSearch(SizeRow[] rows)
{
    internal ConductorSize? Smallest(SearchQuery query) =>
        rows.Where(r => r.Material == query.Material && r.Meets(query)).OrderBy(r => r.Size).FirstOrDefault()?.Size;
}
