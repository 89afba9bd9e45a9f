using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ElectroRules.Operations.Json;

namespace ElectroRules.Operations;

/// <summary>One operation of the catalogue: a question that the library answers in JSON as well as in C#.</summary>
public abstract class Operation
{
    private protected Operation(string id, string summary)
    {
        Id = id;
        Summary = summary;
    }

    /// <summary>The permanent id, for example "conductor.ampacity".</summary>
    public string Id { get; }

    /// <summary>What it answers, in one English line.</summary>
    public string Summary { get; }

    /// <summary>The C# type of the request; <see cref="JsonElement"/> when the request exists in JSON only.</summary>
    public abstract Type RequestType { get; }

    /// <summary>The C# type of the value of the answer; <see cref="JsonElement"/> when the answer exists in JSON only.</summary>
    public abstract Type ResultType { get; }

    /// <summary>Whether the document names the edition beside the request.</summary>
    internal virtual bool TakesEdition => true;

    /// <summary>The JSON Schema (draft 2020-12) of the document: edition, amendments and the request.</summary>
    public string RequestSchema() => Text(SchemaNodes.Envelope(Id, Summary, TakesEdition, RequestNode()));

    /// <summary>A document that can be run as it is.</summary>
    public string ExampleRequest()
    {
        var document = new JsonObject();
        if (TakesEdition)
        {
            document["edition"] = ChoiceNames.Of(EditionId.Nec2023);
        }

        document["request"] = ExampleNode();
        return Text(document);
    }

    /// <summary>The schema of the request alone.</summary>
    private protected abstract JsonNode RequestNode();

    /// <summary>An example of the request alone.</summary>
    internal abstract JsonNode ExampleNode();

    /// <summary>Reads a request, noting everything that is wrong with it, and answers it.</summary>
    /// <param name="given">The rule set of the document; null when it is bad or the operation takes no edition.</param>
    /// <param name="source">Gives rule sets of other editions with the same amendments.</param>
    /// <param name="request">The request.</param>
    /// <param name="pointer">Where the request stands in the document.</param>
    /// <param name="errors">Takes what is wrong.</param>
    /// <returns>What writes the answer; null when something is wrong.</returns>
    internal abstract Action<Utf8JsonWriter>? Answer(RuleSet? given, RuleSource source, JsonElement request, string pointer, RequestErrors errors);

    private static string Text(JsonNode node)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, OperationJson.Indented))
        {
            node.WriteTo(writer);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
