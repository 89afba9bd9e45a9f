using ElectroRules.Results;

namespace ElectroRules.Tables;

/// <summary>What the library holds of one rule, all editions, as the table compiler writes it.</summary>
internal sealed class RuleDefinition
{
    internal required RuleId Id { get; init; }

    internal required CitationKind Kind { get; init; }

    internal required Confidence Confidence { get; init; }

    /// <summary>The section of each edition in which the rule stands; empty for common practice and physics.</summary>
    internal required EditionSection[] Sections { get; init; }

    /// <summary>The editions in which the rule does not stand or was not verified, with the reason.</summary>
    internal required EditionReason[] Absent { get; init; }
}
