using System.Text.Json;
using System.Text.Json.Nodes;
using ElectroRules.Operations.Json;
using ElectroRules.Results;

namespace ElectroRules.Operations;

/// <summary>Runs one request under two editions and says what changed and which rules and tables that it used differ.</summary>
internal sealed class EditionComparison() : Operation("edition.compare", "One request under two editions: what changes, and what differs in the rules used.")
{
    private const int Compared = 2;
    private static readonly string[] Members = ["operation", "request", "editions"];

    public override Type RequestType => typeof(JsonElement);

    public override Type ResultType => typeof(JsonElement);

    internal override bool TakesEdition => false;

    private static IEnumerable<RuleOperation> Comparable => OperationCatalog.All.OfType<RuleOperation>();

    internal override JsonNode ExampleNode()
    {
        RuleOperation first = Comparable.First();
        return new JsonObject
        {
            ["operation"] = first.Id,
            ["request"] = first.ExampleNode(),
            ["editions"] = SchemaNodes.Texts([ChoiceNames.Of(EditionId.Nec2014), ChoiceNames.Of(EditionId.Nec2023)]),
        };
    }

    internal override Action<Utf8JsonWriter>? Answer(
        RuleSet? given, RuleSource source, JsonElement request, string pointer, RequestErrors errors)
    {
        if (JsonValues.Properties(request, pointer, Members, Members, errors) is not { } found)
        {
            return null;
        }

        RuleOperation? operation = found.TryGetValue("operation", out JsonElement id) ? Find(id, pointer + "/operation", errors) : null;
        List<RuleSet> rules = found.TryGetValue("editions", out JsonElement editions) ? Editions(editions, source, pointer + "/editions", errors) : [];
        Func<RuleSet, Determination>? run =
            operation is not null && found.TryGetValue("request", out JsonElement inner) ? operation.Read(inner, pointer + "/request", errors) : null;
        if (operation is null || run is null || errors.Count > 0)
        {
            return null;
        }

        var comparison = new ComparedAnswers(operation, rules[0], run(rules[0]), rules[1], run(rules[1]));
        return writer => comparison.Write(writer, Id);
    }

    private protected override JsonNode RequestNode() => new JsonObject
    {
        ["type"] = "object",
        ["properties"] = new JsonObject
        {
            ["operation"] = new JsonObject { ["enum"] = SchemaNodes.Texts(Comparable.Select(o => o.Id)) },
            ["request"] = new JsonObject { ["type"] = "object", ["description"] = "The request of that operation." },
            ["editions"] = new JsonObject
            {
                ["type"] = "array",
                ["items"] = ((IValueShape)Vocabulary.Editions).Schema(),
                ["minItems"] = Compared,
                ["maxItems"] = Compared,
            },
        },
        ["required"] = SchemaNodes.Texts(Members),
        ["additionalProperties"] = false,
    };

    private static RuleOperation? Find(JsonElement id, string pointer, RequestErrors errors)
    {
        if (!JsonValues.Is(id, JsonValueKind.String, "the id of an operation", pointer, errors))
        {
            return null;
        }

        string name = id.GetString()!;
        RuleOperation? found = Comparable.FirstOrDefault(o => string.Equals(o.Id, name, StringComparison.Ordinal));
        if (found is null)
        {
            errors.Add(pointer, OperationErrorCode.UnknownOperation, $"The operation must be one of {string.Join(", ", Comparable.Select(o => o.Id))}.");
        }

        return found;
    }

    private static List<RuleSet> Editions(JsonElement list, RuleSource source, string pointer, RequestErrors errors)
    {
        var rules = new List<RuleSet>();
        if (!JsonValues.Is(list, JsonValueKind.Array, "a list", pointer, errors))
        {
            return rules;
        }

        if (list.GetArrayLength() != Compared)
        {
            errors.Add(pointer, OperationErrorCode.OutOfRange, "There must be exactly two editions.");
            return rules;
        }

        foreach (JsonElement item in list.EnumerateArray())
        {
            string place = JsonValues.Child(pointer, rules.Count);
            if (Vocabulary.Editions.Check(item, place, errors)
                && Vocabulary.Editions.TryFind(item.GetString(), out EditionId edition)
                && source.Of(edition, errors) is { } found)
            {
                rules.Add(found);
            }
        }

        return rules;
    }
}
