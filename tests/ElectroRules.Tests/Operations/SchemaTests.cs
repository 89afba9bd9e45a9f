using System.Text.Json;
using ElectroRules.Operations;

namespace ElectroRules.Tests.Operations;

public class SchemaTests
{
    public static TheoryData<string> Ids => [.. OperationCatalog.All.Select(o => o.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_schema_accepts_the_example_and_nothing_more(string id)
    {
        Operation operation = OperationCatalog.Find(id)!;
        using JsonDocument schema = JsonDocument.Parse(operation.RequestSchema());
        using JsonDocument example = JsonDocument.Parse(operation.ExampleRequest());
        Assert.True(Accepts(schema.RootElement, example.RootElement), operation.RequestSchema());
        using JsonDocument surprise = JsonDocument.Parse(OperationDocuments.With(id, d => d["request"]!["surprise"] = 1));
        Assert.False(Accepts(schema.RootElement, surprise.RootElement));
    }

    [Fact]
    public void A_unit_is_one_of_those_of_its_quantity()
    {
        using JsonDocument schema = JsonDocument.Parse(OperationCatalog.Find("conductor.ampacity")!.RequestSchema());
        using JsonDocument bad = JsonDocument.Parse(OperationDocuments.With("conductor.ampacity", d => d["request"]!["circuitRating"]!["unit"] = "mA"));
        Assert.False(Accepts(schema.RootElement, bad.RootElement));
    }

    /// <summary>The parts of JSON Schema that the schemas use.</summary>
    private static bool Accepts(JsonElement schema, JsonElement value)
    {
        if (schema.ValueKind is JsonValueKind.True)
        {
            return true;
        }

        if (schema.TryGetProperty("anyOf", out JsonElement any))
        {
            return any.EnumerateArray().Any(s => Accepts(s, value));
        }

        if (schema.TryGetProperty("enum", out JsonElement choices))
        {
            return choices.EnumerateArray().Any(c => JsonElement.DeepEquals(c, value));
        }

        JsonElement type = schema.GetProperty("type");
        if (!(type.ValueKind == JsonValueKind.Array ? type.EnumerateArray().Any(t => Is(t.GetString()!, value)) : Is(type.GetString()!, value)))
        {
            return false;
        }

        return value.ValueKind switch
        {
            JsonValueKind.Object => AcceptsObject(schema, value),
            JsonValueKind.Array => value.EnumerateArray().All(item => Accepts(schema.GetProperty("items"), item)),
            _ => true,
        };
    }

    private static bool AcceptsObject(JsonElement schema, JsonElement value)
    {
        if (!schema.TryGetProperty("properties", out JsonElement properties))
        {
            return true;
        }

        bool complete = !schema.TryGetProperty("required", out JsonElement required)
            || required.EnumerateArray().All(name => value.TryGetProperty(name.GetString()!, out _));
        return complete && !schema.GetProperty("additionalProperties").GetBoolean()
            && value.EnumerateObject().All(p => properties.TryGetProperty(p.Name, out JsonElement inner) && Accepts(inner, p.Value));
    }

    private static bool Is(string type, JsonElement value) => type switch
    {
        "object" => value.ValueKind == JsonValueKind.Object,
        "array" => value.ValueKind == JsonValueKind.Array,
        "string" => value.ValueKind == JsonValueKind.String,
        "number" => value.ValueKind == JsonValueKind.Number,
        "integer" => value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out _),
        "boolean" => value.ValueKind is JsonValueKind.True or JsonValueKind.False,
        "null" => value.ValueKind == JsonValueKind.Null,
        _ => false,
    };
}
