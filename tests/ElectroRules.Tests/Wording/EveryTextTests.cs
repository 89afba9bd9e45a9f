using ElectroRules.Results;
using ElectroRules.Wording;

namespace ElectroRules.Tests.Wording;

public sealed class EveryTextTests
{
    private static readonly WordingSet English = WordingSet.English;

    [Fact]
    public void Every_key_that_the_library_can_ask_for_has_a_text()
    {
        string[] missing = [.. NeededTexts.All().Where(k => !English.Has(k))];
        Assert.True(missing.Length == 0, "Missing in en.json:\n" + string.Join('\n', missing));
    }

    [Fact]
    public void No_text_is_unused()
    {
        SortedSet<string> needed = NeededTexts.All();
        string[] unused = [.. English.Keys.Where(k => !needed.Contains(k) && !IsOfAnswer(k) && !IsOwnValue(k))];
        Assert.True(unused.Length == 0, "Unused in en.json:\n" + string.Join('\n', unused));
    }

    [Fact]
    public void Every_label_of_an_answer_is_named_in_the_code()
    {
        string all = string.Join('\n', NeededTexts.Sources());
        foreach (string key in English.Keys.Where(IsOfAnswer))
        {
            string label = key[(key.LastIndexOf('.') + 1)..];
            Assert.True(
                all.Contains("." + label + ")", StringComparison.Ordinal) || all.Contains('"' + label + '"', StringComparison.Ordinal) || all.Contains('"' + key + '"', StringComparison.Ordinal),
                $"{key} is not used.");
        }
    }

    [Fact]
    public void Placeholders_are_the_ones_that_the_code_fills()
    {
        foreach (string key in English.Keys)
        {
            string[] allowed = Allowed(key[..key.IndexOf('.', StringComparison.Ordinal)], key);
            foreach (string name in Template.Placeholders(English.Text(key)))
            {
                Assert.True(allowed.Contains(name, StringComparer.Ordinal), $"{key} has the placeholder {{{name}}}.");
            }
        }
    }

    [Fact]
    public void Only_steps_that_read_ampacities_speak_of_their_column()
    {
        foreach (StepDefinition step in NeededTexts.Steps)
        {
            bool speaks = English.Text($"step.{step.Rule.Slug}.{step.Name}").Contains("{column}", StringComparison.Ordinal);
            Assert.True(!speaks || step.Table == ElectroRules.Tables.Generated.ConductorAmpacityTable.Index, step.Name);
        }
    }

    [Fact]
    public void Texts_are_neat()
    {
        foreach (string key in English.Keys)
        {
            string text = English.Text(key);
            Assert.Equal(text.Trim(), text);
            Assert.DoesNotContain("  ", text, StringComparison.Ordinal);
            Assert.DoesNotContain("—", text, StringComparison.Ordinal);
            Assert.NotEmpty(text);
        }
    }

    [Fact]
    public void No_sentence_stands_twice()
    {
        string[] sentences = [.. English.Keys.Select(English.Text).Where(t => t.EndsWith('.') || t.EndsWith('?'))];
        Assert.Empty(sentences.GroupBy(s => s, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key));
    }

    private static bool IsOfAnswer(string key) => key.StartsWith("answer.", StringComparison.Ordinal);

    private static bool IsOwnValue(string key) =>
        key.StartsWith("value.", StringComparison.Ordinal)
        && NeededTexts.Steps.Any(s => string.Equals($"value.{s.Rule.Slug}.{s.Name}", key, StringComparison.Ordinal));

    private static string[] Allowed(string group, string key) => group switch
    {
        "step" => ["subject", "column"],
        "value" or "unit" => ["number"],
        "operation" => string.Equals(key, "operation.from", StringComparison.Ordinal)
            ? ["line", "terms"]
            : ["name", "value", "terms", "input", "second", "third"],
        "citation" => ["edition", "section", "amendment", "citation", "row", "column", "confidence"],
        "subject" => ["size", "material", "item"],
        "finding" => key switch
        {
            "finding.local" => ["code"],
            "finding.measured" => ["measured", "limit"],
            "finding.measuredOnly" => ["measured"],
            "finding.where" => ["path"],
            _ => [],
        },
        "need" => key switch
        {
            "need.where" => ["question", "path"],
            "need.stillPossible" => ["answers"],
            _ => [],
        },
        "notCovered" => key switch
        {
            "notCovered.about" => ["detail"],
            "notCovered.reason" => ["reason"],
            _ => [],
        },
        "answer" => key switch
        {
            "answer.BranchCircuitDesign.deviceText" => ["rating", "poles", "kind"],
            "answer.BranchCircuitDesign.conductorsText" => ["count", "conductor"],
            "answer.BranchCircuitDesign.cableText" => ["size", "ground"],
            "answer.BranchCircuitDesign.neutralText" or "answer.BranchCircuitDesign.neutralSpare" => ["size"],
            _ => [],
        },
        "report" => string.Equals(key, "report.assumption", StringComparison.Ordinal) ? ["step", "name", "value"] : [],
        _ => [],
    };
}
