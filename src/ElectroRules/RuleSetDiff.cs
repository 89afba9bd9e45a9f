using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules;

public sealed partial class RuleSet
{
    /// <summary>Everything in which two rule sets differ: tables first, then rules, then local findings, each in their own order.</summary>
    /// <remarks>A table or a rule that only one of them has is one difference, an absence; its cells are not listed.</remarks>
    /// <param name="a">The first rule set.</param>
    /// <param name="b">The second rule set.</param>
    public static IReadOnlyList<RuleSetDifference> Diff(RuleSet a, RuleSet b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
        var found = new List<RuleSetDifference>();
        for (int i = 0; i < a._tables.Length; i++)
        {
            DiffTable(found, a._tables[i], b._tables[i]);
        }

        foreach (RuleDefinition rule in Rules.Definitions)
        {
            string code = rule.Id.Code;
            Note(found, RuleSetDifferenceKind.RuleAbsence, code, Reason(rule, a.Edition), Reason(rule, b.Edition));
            string from = SectionOf(rule, a.Edition);
            string to = SectionOf(rule, b.Edition);
            if (from.Length > 0 && to.Length > 0)
            {
                Note(found, RuleSetDifferenceKind.RuleSection, code, from, to);
            }
        }

        DiffRemarks(found, a, b);
        return found;
    }

    private static void DiffTable(List<RuleSetDifference> found, ReferenceTable a, ReferenceTable b)
    {
        Note(found, RuleSetDifferenceKind.Absence, a.Key, a.AbsentReason ?? string.Empty, b.AbsentReason ?? string.Empty);
        if (!a.IsPresent || !b.IsPresent)
        {
            return;
        }

        Note(found, RuleSetDifferenceKind.Section, a.Key, a.Section, b.Section);
        foreach (string row in a.Rows.Union(b.Rows, StringComparer.Ordinal))
        {
            foreach (string column in a.Columns)
            {
                string from = CellOf(a, row, column);
                string to = CellOf(b, row, column);
                if (!string.Equals(from, to, StringComparison.Ordinal))
                {
                    found.Add(new RuleSetDifference(RuleSetDifferenceKind.Cell, a.Key, row, column, from, to));
                }
            }
        }
    }

    private static void DiffRemarks(List<RuleSetDifference> found, RuleSet a, RuleSet b)
    {
        var pairs = a.Remarks.Concat(b.Remarks).Select(r => (r.Rule, r.Code)).Distinct()
            .OrderBy(p => p.Rule, StringComparer.Ordinal).ThenBy(p => p.Code, StringComparer.Ordinal);
        foreach ((string rule, string code) in pairs)
        {
            string from = RemarkOf(a, rule, code);
            string to = RemarkOf(b, rule, code);
            if (!string.Equals(from, to, StringComparison.Ordinal))
            {
                found.Add(new RuleSetDifference(RuleSetDifferenceKind.Remark, rule, code, string.Empty, from, to));
            }
        }
    }

    private static void Note(List<RuleSetDifference> found, RuleSetDifferenceKind kind, string key, string from, string to)
    {
        if (!string.Equals(from, to, StringComparison.Ordinal))
        {
            found.Add(new RuleSetDifference(kind, key, string.Empty, string.Empty, from, to));
        }
    }

    private static string CellOf(ReferenceTable table, string row, string column) =>
        table.RowOf(row) >= 0 && table.Value(row, column) is { } value ? CellText.Of(table, value) : string.Empty;

    private static string RemarkOf(RuleSet rules, string rule, string code) => string.Join("; ", rules.Remarks
        .Where(r => string.Equals(r.Rule, rule, StringComparison.Ordinal) && string.Equals(r.Code, code, StringComparison.Ordinal))
        .Select(r => r.Section));

    private static string SectionOf(RuleDefinition rule, EditionId edition) =>
        Array.Find(rule.Sections, s => s.Edition == edition).Section ?? string.Empty;

    private static string Reason(RuleDefinition rule, EditionId edition) =>
        Array.Find(rule.Absent, s => s.Edition == edition).Reason ?? string.Empty;
}
