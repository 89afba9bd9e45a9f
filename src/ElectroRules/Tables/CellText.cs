using System.Globalization;
using ElectroRules.Results;

namespace ElectroRules.Tables;

/// <summary>A cell's value as it is written in data: a number, or the label of a size.</summary>
internal static class CellText
{
    internal const string None = "no value";

    internal static string Of(ReferenceTable table, double value)
    {
        if (double.IsNaN(value))
        {
            return None;
        }

        return table.Unit == QuantityUnit.ConductorSize && double.IsInteger(value) && value >= 1 && value <= SizeLabels.Count
            ? SizeLabels.Label((int)value)
            : value.ToString("R", CultureInfo.InvariantCulture);
    }
}
