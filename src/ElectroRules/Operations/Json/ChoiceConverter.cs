using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace ElectroRules.Operations.Json;

/// <summary>The written name of each member of an enumeration: its C# name with a small first letter.</summary>
internal static class ChoiceNames
{
    internal static string Of<T>(T value)
        where T : struct, Enum => Cache<T>.Names.GetValueOrDefault(value, string.Empty);

    private static class Cache<T>
        where T : struct, Enum
    {
        internal static readonly Dictionary<T, string> Names =
            Enum.GetValues<T>().ToDictionary(v => v, v => JsonNamingPolicy.CamelCase.ConvertName(Enum.GetName(v)!));
    }
}

/// <summary>A member of an enumeration as a text; numbers are refused.</summary>
internal sealed class ChoiceConverter<T>(Func<T, string> name, string unknown) : JsonConverter<T>, IValueShape
    where T : struct, Enum
{
    private readonly T[] _values = Enum.GetValues<T>();

    internal ChoiceConverter()
        : this(ChoiceNames.Of, OperationErrorCode.UnknownChoice)
    {
    }

    Type IValueShape.Type => typeof(T);

    public string StandIn(bool other) => $"\"{name(other ? _values[^1] : _values[0])}\"";

    private IEnumerable<string> Names => _values.Select(name);

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String && TryFind(reader.GetString(), out T value) ? value : throw new JsonException();

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(name(value));

    public bool Check(JsonElement value, string pointer, RequestErrors errors)
    {
        if (!JsonValues.Is(value, JsonValueKind.String, $"one of {string.Join(", ", Names)}", pointer, errors))
        {
            return false;
        }

        if (TryFind(value.GetString(), out _))
        {
            return true;
        }

        errors.Add(pointer, unknown, $"The text must be one of {string.Join(", ", Names)}.");
        return false;
    }

    public JsonObject Schema() => new() { ["enum"] = SchemaNodes.Texts(Names) };

    internal bool TryFind(string? text, out T value)
    {
        foreach (T candidate in _values)
        {
            if (string.Equals(name(candidate), text, StringComparison.Ordinal))
            {
                value = candidate;
                return true;
            }
        }

        value = default;
        return false;
    }
}
