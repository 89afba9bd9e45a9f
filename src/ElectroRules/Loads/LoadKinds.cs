using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Loads;

/// <summary>What a kind of load brings with it.</summary>
internal static class LoadKinds
{
    internal static bool Covered(RuleSet rules, ref Deriving d) =>
        rules.Has(ref d, LoadKindsTable.Index, Rules.ContinuousByKind)
        && rules.Has(ref d, SupplyVoltagesTable.Index, Rules.NominalVoltage);

    /// <summary>Whether a property holds for a kind; null when the kind does not tell.</summary>
    internal static bool? Property(RuleSet rules, LoadKind kind, int column)
    {
        double value = rules.Table(LoadKindsTable.Index).At((int)kind - 1, column);
        return double.IsNaN(value) ? null : value > 0;
    }

    internal static bool IsResistive(RuleSet rules, LoadKind kind) =>
        Property(rules, kind, LoadKindsTable.Column.ResistanceElements) == true;

    /// <summary>Whether the kind is continuous by a rule of the code, and not only as a habit of the trade.</summary>
    internal static bool IsByCode(RuleSet rules, LoadKind kind)
    {
        ReferenceTable table = rules.Table(LoadKindsTable.Index);
        return table.ConfidenceAt(table.CellIndex((int)kind - 1, LoadKindsTable.Column.Continuous)) != Confidence.Practice;
    }
}
