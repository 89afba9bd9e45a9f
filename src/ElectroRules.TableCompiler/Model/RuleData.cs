namespace ElectroRules.TableCompiler.Model;

/// <summary>One rule as rules.json says it, read and checked.</summary>
internal sealed record RuleData(
    string Code,
    string Slug,
    string Name,
    string Kind,
    string Confidence,
    IReadOnlyList<EditionText> Sections,
    IReadOnlyList<EditionText> Absent);
