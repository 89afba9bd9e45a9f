using ElectroRules.Internal;

namespace ElectroRules.Conductors;

/// <summary>What a stretch of the route does to the ampacity of any size: computed once, then used for every candidate.</summary>
internal struct SegmentFactors
{
    /// <summary>The temperature column to start from: 0 for 60, 1 for 75, 2 for 90 degrees.</summary>
    internal int Column;

    /// <summary>The column that the ampacity may not exceed; -1 for none.</summary>
    internal int CapColumn;

    /// <summary>The largest size that the cap holds for, by its place.</summary>
    internal int CapLargestSize;

    internal double LengthFeet;

    /// <summary>Ambient times adjustment.</summary>
    internal double Factor;

    internal Figure Ambient;

    internal Figure Adjustment;

    /// <summary>Whether the exception for short portions is barred.</summary>
    internal bool MustCount;

    /// <summary>Whether any size starts from the same table values as in another stretch.</summary>
    internal readonly bool SameColumns(in SegmentFactors other) =>
        Column == other.Column && CapColumn == other.CapColumn && CapLargestSize == other.CapLargestSize;
}

/// <summary>The temperature columns of the ampacity table.</summary>
internal static class TemperatureColumn
{
    internal const int None = -1;
    private const int ColumnsOfMaterial = 3;
    private const double Coldest = 60;
    private const double Step = 15;

    internal static int Of(double celsius) => (int)Math.Round((celsius - Coldest) / Step);

    internal static int Celsius(int column) => (int)(Coldest + (column * Step));

    /// <summary>The column of the ampacity table for a metal; copper-clad aluminum takes the aluminum columns.</summary>
    internal static int InTable(ConductorMaterial material, int column) =>
        material == ConductorMaterial.Copper ? column : ColumnsOfMaterial + column;
}
