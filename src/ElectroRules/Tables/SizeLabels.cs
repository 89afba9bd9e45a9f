using ElectroRules.Tables.Generated;

namespace ElectroRules.Tables;

/// <summary>The labels of the conductor sizes, as rows of the table conductor.area; the place in the list counts from 1.</summary>
internal static class SizeLabels
{
    private static readonly string[] All = ConductorAreaTable.Define().Blocks[0].Rows;

    internal static int Count => All.Length;

    /// <summary>The place of a label; 0 when there is no such size.</summary>
    internal static int Ordinal(string label) => Array.IndexOf(All, label) + 1;

    internal static string Label(int ordinal) => All[ordinal - 1];
}
