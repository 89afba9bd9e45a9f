using System.Globalization;
using ElectroRules.Tables;

namespace ElectroRules.Tests.Tables;

/// <summary>The ambient factors against the heat balance of a conductor.</summary>
/// <remarks>
/// Source: J. H. Neher and M. H. McGrath, "The Calculation of the Temperature Rise and Load Capability of Cable Systems" (AIEE, 1957):
/// the heat that a conductor may give off goes with the difference to the ambient, and with the square of the current.
/// </remarks>
public class AmbientCorrectionPhysicsTests
{
    private const double BaseAmbient = 30;

    [Theory]
    [InlineData("c60", 60)]
    [InlineData("c75", 75)]
    [InlineData("c90", 90)]
    public void A_factor_is_the_square_root_of_the_ratio_of_temperature_rises_at_the_upper_edge_of_its_band(string column, double conductor)
    {
        foreach (ReferenceTable table in PresentTables.Of("conductor.ambient-correction"))
        {
            foreach (string row in table.Rows)
            {
                double ambient = double.Parse(row, CultureInfo.InvariantCulture);
                double rise = (conductor - ambient) / (conductor - BaseAmbient);
                double? expected = rise > 0 ? Math.Round(Math.Sqrt(rise), 2, MidpointRounding.AwayFromZero) : null;
                Assert.Equal(expected, table.Value(row, column));
            }
        }
    }
}
