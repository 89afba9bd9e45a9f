using ElectroRules.Tables;

namespace ElectroRules.Tests.Tables;

/// <summary>The ampacities against one another: a wrong digit stands out among its neighbours.</summary>
public class AmpacityPhysicsTests
{
    private static readonly string[] Columns = ["cu60", "cu75", "cu90", "al60", "al75", "al90"];

    /// <summary>Source: Neher and McGrath (AIEE, 1957): more metal, and a greater allowed temperature, carry more current.</summary>
    [Fact]
    public void Ampacity_rises_with_the_size()
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.ampacity"))
        {
            foreach (string column in Columns)
            {
                double[] values = [.. table.Values(column).Select(cell => cell.Value)];
                Assert.All(values.Zip(values.Skip(1)), pair => Assert.True(pair.First < pair.Second, $"{column}: {pair}"));
            }
        }
    }

    /// <summary>
    /// Source: Neher and McGrath (AIEE, 1957): the current goes with the square root of the temperature rise over the resistance, and the
    /// resistance of a metal with its inferred zero (234.5 °C for copper, 228.1 °C for aluminum; IEC 60028). The table is rounded to 5 A.
    /// </summary>
    [Theory]
    [InlineData("cu", 234.5, 60, 75)]
    [InlineData("cu", 234.5, 75, 90)]
    [InlineData("al", 228.1, 60, 75)]
    [InlineData("al", 228.1, 75, 90)]
    public void A_warmer_column_carries_more_by_the_ratio_of_the_heat_balance(string material, double zero, int cooler, int warmer)
    {
        double ratio = Math.Sqrt((warmer - 30d) / (cooler - 30d) * (zero + cooler) / (zero + warmer));
        foreach (ReferenceTable table in PresentTables.Of("conductor.ampacity"))
        {
            foreach ((string row, double less) in table.Values($"{material}{cooler}"))
            {
                double more = table.Value(row, $"{material}{warmer}")!.Value;
                Assert.True(more > less, $"{row} {material}: {more} is not above {less}.");
                double tolerance = Math.Max(7, 0.02 * more);
                Assert.InRange(more, (less * ratio) - tolerance, (less * ratio) + tolerance);
            }
        }
    }

    /// <summary>
    /// Source: IEC 60028 and IEC 60889: aluminum conducts 61 % as well as copper, so its current is near the square root of that.
    /// </summary>
    [Theory]
    [InlineData("60")]
    [InlineData("75")]
    [InlineData("90")]
    public void Aluminum_carries_about_three_quarters_of_copper(string column)
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.ampacity"))
        {
            foreach ((string row, double aluminum) in table.Values("al" + column))
            {
                Assert.InRange(aluminum / table.Value(row, "cu" + column)!.Value, 0.72, 0.88);
            }
        }
    }

    [Fact]
    public void Ampacities_from_14_AWG_are_multiples_of_5()
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.ampacity"))
        {
            foreach (string column in Columns)
            {
                Assert.All(
                    table.Values(column).Where(cell => cell.Row is not ("18 AWG" or "16 AWG")),
                    cell => Assert.Equal(0, cell.Value % 5));
            }
        }
    }
}
