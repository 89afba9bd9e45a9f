using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>Which of its needs a size fails.</summary>
internal enum FailedNeed
{
    None,
    Terminations,
    AfterCorrection,
}

/// <summary>The two tests of a conductor against its load: at the terminations before correction, and after correction.</summary>
internal static class ConductorNeeds
{
    private static readonly StepDefinition FailsTerminations = new(Rules.MinimumForLoad, "too-small-at-terminations", StepOperation.Rejected, QuantityUnit.Ampere);
    private static readonly StepDefinition FailsCorrection = new(Rules.MinimumForLoad, "too-small-after-correction", StepOperation.Rejected, QuantityUnit.Ampere);
    private static readonly StepDefinition HoldsTerminations = new(Rules.MinimumForLoad, "enough-at-terminations", StepOperation.Holds, QuantityUnit.Ampere);
    private static readonly StepDefinition HoldsCorrection = new(Rules.MinimumForLoad, "enough-after-correction", StepOperation.Holds, QuantityUnit.Ampere);

    private static readonly StepDefinition SmallestOfAll = new(Rules.MinimumSize, "smallest-size", StepOperation.Table, QuantityUnit.ConductorSize, ConductorMinimumSizeTable.Index);

    /// <summary>Says in a step what the smallest size of general wiring is.</summary>
    internal static void SaySmallest(ref Deriving d, in ResolvedRun run)
    {
        ReferenceTable table = run.RuleSet.Table(ConductorMinimumSizeTable.Index);
        int row = (int)run.Material - 1;
        int size = (int)table.At(row, ConductorMinimumSizeTable.Column.Size);
        table.Read(ref d, SmallestOfAll, row, ConductorMinimumSizeTable.Column.Size, StepSubject.Conductor(size, (int)run.Material));
    }

    /// <summary>The smallest size that may be used at all.</summary>
    internal static int First(RuleSet rules, ConductorRun run) =>
        ParallelConductors.SmallestAllowed(rules, run.Material, run.ParallelSets);

    internal static FailedNeed Test(in ResolvedRun run, int size, in ContinuousNeed need, in TerminalNeeds terminals)
    {
        double atTerminations = run.ListedWithinCable(size, TemperatureColumn.Of(terminals.Required.Value));
        if (!Limit.AtLeast(atTerminations, need.AtTerminations.Value))
        {
            return FailedNeed.Terminations;
        }

        return Limit.AtLeast(Usable(in run, size, in terminals), need.Load.Value) ? FailedNeed.None : FailedNeed.AfterCorrection;
    }

    /// <summary>The ampacity after correction, held to the terminations.</summary>
    internal static double Usable(in ResolvedRun run, int size, in TerminalNeeds terminals) =>
        Math.Min(run.CorrectedAmpacity(size), run.Listed(size, TemperatureColumn.Of(terminals.Usable.Value)));

    /// <summary>The smallest size from a first one that meets both needs; 0 when there is none.</summary>
    internal static int Smallest(in ResolvedRun run, in ContinuousNeed need, in TerminalNeeds terminals, int first)
    {
        for (int size = first; size <= (int)ConductorSize.Kcmil2000; size++)
        {
            if (Test(in run, size, in need, in terminals) == FailedNeed.None)
            {
                return size;
            }
        }

        return 0;
    }

    /// <summary>Writes the chosen size with every step, and why the next smaller one fails.</summary>
    internal static Figure Explain(
        ref Deriving d, in ResolvedRun run, int size, in ContinuousNeed need, in TerminalNeeds terminals, int first)
    {
        if (size > first)
        {
            Reject(ref d, in run, size - 1, in need, in terminals);
        }
        else
        {
            SaySmallest(ref d, in run);
        }

        return Derive(ref d, in run, size, in need, in terminals);
    }

    /// <summary>Writes why a size fails its load.</summary>
    /// <returns>Whether it does.</returns>
    internal static bool Reject(ref Deriving d, in ResolvedRun run, int size, in ContinuousNeed need, in TerminalNeeds terminals)
    {
        ushort subject = StepSubject.Conductor(size, (int)run.Material);
        switch (Test(in run, size, in need, in terminals))
        {
            case FailedNeed.Terminations:
                d.Rejected(FailsTerminations, run.ListedWithinCable(size, TemperatureColumn.Of(terminals.Required.Value)), need.AtTerminations, subject);
                return true;
            case FailedNeed.AfterCorrection:
                d.Rejected(FailsCorrection, Usable(in run, size, in terminals), need.Load, subject);
                return true;
            default:
                return false;
        }
    }

    internal static Figure Derive(ref Deriving d, in ResolvedRun run, int size, in ContinuousNeed need, in TerminalNeeds terminals)
    {
        ushort subject = StepSubject.Conductor(size, (int)run.Material);
        Span<double> perSegment = stackalloc double[run.Segments.Length];
        Figure corrected = run.Derive(ref d, size, perSegment);
        Figure terminal = Ampacity.TerminalAmpacity(ref d, in run, (ConductorSize)size, terminals.Usable);
        Figure usable = Ampacity.UsableAmpacity(ref d, corrected, terminal);
        d.Holds(HoldsTerminations, run.ListedWithinCable(size, TemperatureColumn.Of(terminals.Required.Value)), need.AtTerminations, subject);
        d.Holds(HoldsCorrection, usable.Value, need.Load, subject);
        return usable;
    }
}
