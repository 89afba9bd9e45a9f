using ElectroRules.Tables;

namespace ElectroRules.Tests.Tables;

/// <summary>Alternating current resistance and reactance against direct current and against each other.</summary>
public class ImpedancePhysicsTests
{
    /// <summary>
    /// Skin and proximity effect only add resistance, and losses in a metal raceway only add more.
    /// Source: IEC 60287-1-1, where both effects are factors of at least 1 on the direct current resistance.
    /// </summary>
    [Theory]
    [InlineData("cu")]
    [InlineData("al")]
    public void Alternating_current_never_finds_less_resistance_than_direct_current(string material)
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.ac-resistance"))
        {
            ReferenceTable direct = RuleSet.For(table.Edition).Table("conductor.dc-resistance");
            foreach (string raceway in new[] { "pvc", "aluminum", "steel" })
            {
                foreach ((string row, double resistance) in table.Values($"{material}-{raceway}"))
                {
                    double least = direct.Value(row, $"{material}-stranded")!.Value - HalfOfSecondDigit(resistance);
                    Assert.True(resistance >= least, $"{row} {material} in {raceway}: {resistance} is below {least}.");
                }
            }
        }
    }

    /// <summary>Source: IEC 60287-1-1: a steel pipe adds losses, so no conductor resists less in it than in plastic.</summary>
    [Theory]
    [InlineData("cu")]
    [InlineData("al")]
    public void Steel_never_gives_less_resistance_than_plastic(string material)
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.ac-resistance"))
        {
            foreach ((string row, double plastic) in table.Values($"{material}-pvc"))
            {
                Assert.True(table.Value(row, $"{material}-steel") >= plastic, row);
            }
        }
    }

    /// <summary>
    /// Source: IEEE Std 141, factors on the reactance of conductors lying loose in a raceway: 1.5 in a magnetic one, 1.2 in another.
    /// The factors are quoted from memory.
    /// </summary>
    [Fact]
    public void Steel_gives_a_quarter_more_reactance()
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.reactance"))
        {
            foreach ((string row, double nonmagnetic) in table.Values("nonmagnetic"))
            {
                Assert.InRange(table.Value(row, "steel")!.Value / nonmagnetic, 1.22, 1.28);
            }
        }
    }

    [Fact]
    public void Resistance_and_reactance_are_there_for_the_same_sizes()
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.reactance"))
        {
            ReferenceTable resistance = RuleSet.For(table.Edition).Table("conductor.ac-resistance");
            Assert.Equal(resistance.Values("cu-pvc").Select(cell => cell.Row), table.Values("nonmagnetic").Select(cell => cell.Row));
        }
    }

    /// <summary>The table is printed to two digits; what lies beyond is lost, with a hair for binary fractions.</summary>
    private static double HalfOfSecondDigit(double value) => (0.5 * Math.Pow(10, Math.Floor(Math.Log10(value) + 1e-9) - 1)) + 1e-9;
}
