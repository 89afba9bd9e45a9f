using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>Which conductors may be run in parallel.</summary>
internal static class ParallelConductors
{
    internal static void Check(RuleSet rules, ref Deriving d, ConductorRun run, ConductorSize size)
    {
        if (run.ParallelSets > 1 && (int)size < Smallest(rules))
        {
            SegmentAmpacity.Refuse(ref d, Rules.ParallelConductors, "too-small-for-parallel", "/run/parallelSets");
        }
    }

    /// <summary>The smallest size of general wiring in a metal, or in parallel when there is more than one set.</summary>
    internal static int SmallestAllowed(RuleSet rules, ConductorMaterial material, int sets)
    {
        int smallest = ConductorSearch.SmallestAllowed(rules, material);
        return sets > 1 ? Math.Max(smallest, Smallest(rules)) : smallest;
    }

    private static int Smallest(RuleSet rules) =>
        (int)rules.Table(ConductorParallelMinimumTable.Index).At(0, ConductorParallelMinimumTable.Column.Size);
}
