using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules;

/// <summary>Unfolds the steps of a derivation with the sections and tables of one rule set.</summary>
internal sealed class RuleSetResolver(RuleSet rules) : StepResolver
{
    private static readonly string[] Materials = ["copper", "aluminum", "copperCladAluminum"];
    private readonly Citation?[] _citations = new Citation?[Rules.Definitions.Length];

    internal override Stamp Stamp => rules.Stamp;

    internal override Citation Cite(RuleId rule) => _citations[rule.Index] ??= Make(rules.Edition, Rules.Definitions[rule.Index]);

    internal override Citation CiteCell(int table, int cell) => rules.Table(table).CiteCell(cell);

    internal override TableCell Cell(int table, int cell) => rules.Table(table).CellName(cell);

    internal override Subject? Subject(ushort subject)
    {
        if (StepSubject.IsConductor(subject))
        {
            int material = StepSubject.Material(subject);
            return new Subject
            {
                ConductorSize = SizeLabels.Label(StepSubject.Size(subject)),
                Material = material == 0 ? null : Materials[material - 1],
            };
        }

        return StepSubject.IsItem(subject) ? new Subject { Item = StepSubject.Index(subject) } : null;
    }

    internal override void AddRemarks(ReadOnlySpan<StepData> steps, ref List<Finding>? findings)
    {
        foreach (Amendments.Amendment amendment in rules.Amendments)
        {
            foreach (Amendments.AmendmentRemark remark in amendment.Remarks)
            {
                if (UsedRule(steps, remark.Rule) is { } rule)
                {
                    (findings ??= []).Add(new Finding
                    {
                        Rule = rule,
                        Code = remark.Code,
                        Hazard = Hazard.None,
                        Standing = CodeStanding.Note,
                        Path = string.Empty,
                        Citation = new Citation(CitationKind.Amendment, rules.Edition, remark.Section, Confidence.OneSource, amendment.Id),
                    });
                }
            }
        }
    }

    private static RuleId? UsedRule(ReadOnlySpan<StepData> steps, string code)
    {
        foreach (ref readonly StepData step in steps)
        {
            if (string.Equals(step.Definition.Rule.Code, code, StringComparison.Ordinal))
            {
                return step.Definition.Rule;
            }
        }

        return null;
    }

    private static Citation Make(EditionId edition, RuleDefinition definition)
    {
        string section = string.Empty;
        foreach (EditionSection place in definition.Sections)
        {
            if (place.Edition == edition)
            {
                section = place.Section;
            }
        }

        return new Citation(definition.Kind, edition, section, definition.Confidence, amendment: null);
    }
}
