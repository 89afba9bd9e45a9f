using ElectroRules.Internal;
using ElectroRules.Results;

namespace ElectroRules.Tables;

/// <summary>Reads a table cell as a step of a derivation.</summary>
internal static class TableSteps
{
    internal static Figure Read(this ReferenceTable table, ref Deriving d, StepDefinition definition, int row, int column, ushort subject = StepSubject.None)
    {
        System.Diagnostics.Debug.Assert(definition.Table == table.Index, "The step names another table.");
        return d.Cell(definition, table.At(row, column), table.CellIndex(row, column), subject);
    }

    internal static Figure Read(this ReferenceTable table, ref Deriving d, StepDefinition definition, int row, int column, Figure key, ushort subject = StepSubject.None)
    {
        System.Diagnostics.Debug.Assert(definition.Table == table.Index, "The step names another table.");
        return d.Cell(definition, table.At(row, column), table.CellIndex(row, column), key, subject);
    }
}
