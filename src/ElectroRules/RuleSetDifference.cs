namespace ElectroRules;

/// <summary>What kind of thing differs between two rule sets.</summary>
public enum RuleSetDifferenceKind
{
    /// <summary>The value of a table cell.</summary>
    Cell,

    /// <summary>The section in which a table stands.</summary>
    Section,

    /// <summary>The section in which a rule stands.</summary>
    RuleSection,

    /// <summary>Whether a table is absent, or why.</summary>
    Absence,

    /// <summary>Whether a rule is absent, or why.</summary>
    RuleAbsence,

    /// <summary>A local finding of an amendment.</summary>
    Remark,
}

/// <summary>One thing that differs between two rule sets.</summary>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Key">The key of the table, or the code of the rule.</param>
/// <param name="Row">The row of a cell, or the code of a remark; empty for other kinds.</param>
/// <param name="Column">The column of a cell; empty for other kinds.</param>
/// <param name="From">
/// What the first rule set has: a number or the label of a size, a section, or the reason of an absence; empty when it has nothing
/// there (no value, not absent, no such remark).
/// </param>
/// <param name="To">What the second rule set has, as <paramref name="From"/>.</param>
public sealed record RuleSetDifference(RuleSetDifferenceKind Kind, string Key, string Row, string Column, string From, string To);
