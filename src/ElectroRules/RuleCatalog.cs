using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules;

/// <summary>A rule as the catalogue lists it.</summary>
/// <param name="Id">The permanent id.</param>
/// <param name="Kind">What the rule rests on.</param>
/// <param name="Confidence">How its section was confirmed.</param>
/// <param name="Sections">The section of each edition in which the rule stands; empty for common practice and physics.</param>
/// <param name="Absent">The editions in which it does not stand here, with the reason.</param>
public sealed record CatalogRule(
    RuleId Id,
    CitationKind Kind,
    Confidence Confidence,
    IReadOnlyDictionary<EditionId, string> Sections,
    IReadOnlyDictionary<EditionId, string> Absent);

/// <summary>All rules of the library.</summary>
public static class RuleCatalog
{
    /// <summary>All rules, in the order of their codes.</summary>
    public static IReadOnlyList<CatalogRule> All { get; } = [.. Rules.Definitions.Select(Describe)];

    /// <summary>The rule with a code or a slug; null when there is none.</summary>
    /// <param name="codeOrSlug">For example "ER2010" or "overcurrent.continuous-load".</param>
    public static CatalogRule? Find(string codeOrSlug)
    {
        ArgumentNullException.ThrowIfNull(codeOrSlug);
        return All.FirstOrDefault(rule =>
            string.Equals(rule.Id.Code, codeOrSlug, StringComparison.Ordinal) ||
            string.Equals(rule.Id.Slug, codeOrSlug, StringComparison.Ordinal));
    }

    private static CatalogRule Describe(RuleDefinition rule) => new(
        rule.Id,
        rule.Kind,
        rule.Confidence,
        rule.Sections.ToDictionary(s => s.Edition, s => s.Section),
        rule.Absent.ToDictionary(a => a.Edition, a => a.Reason));
}
