using ElectroRules.Internal;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;
using UnitsNet;

namespace ElectroRules.Overcurrent;

/// <summary>The kind of an overcurrent device.</summary>
public enum OvercurrentDeviceKind
{
    /// <summary>An inverse-time circuit breaker.</summary>
    CircuitBreaker = 1,

    /// <summary>A fuse.</summary>
    Fuse,
}

/// <summary>The standard ratings of overcurrent devices.</summary>
public static class StandardRatings
{
    internal const int NoRow = -1;

    /// <summary>The first standard rating that is not below a current.</summary>
    /// <exception cref="ArgumentException">The kind is not a defined one.</exception>
    /// <returns>Null when there is none, or the edition is not covered.</returns>
    public static ElectricCurrent? NotBelow(RuleSet rules, ElectricCurrent current, OvercurrentDeviceKind kind)
    {
        ArgumentNullException.ThrowIfNull(rules);
        RequestCheck.Throwing.Defined<OvercurrentDeviceKind>(kind, nameof(kind));
        int row = RowNotBelow(rules, Canonical.Amperes(current), kind);
        return row == NoRow ? null : Canonical.Current(At(rules, row, kind));
    }

    /// <summary>The last standard rating that is not above a current.</summary>
    /// <exception cref="ArgumentException">The kind is not a defined one.</exception>
    /// <returns>Null when there is none, or the edition is not covered.</returns>
    public static ElectricCurrent? NotAbove(RuleSet rules, ElectricCurrent current, OvercurrentDeviceKind kind)
    {
        ArgumentNullException.ThrowIfNull(rules);
        RequestCheck.Throwing.Defined<OvercurrentDeviceKind>(kind, nameof(kind));
        int row = RowNotAbove(rules, Canonical.Amperes(current), kind);
        return row == NoRow ? null : Canonical.Current(At(rules, row, kind));
    }

    internal static int Column(OvercurrentDeviceKind kind) => (int)kind - 1;

    internal static double At(RuleSet rules, int row, OvercurrentDeviceKind kind) =>
        rules.Table(OvercurrentStandardRatingsTable.Index).At(row, Column(kind));

    internal static int RowNotBelow(RuleSet rules, double amperes, OvercurrentDeviceKind kind)
    {
        ReferenceTable table = rules.Table(OvercurrentStandardRatingsTable.Index);
        for (int row = 0; row < table.RowCount; row++)
        {
            // A blank cell is NaN, and a comparison with NaN never holds.
            if (Limit.AtLeast(table.At(row, Column(kind)), amperes))
            {
                return row;
            }
        }

        return NoRow;
    }

    internal static int RowNotAbove(RuleSet rules, double amperes, OvercurrentDeviceKind kind)
    {
        ReferenceTable table = rules.Table(OvercurrentStandardRatingsTable.Index);
        for (int row = table.RowCount - 1; row >= 0; row--)
        {
            if (Limit.AtMost(table.At(row, Column(kind)), amperes))
            {
                return row;
            }
        }

        return NoRow;
    }
}
