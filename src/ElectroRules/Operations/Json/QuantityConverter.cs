using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace ElectroRules.Operations.Json;

/// <summary>A quantity as <c>{"value": 42, "unit": "A"}</c>. It is read in several units and written in the first.</summary>
internal sealed class QuantityConverter<T>(Func<T, double> number, params (string Code, Func<double, T> From)[] units)
    : JsonConverter<T>, IValueShape
    where T : struct
{
    private static readonly string[] Members = ["value", "unit"];

    Type IValueShape.Type => typeof(T);

    public string StandIn(bool other) => $$"""{"value":1,"unit":"{{units[0].Code}}"}""";

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        double? value = null;
        string? unit = null;
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            throw new JsonException();
        }

        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            bool isValue = reader.ValueTextEquals("value"u8);
            if (!isValue && !reader.ValueTextEquals("unit"u8))
            {
                throw new JsonException();
            }

            reader.Read();
            if (isValue)
            {
                value = reader.GetDouble();
            }
            else
            {
                unit = reader.GetString();
            }
        }

        return value is { } amount && Find(unit) is { } from ? from(amount) : throw new JsonException();
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options)
    {
        writer.WriteStartObject();
        writer.WriteNumber("value"u8, number(value));
        writer.WriteString("unit"u8, units[0].Code);
        writer.WriteEndObject();
    }

    public bool Check(JsonElement value, string pointer, RequestErrors errors)
    {
        if (JsonValues.Properties(value, pointer, Members, Members, errors) is not { } found)
        {
            return false;
        }

        int before = errors.Count;
        if (found.TryGetValue("value", out JsonElement amount))
        {
            JsonValues.Number(amount, pointer + "/value", errors);
        }

        if (found.TryGetValue("unit", out JsonElement unit)
            && JsonValues.Is(unit, JsonValueKind.String, "the code of a unit", pointer + "/unit", errors)
            && Find(unit.GetString()) is null)
        {
            errors.Add(pointer + "/unit", OperationErrorCode.UnknownUnit, $"The unit must be one of {string.Join(", ", units.Select(u => u.Code))}.");
        }

        return found.Count == Members.Length && errors.Count == before && value.GetPropertyCount() == Members.Length;
    }

    public JsonObject Schema() => new()
    {
        ["type"] = "object",
        ["properties"] = new JsonObject
        {
            ["value"] = new JsonObject { ["type"] = "number" },
            ["unit"] = new JsonObject { ["enum"] = SchemaNodes.Texts(units.Select(u => u.Code)) },
        },
        ["required"] = SchemaNodes.Texts(Members),
        ["additionalProperties"] = false,
    };

    private Func<double, T>? Find(string? code)
    {
        foreach ((string known, Func<double, T> from) in units)
        {
            if (string.Equals(known, code, StringComparison.Ordinal))
            {
                return from;
            }
        }

        return null;
    }
}
