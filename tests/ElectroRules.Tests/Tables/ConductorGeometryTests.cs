using System.Globalization;
using ElectroRules.Tables;

namespace ElectroRules.Tests.Tables;

/// <summary>Areas and resistances against geometry and the standard resistivities.</summary>
public class ConductorGeometryTests
{
    /// <summary>Source: ASTM B258, the American wire gauge: 36 gauge is 0.005 in, 4/0 is 0.46 in, 39 equal ratios between them.</summary>
    [Fact]
    public void A_gauge_has_the_area_of_its_diameter()
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.area"))
        {
            foreach ((string row, double area) in table.Values("area"))
            {
                string[] label = row.Split(' ');
                Assert.InRange(area / ExpectedArea(label[0], label[1]), 0.997, 1.003);
            }
        }
    }

    /// <summary>
    /// Source: IEC 60028 for annealed copper of 100 % IACS (10.371 ohm-circular mils per foot at 20 °C, 0.00393 per kelvin) and 61 % IACS
    /// for aluminum (17.002 and 0.00403); the strands of a stranded conductor are 2 % longer than the conductor.
    /// </summary>
    [Theory]
    [InlineData("cu-solid", 10.371, 0.00393, 1.00)]
    [InlineData("cu-stranded", 10.371, 0.00393, 1.02)]
    [InlineData("al-solid", 17.002, 0.00403, 1.00)]
    [InlineData("al-stranded", 17.002, 0.00403, 1.02)]
    public void The_direct_current_resistance_follows_from_the_area(string column, double resistivity, double coefficient, double lay)
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.dc-resistance"))
        {
            ReferenceTable areas = RuleSet.For(table.Edition).Table("conductor.area");
            foreach ((string row, double resistance) in table.Values(column))
            {
                double expected = resistivity * (1 + (coefficient * 55)) * lay * 1000 / areas.Value(row, "area")!.Value;
                Assert.InRange(resistance / expected, 0.989, 1.011);
            }
        }
    }

    /// <summary>Tin conducts worse than copper and is thin: source ASTM B33, which allows a tinned wire a few percent more.</summary>
    [Theory]
    [InlineData("solid")]
    [InlineData("stranded")]
    public void Coated_copper_resists_a_little_more_than_bare_copper(string make)
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.dc-resistance"))
        {
            foreach ((string row, double coated) in table.Values($"cu-coated-{make}"))
            {
                Assert.InRange(coated / table.Value(row, $"cu-{make}")!.Value, 1.005, 1.075);
            }
        }
    }

    [Fact]
    public void Solid_conductors_end_at_8_AWG()
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.dc-resistance"))
        {
            foreach (string column in new[] { "cu-solid", "cu-coated-solid", "al-solid" })
            {
                Assert.Equal(["18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG"], table.Values(column).Select(cell => cell.Row));
            }
        }
    }

    private static double ExpectedArea(string number, string system)
    {
        if (system == "kcmil")
        {
            return 1000 * double.Parse(number, CultureInfo.InvariantCulture);
        }

        double gauge = number.EndsWith("/0", StringComparison.Ordinal)
            ? 1 - double.Parse(number[..^2], CultureInfo.InvariantCulture)
            : double.Parse(number, CultureInfo.InvariantCulture);
        double mils = 5 * Math.Pow(92, (36 - gauge) / 39);
        return mils * mils;
    }
}
