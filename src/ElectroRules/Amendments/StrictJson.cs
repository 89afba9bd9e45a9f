using System.Globalization;
using System.Text.Json;

namespace ElectroRules.Amendments;

/// <summary>Reads JSON objects with a fixed set of properties and notes everything that is wrong.</summary>
internal sealed class StrictJson
{
    private readonly List<AmendmentError> _errors = [];

    internal List<AmendmentError> Errors => _errors;

    internal void Add(string code, string pointer, string message) => _errors.Add(new AmendmentError(code, string.Empty, pointer, message));

    /// <summary>The properties of an object; null when the value is not an object.</summary>
    internal Dictionary<string, JsonElement>? Object(JsonElement value, string at, ReadOnlySpan<string> properties)
    {
        if (!Is(value, JsonValueKind.Object, at, "an object"))
        {
            return null;
        }

        var found = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
        foreach (JsonProperty property in value.EnumerateObject())
        {
            string pointer = $"{at}/{Escape(property.Name)}";
            if (!properties.Contains(property.Name))
            {
                Add(AmendmentErrorCode.UnknownProperty, pointer, $"There is no property '{property.Name}' here.");
            }
            else if (!found.TryAdd(property.Name, property.Value))
            {
                Add(AmendmentErrorCode.DuplicateProperty, pointer, $"The property '{property.Name}' is written twice.");
            }
        }

        foreach (string name in properties)
        {
            if (!found.ContainsKey(name))
            {
                Add(AmendmentErrorCode.MissingProperty, $"{at}/{name}", $"The property '{name}' is missing.");
            }
        }

        return found;
    }

    internal string String(Dictionary<string, JsonElement> from, string name, string at) =>
        from.TryGetValue(name, out JsonElement value) ? String(value, $"{at}/{name}") : string.Empty;

    internal string String(JsonElement value, string at) =>
        Is(value, JsonValueKind.String, at, "a text") ? value.GetString()! : string.Empty;

    internal bool Boolean(Dictionary<string, JsonElement> from, string name, string at)
    {
        if (!from.TryGetValue(name, out JsonElement value) || value.ValueKind is JsonValueKind.True or JsonValueKind.False)
        {
            return value.ValueKind == JsonValueKind.True;
        }

        return Is(value, JsonValueKind.True, $"{at}/{name}", "true or false");
    }

    internal List<T> List<T>(Dictionary<string, JsonElement> from, string name, Func<JsonElement, string, T> read)
    {
        var items = new List<T>();
        if (from.TryGetValue(name, out JsonElement value) && Is(value, JsonValueKind.Array, "/" + name, "a list"))
        {
            foreach (JsonElement item in value.EnumerateArray())
            {
                items.Add(read(item, $"/{name}/{items.Count.ToString(CultureInfo.InvariantCulture)}"));
            }
        }

        return items;
    }

    internal bool Is(JsonElement value, JsonValueKind kind, string at, string wanted)
    {
        if (value.ValueKind == kind)
        {
            return true;
        }

        Add(AmendmentErrorCode.WrongType, at, $"Here stands {Name(value.ValueKind)}; wanted: {wanted}.");
        return false;
    }

    private static string Name(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };

    private static string Escape(string name) =>
        name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal);
}
