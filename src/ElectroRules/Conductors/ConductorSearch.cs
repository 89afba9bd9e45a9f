using ElectroRules.Internal;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;
using UnitsNet;

namespace ElectroRules.Conductors;

/// <summary>The bare search for a size: no steps, no allocation.</summary>
public static class ConductorSearch
{
    /// <summary>The smallest size whose ampacity, times a factor for the surroundings and held to a terminal column, meets a need.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="need">The ampacity needed; more than 0 A.</param>
    /// <param name="material">The metal.</param>
    /// <param name="insulation">The temperature rating of the insulation, from which correction starts.</param>
    /// <param name="terminations">The temperature column of the terminations.</param>
    /// <param name="factor">The product of the correction and adjustment factors; more than 0.</param>
    /// <exception cref="ArgumentException">A number is out of its range, or a choice is not a defined one.</exception>
    /// <returns>Null when no size in the table meets the need, or the edition is not covered.</returns>
    public static ConductorSize? Smallest(
        RuleSet rules, ElectricCurrent need, ConductorMaterial material, TerminationRating insulation, TerminationRating terminations, Ratio factor)
    {
        ArgumentNullException.ThrowIfNull(rules);
        RequestCheck check = RequestCheck.Throwing;
        check.Defined<ConductorMaterial>(material, nameof(material));
        check.Defined<TerminationRating>(insulation, nameof(insulation));
        check.Defined<TerminationRating>(terminations, nameof(terminations));
        check.MoreThanZero(Canonical.Amperes(need), nameof(need), Results.QuantityUnit.Ampere);
        check.MoreThanZero(Canonical.Fraction(factor), nameof(factor), Results.QuantityUnit.One);
        ReferenceTable table = rules.Table(ConductorAmpacityTable.Index);
        if (!table.IsPresent)
        {
            return null;
        }

        int from = TemperatureColumn.InTable(material, (int)insulation - 1);
        int cap = TemperatureColumn.InTable(material, (int)terminations - 1);
        double amperes = Canonical.Amperes(need);
        double share = Canonical.Fraction(factor);
        int low = SmallestAllowed(rules, material);
        int high = (int)ConductorSize.Kcmil2000;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (Meets(table, middle, from, cap, share, amperes))
            {
                high = middle;
            }
            else
            {
                low = middle + 1;
            }
        }

        return Meets(table, low, from, cap, share, amperes) ? (ConductorSize)low : null;
    }

    /// <summary>The smallest size of general wiring in a metal.</summary>
    internal static int SmallestAllowed(RuleSet rules, ConductorMaterial material) =>
        (int)rules.Table(ConductorMinimumSizeTable.Index).At((int)material - 1, ConductorMinimumSizeTable.Column.Size);

    private static bool Meets(ReferenceTable table, int size, int from, int cap, double factor, double need) =>
        Limit.AtLeast(Math.Min(table.At(size - 1, from) * factor, table.At(size - 1, cap)), need);
}
