using ElectroRules.TableCompiler.Json;
using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Reading;

/// <summary>Reads and checks the list of rules.</summary>
internal sealed class RuleReader(FileErrors errors)
{
    private const string CodeKind = "code";
    private readonly HashSet<string> _codes = new(StringComparer.Ordinal);
    private readonly HashSet<string> _slugs = new(StringComparer.Ordinal);
    private readonly HashSet<string> _names = new(StringComparer.Ordinal);

    /// <summary>The rules in the order of their codes; to be used only when no error was reported.</summary>
    internal static IReadOnlyList<RuleData> Read(byte[] bytes, FileErrors errors)
    {
        DataNode? root = JsonTree.Read(bytes, errors);
        ObjectReader? file = root is null ? null : ObjectReader.Open(root, "the file of rules", errors);
        DataNode? list = file?.Take("rules", NodeKind.Array);
        file?.Close();
        if (list is null)
        {
            return [];
        }

        var reader = new RuleReader(errors);
        var rules = new List<RuleData>();
        foreach (DataNode item in list.Items)
        {
            ObjectReader? rule = ObjectReader.Open(item, "a rule", errors);
            if (rule is not null)
            {
                rules.Add(reader.ReadRule(rule));
            }
        }

        rules.Sort((a, b) => string.CompareOrdinal(a.Code, b.Code));
        return rules;
    }

    private RuleData ReadRule(ObjectReader rule)
    {
        DataNode? code = rule.TakeText("code");
        DataNode? slug = rule.TakeText("slug");
        DataNode? name = rule.TakeText("name");
        Check(code, Names.IsRuleCode, DataErrorCode.MalformedRuleCode, "a code such as ER2010", _codes);
        Check(slug, Names.IsKey, DataErrorCode.MalformedSlug, "lower-case words joined by dots and hyphens", _slugs);
        Check(name, IsRuleName, DataErrorCode.MalformedRuleName, "a free name such as ContinuousLoad", _names);
        string kind = rule.TakeChoice("kind", Vocabulary.RuleKinds, DataErrorCode.UnknownRuleKind) ?? string.Empty;
        string confidence = rule.TakeChoice("confidence", Vocabulary.Confidences, DataErrorCode.UnknownConfidence) ?? string.Empty;
        DataNode? sections = rule.TakeOptional("sections", NodeKind.Object);
        DataNode? absent = rule.TakeOptional("absent", NodeKind.Object);
        rule.Close();

        var editions = new EditionReader(errors);
        List<EditionText> sectionTexts = sections is null ? [] : editions.Read(sections);
        List<EditionText> absentTexts = absent is null ? [] : editions.Read(absent);
        if (kind == Vocabulary.MemberOf(Vocabulary.RuleKinds, CodeKind))
        {
            editions.RequireAll(rule.Line);
        }
        else if (kind.Length > 0 && sectionTexts.Count + absentTexts.Count > 0)
        {
            errors.Add(
                DataErrorCode.SectionWithoutCode, rule.Line,
                "a rule that is not of the code has no sections and no absent editions");
        }

        return new RuleData(
            code?.Text ?? string.Empty, slug?.Text ?? string.Empty, name?.Text ?? string.Empty, kind, confidence, sectionTexts, absentTexts);
    }

    private void Check(DataNode? text, Func<string, bool> isWellFormed, string errorCode, string form, HashSet<string> seen)
    {
        if (text is null)
        {
            return;
        }

        if (!isWellFormed(text.Text))
        {
            errors.Add(errorCode, text.Line, $"'{text.Text}' must be {form}");
        }

        if (!seen.Add(text.Text))
        {
            errors.Add(DataErrorCode.KeyTwice, text.Line, $"'{text.Text}' belongs to another rule already");
        }
    }

    /// <summary>The names become members of the class Rules, beside its list of definitions.</summary>
    private static bool IsRuleName(string text) => Names.IsPascalCase(text) && text is not ("Rules" or "Definitions");
}
