using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Writing;

/// <summary>Writes the class of all rules.</summary>
internal static class RulesWriter
{
    internal static string Write(IReadOnlyList<RuleData> rules)
    {
        Code code = Code.NewFile();
        code.Line("/// <summary>The rules, each with its permanent name.</summary>");
        code.Line("internal static class Rules");
        code.Open();
        for (int i = 0; i < rules.Count; i++)
        {
            RuleData rule = rules[i];
            string arguments = $"{Code.Literal(rule.Code)}, {Code.Literal(rule.Slug)}, {Code.Literal(i)}";
            code.Line($"internal static readonly RuleId {rule.Name} = new({arguments});");
        }

        if (rules.Count > 0)
        {
            code.Line();
        }

        WriteDefinitions(code, rules);
        code.Close();
        return code.ToString();
    }

    private static void WriteDefinitions(Code code, IReadOnlyList<RuleData> rules)
    {
        code.Line("/// <summary>What is held of each rule, in the order of the codes.</summary>");
        code.Line("internal static RuleDefinition[] Definitions { get; } =");
        code.Open("[");
        foreach (RuleData rule in rules)
        {
            code.Line("new()");
            code.Open();
            code.Line($"Id = {rule.Name},");
            code.Line($"Kind = CitationKind.{rule.Kind},");
            code.Line($"Confidence = Confidence.{rule.Confidence},");
            Entries.WriteList(code, "Sections", rule.Sections.Select(Entries.Section));
            Entries.WriteList(code, "Absent", rule.Absent.Select(Entries.Reason));
            code.Close("},");
        }

        code.Close("];");
    }
}
