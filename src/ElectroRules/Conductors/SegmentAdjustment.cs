using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>The factor of a stretch for the number of current-carrying conductors that lie together.</summary>
internal static class SegmentAdjustment
{
    private static readonly StepDefinition Others = new(Rules.ConductorCounting, "other-conductors", StepOperation.Given, QuantityUnit.Count);
    private static readonly StepDefinition Total = new(Rules.ConductorCounting, "total", StepOperation.Sum, QuantityUnit.Count);
    private static readonly StepDefinition AdjustmentFactor = new(Rules.Adjustment, "factor", StepOperation.Table, QuantityUnit.One, ConductorAdjustmentTable.Index);
    private static readonly StepDefinition NoneCount = new(Rules.Adjustment, "none-in-short-raceway", StepOperation.Rule, QuantityUnit.Count);

    /// <summary>The factor, with the count that it is for.</summary>
    internal static Figure Derive(
        RuleSet rules,
        ref Deriving d,
        ConductorRun run,
        RouteSegment segment,
        int others,
        Figure own,
        int index,
        Pointer at,
        ref SegmentFactors factors)
    {
        Figure total = own;
        if (others > 0 && OthersCount(rules, ref d, run, segment, at, ref factors))
        {
            Figure other = d.Given(Others, others, StepSubject.Item(index));
            total = d.Sum(Total, own, other, StepSubject.Item(index));
        }

        ReferenceTable table = rules.Table(ConductorAdjustmentTable.Index);
        if (IsNipple(rules, run))
        {
            total = d.Rule(NoneCount, 0, StepSubject.Item(index));
        }

        int row = table.RowNotBelow(total.Value);
        return table.Read(ref d, AdjustmentFactor, row, ConductorAdjustmentTable.Column.Factor, total, StepSubject.Item(index));
    }

    /// <summary>Whether the whole run lies in a raceway so short that nothing is adjusted.</summary>
    private static bool IsNipple(RuleSet rules, ConductorRun run)
    {
        bool isCable = rules.Table(WiringMethodsTable.Index).At((int)run.Method - 1, WiringMethodsTable.Column.Cable) > 0;
        return !isCable && Limit.AtMost(LengthOf(run, togetherOnly: false), NippleLength(rules));
    }

    private static double NippleLength(RuleSet rules) =>
        rules.Table(ConductorAdjustmentLengthTable.Index).At(0, ConductorAdjustmentLengthTable.Column.Length);

    /// <summary>Whether the conductors of other circuits count here.</summary>
    private static bool OthersCount(
        RuleSet rules, ref Deriving d, ConductorRun run, RouteSegment segment, Pointer at, ref SegmentFactors factors)
    {
        int row = (int)run.Method - 1;
        bool isLong = Limit.Above(LengthOf(run, togetherOnly: true), NippleLength(rules));
        bool isCable = rules.Table(WiringMethodsTable.Index).At(row, WiringMethodsTable.Column.Cable) > 0;
        if (!isCable)
        {
            return isLong;
        }

        switch (segment.Grouping)
        {
            case null:
                d.Needs(Rules.CablesTogether, at.To("/grouping"));
                return true;
            case CableGrouping.Apart:
                return false;
            case CableGrouping.Bundled:
                return isLong;
        }

        double most = rules.Table(ConductorCablesTogetherTable.Index).At(row, ConductorCablesTogetherTable.Column.Cables);
        if (double.IsNaN(most))
        {
            return isLong;
        }

        if (segment.OtherCables is not { } cables)
        {
            d.Needs(Rules.CablesTogether, at.To("/otherCables"));
            return true;
        }

        bool tooMany = Limit.Above(cables + 1, most);
        factors.MustCount = tooMany;
        return tooMany;
    }

    /// <summary>The length of all stretches, or of those with other conductors beside them: cutting one stretch in two must not free it.</summary>
    private static double LengthOf(ConductorRun run, bool togetherOnly)
    {
        double feet = 0;
        foreach (RouteSegment segment in run.Route)
        {
            if (segment.Length is { } length && (!togetherOnly || segment.OtherCurrentCarryingConductors > 0))
            {
                feet += Canonical.Feet(length);
            }
        }

        return feet;
    }
}
