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

    internal override Subject? Subject(StepDefinition definition, int subject) => StepSubject.Kind(subject) switch
    {
        SubjectKind.Conductor => new Subject
        {
            ConductorSize = rules.Table(ConductorAreaTable.Index).Definition.Blocks[0].Rows[StepSubject.Low(subject) - 1],
            Material = StepSubject.High(subject) == 0 ? null : Materials[StepSubject.High(subject) - 1],
        },
        SubjectKind.Item => new Subject { Item = subject & 0xFFFF },
        _ => null,
    };

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
