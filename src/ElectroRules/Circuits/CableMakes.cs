using System.Globalization;
using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Circuits;

/// <summary>Cables as commonly sold. Only nonmetallic-sheathed copper cable is known here; for other cables the size stands as computed.</summary>
internal static class CableMakes
{
    private const int FewestInsulated = 2;
    private const int MostInsulated = 3;

    /// <summary>The size from a first one that is sold with enough insulated conductors.</summary>
    internal static int SizeAsSold(
        RuleSet rules, ref Deriving d, WiringMethod method, ConductorMaterial material, int size, int insulated, out int conductors)
    {
        conductors = 0;
        if (method != WiringMethod.NonmetallicSheathedCable)
        {
            return size;
        }

        int sold = Sold(rules, material, size, insulated, out conductors);
        if (sold == 0)
        {
            d.NotCovered("no-such-cable", Rules.CableMake, "/method", string.Empty);
        }

        return sold;
    }

    internal static int Sold(RuleSet rules, ConductorMaterial material, int size, int insulated, out int conductors)
    {
        ReferenceTable makes = rules.Table(CableNonmetallicMakesTable.Index);
        for (int candidate = size; material == ConductorMaterial.Copper && candidate <= (int)ConductorSize.Kcmil2000; candidate++)
        {
            for (int count = Math.Max(insulated, FewestInsulated); count <= MostInsulated; count++)
            {
                if (makes.At(candidate - 1, count - FewestInsulated) > 0)
                {
                    conductors = count;
                    return candidate;
                }
            }
        }

        conductors = 0;
        return 0;
    }

    /// <summary>The ground wire in the cable as sold; 0 when not known.</summary>
    internal static int GroundOf(RuleSet rules, int size)
    {
        double ground = rules.Table(CableNonmetallicGroundTable.Index).At(size - 1, CableNonmetallicGroundTable.Column.Ground);
        return double.IsNaN(ground) ? 0 : (int)ground;
    }

    /// <summary>The trade's short name of a cable, for example "6/3".</summary>
    internal static string TradeSize(int size, int conductors)
    {
        string label = ((ConductorSize)size).Label();
        return string.Create(CultureInfo.InvariantCulture, $"{label.AsSpan(0, label.IndexOf(' ', StringComparison.Ordinal))}/{conductors}");
    }
}
