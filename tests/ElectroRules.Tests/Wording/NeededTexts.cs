using System.Reflection;
using System.Text.RegularExpressions;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Reports.Answers;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;
using ElectroRules.Tests.Tables;

namespace ElectroRules.Tests.Wording;

/// <summary>Every key that the library can ask a text for, found in the assembly and in its source.</summary>
internal static partial class NeededTexts
{
    private static readonly Assembly Library = typeof(RuleSet).Assembly;

    /// <summary>Texts that the code of Wording and Reports names itself.</summary>
    private static readonly string[] Fixed =
    [
        "word.yes", "word.no", "word.none", "unit.percent", "operation.from",
        "operation.Rejected.below", "operation.Rejected.above", "operation.Holds.below", "operation.Holds.above",
        "subject.conductor", "subject.item", "subject.unnamed", "citation.cell", "citation.sure", "citation.noSection",
        "material.copper", "material.aluminum", "material.copperCladAluminum",
        "finding.local", "finding.measured", "finding.measuredOnly", "finding.memory", "finding.where",
        "need.where", "need.stillPossible", "notCovered.about", "notCovered.reason",
        "report.title.other", "report.edition", "report.amendments", "report.status", "report.data", "report.library",
        "report.answer", "report.limit", "report.findings", "report.needs", "report.notCovered", "report.derivation",
        "report.assumptions", "report.rounding", "whyNot.needs-input", "report.assumption", "report.cautions", "report.noRenderer",
    ];

    internal static IReadOnlyList<StepDefinition> Steps { get; } =
    [
        .. Library.GetTypes()
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(f => f.FieldType == typeof(StepDefinition) && !f.DeclaringType!.ContainsGenericParameters)
            .Select(f => (StepDefinition)f.GetValue(null)!),
    ];

    internal static SortedSet<string> All()
    {
        var keys = new SortedSet<string>(Fixed, StringComparer.Ordinal);
        keys.UnionWith(RuleCatalog.All.Select(r => "rule." + r.Id.Slug));
        keys.UnionWith(Steps.Select(s => $"step.{s.Rule.Slug}.{s.Name}"));
        keys.UnionWith(Columns());
        keys.UnionWith(Enumeration<QuantityUnit>("unit"));
        keys.UnionWith(Enumeration<Confidence>("confidence"));
        keys.UnionWith(Enumeration<CitationKind>("citation"));
        keys.UnionWith(Enumeration<EditionId>("edition"));
        keys.UnionWith(Enumeration<Hazard>("hazard"));
        keys.UnionWith(Enumeration<CodeStanding>("standing"));
        keys.UnionWith(Enumeration<DeterminationStatus>("status"));
        keys.UnionWith(Enumeration<AmpacityLimit>("limit"));
        keys.UnionWith(Enumeration<DesignLimit>("designLimit"));
        keys.UnionWith(Enumeration<WiringMethod>("method"));
        keys.UnionWith(Enumeration<OvercurrentDeviceKind>("deviceKind"));
        keys.UnionWith(Enumeration<StepOperation>("operation")
            .Where(k => k is not ("operation.Rejected" or "operation.Holds")));
        keys.UnionWith(Enumerable.Range(1, ElectroRules.Wording.Cautions.Count).Select(i => $"caution.{i}"));
        keys.UnionWith(AnswerList.All.Select(a => "title." + a.Name));
        foreach (string source in Sources())
        {
            keys.UnionWith(Findings(source));
            keys.UnionWith(Matches(NotCoveredCode(), source).Select(c => "notCovered." + c));
            keys.UnionWith(Matches(RemedyCode(), source).Select(c => "remedy." + c));
            keys.UnionWith(NeedPaths(source).Select(p => "need." + p[(p.LastIndexOf('/') + 1)..]));
        }

        keys.Add("notCovered.table-absent");
        return keys;
    }

    internal static IEnumerable<string> Sources() =>
        Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "src", "ElectroRules"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.EndsWith(".g.cs", StringComparison.Ordinal) && !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/Amendments/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(File.ReadAllText);

    private static IEnumerable<string> Columns() => ConductorAmpacityTable.Define().Columns.Select(c => "column." + c);

    private static IEnumerable<string> Enumeration<T>(string prefix)
        where T : struct, Enum => Enum.GetNames<T>().Select(n => $"{prefix}.{n}");

    /// <summary>The codes of findings, each with the rule named next to it.</summary>
    private static IEnumerable<string> Findings(string source)
    {
        foreach (Match match in RefuseCall().Matches(source))
        {
            yield return Key(match.Groups[1].Value, match.Groups[2].Value);
        }

        foreach (Match match in FindingObject().Matches(source))
        {
            foreach (string code in Matches(Literal(), match.Groups[2].Value))
            {
                yield return Key(match.Groups[1].Value, code);
            }
        }
    }

    private static string Key(string ruleName, string code)
    {
        var rule = (RuleId)typeof(Rules).GetField(ruleName, BindingFlags.Static | BindingFlags.NonPublic | BindingFlags.Public)!.GetValue(null)!;
        return $"finding.{rule.Slug}.{code}";
    }

    private static IEnumerable<string> NeedPaths(string source)
    {
        foreach (Match call in NeedsCall().Matches(source))
        {
            foreach (string path in Matches(PathLiteral(), call.Value))
            {
                yield return path;
            }
        }

        // The pointer of the rating is handed on by the operations.
        foreach (Match call in RatingPointer().Matches(source))
        {
            yield return call.Groups[1].Value;
        }
    }

    private static IEnumerable<string> Matches(Regex pattern, string source) => pattern.Matches(source).Select(m => m.Groups[1].Value);

    [GeneratedRegex("""Refuse\(\s*ref d,\s*Rules\.(\w+),\s*"([^"]+)""", RegexOptions.CultureInvariant)]
    private static partial Regex RefuseCall();

    [GeneratedRegex("""Rule = Rules\.(\w+),\s*Code = ([^;]*?),\s*Hazard""", RegexOptions.CultureInvariant)]
    private static partial Regex FindingObject();

    [GeneratedRegex("\"([a-z0-9-]+)\"", RegexOptions.CultureInvariant)]
    private static partial Regex Literal();

    [GeneratedRegex("""NotCovered\(\s*"([^"]+)""", RegexOptions.CultureInvariant)]
    private static partial Regex NotCoveredCode();

    [GeneratedRegex("""Remedy = "([^"]+)""", RegexOptions.CultureInvariant)]
    private static partial Regex RemedyCode();

    [GeneratedRegex("""\.Needs\([^;]*;""", RegexOptions.CultureInvariant)]
    private static partial Regex NeedsCall();

    [GeneratedRegex("\"(/?[A-Za-z/]+)\"", RegexOptions.CultureInvariant)]
    private static partial Regex PathLiteral();

    [GeneratedRegex("\"(/circuitRating)\"", RegexOptions.CultureInvariant)]
    private static partial Regex RatingPointer();
}
