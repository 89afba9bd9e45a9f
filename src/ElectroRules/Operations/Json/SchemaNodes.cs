using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;

namespace ElectroRules.Operations.Json;

/// <summary>Writes JSON Schema from the same types that requests are read into.</summary>
internal static class SchemaNodes
{
    private static readonly JsonSchemaExporterOptions Exporter = new() { TreatNullObliviousAsNonNullable = true, TransformSchemaNode = Transform };

    internal static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(t => (JsonNode?)JsonValue.Create(t))]);

    internal static JsonNode Of(Type type) => OperationJson.Options.GetJsonSchemaAsNode(type, Exporter);

    /// <summary>The schema of the whole document: edition, amendments and the request.</summary>
    internal static JsonObject Envelope(string id, string summary, bool takesEdition, JsonNode request)
    {
        var properties = new JsonObject();
        if (takesEdition)
        {
            properties["edition"] = ((IValueShape)Vocabulary.Editions).Schema();
        }

        properties["amendments"] = new JsonObject
        {
            ["description"] = "Amendment documents to lay over the edition.",
            ["type"] = Texts(["array", "null"]),
            ["items"] = new JsonObject
            {
                ["type"] = "object",
                ["required"] = Texts(["id", "title", "editions", "supersedes", "changes", "remarks"]),
            },
        };
        properties["request"] = request;
        return new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = id,
            ["description"] = summary,
            ["type"] = "object",
            ["properties"] = properties,
            ["required"] = takesEdition ? Texts(["edition", "request"]) : Texts(["request"]),
            ["additionalProperties"] = false,
        };
    }

    private static JsonNode Transform(JsonSchemaExporterContext context, JsonNode node)
    {
        JsonNode result = Vocabulary.Find(context.TypeInfo.Type) is { } shape ? shape.Schema() : node;
        if (context.PropertyInfo is not { } property)
        {
            return result;
        }

        if (!ReferenceEquals(result, node) && OperationJson.IsNullable(property))
        {
            result = new JsonObject { ["anyOf"] = new JsonArray(result, new JsonObject { ["type"] = "null" }) };
        }

        if (result is JsonObject described && OperationJson.Default(OperationJson.Of(property.DeclaringType), property) is { } standard)
        {
            described["default"] = JsonSerializer.SerializeToNode(standard, OperationJson.Of(property.PropertyType));
        }

        return result;
    }
}
