using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Overcurrent;

/// <summary>How far a device may go above the ampacity of a conductor.</summary>
internal readonly record struct ProtectionRules(
    OvercurrentDeviceKind Kind, bool SeveralReceptacles, bool NoNextSizeUp, bool SmallConductorExempt, double NameplateMaximum);

/// <summary>The largest device that protects a conductor: its ampacity, the next standard rating up where that is allowed, and the small-conductor limits.</summary>
internal static class DeviceForConductor
{
    private static readonly StepDefinition AmpacityIsStandard = new(Rules.StandardRating, "largest-not-above-ampacity", StepOperation.NextDown, QuantityUnit.Ampere, OvercurrentStandardRatingsTable.Index);
    private static readonly StepDefinition NextUp = new(Rules.NextSizeUp, "next-standard-rating", StepOperation.NextUp, QuantityUnit.Ampere, OvercurrentStandardRatingsTable.Index);
    private static readonly StepDefinition Small = new(Rules.SmallConductor, "small-conductor-limit", StepOperation.Table, QuantityUnit.Ampere, OvercurrentSmallConductorTable.Index);
    private static readonly StepDefinition WithinSmall = new(Rules.SmallConductor, "largest-device", StepOperation.Minimum, QuantityUnit.Ampere);
    private static readonly StepDefinition Nameplate = new(Rules.SpecificApplication, "nameplate-device", StepOperation.Given, QuantityUnit.Ampere);

    /// <summary>The largest device for an ampacity; NaN when no standard device is small enough.</summary>
    internal static double Largest(RuleSet rules, double ampacity, int size, ConductorMaterial material, in ProtectionRules protection)
    {
        if (protection.SmallConductorExempt && !double.IsNaN(protection.NameplateMaximum))
        {
            return protection.NameplateMaximum;
        }

        double largest = ByAmpacity(rules, ampacity, in protection);
        double small = SmallLimit(rules, size, material);
        return double.IsNaN(small) || protection.SmallConductorExempt ? largest : Math.Min(largest, small);
    }

    /// <summary>The largest device with its steps.</summary>
    internal static Figure Derive(
        RuleSet rules, ref Deriving d, Figure ampacity, int size, ConductorMaterial material, in ProtectionRules protection)
    {
        if (protection.SmallConductorExempt && !double.IsNaN(protection.NameplateMaximum))
        {
            return d.Given(Nameplate, protection.NameplateMaximum);
        }

        ReferenceTable table = rules.Table(OvercurrentStandardRatingsTable.Index);
        int column = StandardRatings.Column(protection.Kind);
        int row = RowFor(rules, ampacity.Value, in protection, out bool roundsUp);
        if (row == StandardRatings.NoRow)
        {
            d.NotCovered("no-standard-rating", Rules.StandardRating, string.Empty, string.Empty);
            return default;
        }

        Figure largest = table.Read(ref d, roundsUp ? NextUp : AmpacityIsStandard, row, column, ampacity);
        double small = SmallLimit(rules, size, material);
        if (double.IsNaN(small) || protection.SmallConductorExempt)
        {
            return largest;
        }

        Figure limit = rules.Table(OvercurrentSmallConductorTable.Index)
            .Read(ref d, Small, size - 1, (int)material - 1, StepSubject.Conductor(size, (int)material));
        return d.Minimum(WithinSmall, largest, limit);
    }

    /// <summary>The limit of a small conductor; NaN when it is not a small one.</summary>
    internal static double SmallLimit(RuleSet rules, int size, ConductorMaterial material) =>
        rules.Table(OvercurrentSmallConductorTable.Index).At(size - 1, (int)material - 1);

    private static double ByAmpacity(RuleSet rules, double ampacity, in ProtectionRules protection)
    {
        int row = RowFor(rules, ampacity, in protection, out _);
        return row == StandardRatings.NoRow ? double.NaN : StandardRatings.At(rules, row, protection.Kind);
    }

    /// <summary>The row of the largest device: the next standard rating up where that is allowed, else the last one not above the ampacity.</summary>
    private static int RowFor(RuleSet rules, double ampacity, in ProtectionRules protection, out bool roundsUp)
    {
        if (!protection.SeveralReceptacles && !protection.NoNextSizeUp)
        {
            int up = StandardRatings.RowNotBelow(rules, ampacity, protection.Kind);
            double most = rules.Table(OvercurrentCurrentsTable.Index)
                .At(OvercurrentCurrentsTable.Row.NextSizeUpLargestDevice, OvercurrentCurrentsTable.Column.Value);
            roundsUp = up != StandardRatings.NoRow && Limit.AtMost(StandardRatings.At(rules, up, protection.Kind), most);
            if (roundsUp)
            {
                return up;
            }
        }

        roundsUp = false;
        return StandardRatings.RowNotAbove(rules, ampacity, protection.Kind);
    }
}
