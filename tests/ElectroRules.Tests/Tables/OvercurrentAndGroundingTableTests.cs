using System.Globalization;
using ElectroRules.Tables;

namespace ElectroRules.Tests.Tables;

/// <summary>What must hold of the overcurrent and grounding tables whatever their digits are.</summary>
public class OvercurrentAndGroundingTableTests
{
    /// <summary>Source: UL 489 and UL 248 name ratings by the ampere: the value is the rating itself.</summary>
    [Fact]
    public void A_standard_rating_is_the_number_of_its_row()
    {
        foreach (ReferenceTable table in PresentTables.Of("overcurrent.standard-ratings"))
        {
            foreach (string column in table.Columns)
            {
                Assert.All(table.Values(column), cell => Assert.Equal(double.Parse(cell.Row, CultureInfo.InvariantCulture), cell.Value));
            }
        }
    }

    [Fact]
    public void Every_breaker_rating_is_a_fuse_rating_too()
    {
        foreach (ReferenceTable table in PresentTables.Of("overcurrent.standard-ratings"))
        {
            Assert.All(table.Values("breaker"), cell => Assert.Equal(cell.Value, table.Value(cell.Row, "fuse")));
        }
    }

    [Theory]
    [InlineData(EditionId.Nec2014, null)]
    [InlineData(EditionId.Nec2017, null)]
    [InlineData(EditionId.Nec2020, null)]
    [InlineData(EditionId.Nec2023, 10d)]
    public void The_10_A_breaker_and_14_AWG_copper_clad_aluminum_came_with_2023(EditionId edition, double? expected)
    {
        RuleSet rules = RuleSet.For(edition);
        Assert.Equal(expected, rules.Table("overcurrent.standard-ratings").Value("10", "breaker"));
        Assert.Equal(expected, rules.Table("overcurrent.small-conductor").Value("14 AWG", "cca"));
    }

    /// <summary>No source is needed: a device above the 60 °C ampacity of its conductor would not protect it.</summary>
    [Fact]
    public void The_limit_of_a_small_conductor_is_not_above_its_60_degree_ampacity()
    {
        foreach (ReferenceTable table in PresentTables.Of("overcurrent.small-conductor"))
        {
            ReferenceTable ampacity = RuleSet.For(table.Edition).Table("conductor.ampacity");
            foreach ((string limit, string column) in new[] { ("cu", "cu60"), ("al", "al60"), ("cca", "al60") })
            {
                foreach ((string row, double device) in table.Values(limit))
                {
                    Assert.True(ampacity.Value(row, column) is not { } amps || device <= amps, $"{row} {limit}: {device} A");
                }
            }
        }
    }

    /// <summary>
    /// Source: a greater device lets more fault energy through, so the conductor can only grow (IEEE Std 80, the Onderdonk relation);
    /// aluminum needs more metal than copper for the same fault.
    /// </summary>
    [Fact]
    public void An_equipment_grounding_conductor_never_gets_smaller_and_aluminum_is_larger_than_copper()
    {
        foreach (ReferenceTable table in PresentTables.Of("grounding.equipment-conductor"))
        {
            foreach (string column in table.Columns)
            {
                double[] sizes = [.. table.Values(column).Select(cell => cell.Value)];
                Assert.Equal(table.Rows.Count, sizes.Length);
                Assert.All(sizes.Zip(sizes.Skip(1)), pair => Assert.True(pair.First <= pair.Second, $"{column}: {pair}"));
            }

            Assert.All(table.Values("cu"), cell => Assert.True(table.Value(cell.Row, "al") > cell.Value, cell.Row));
        }
    }
}
