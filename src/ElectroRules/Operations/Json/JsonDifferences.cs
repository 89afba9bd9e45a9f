using System.Text.Json;

namespace ElectroRules.Operations.Json;

/// <summary>Lists the places at which two JSON values differ.</summary>
internal static class JsonDifferences
{
    /// <summary>Writes each difference as pointer, from and to; what one side lacks is null there.</summary>
    internal static void Write(Utf8JsonWriter writer, JsonElement from, JsonElement to, string pointer)
    {
        if (from.ValueKind == JsonValueKind.Object && to.ValueKind == JsonValueKind.Object)
        {
            foreach (string name in from.EnumerateObject().Concat(to.EnumerateObject()).Select(p => p.Name).Distinct(StringComparer.Ordinal))
            {
                Write(writer, Property(from, name), Property(to, name), JsonValues.Child(pointer, name));
            }
        }
        else if (from.ValueKind == JsonValueKind.Array && to.ValueKind == JsonValueKind.Array)
        {
            int a = from.GetArrayLength();
            int b = to.GetArrayLength();
            for (int i = 0; i < Math.Max(a, b); i++)
            {
                Write(writer, i < a ? from[i] : default, i < b ? to[i] : default, JsonValues.Child(pointer, i));
            }
        }
        else if (!Same(from, to))
        {
            writer.WriteStartObject();
            writer.WriteString("pointer"u8, pointer);
            Side(writer, "from"u8, from);
            Side(writer, "to"u8, to);
            writer.WriteEndObject();
        }
    }

    private static JsonElement Property(JsonElement owner, string name) => owner.TryGetProperty(name, out JsonElement value) ? value : default;

    private static bool Same(JsonElement a, JsonElement b) =>
        a.ValueKind == b.ValueKind && (a.ValueKind == JsonValueKind.Undefined || JsonElement.DeepEquals(a, b));

    private static void Side(Utf8JsonWriter writer, ReadOnlySpan<byte> name, JsonElement value)
    {
        writer.WritePropertyName(name);
        if (value.ValueKind == JsonValueKind.Undefined)
        {
            writer.WriteNullValue();
        }
        else
        {
            value.WriteTo(writer);
        }
    }
}
