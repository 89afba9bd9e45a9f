using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace ElectroRules.Operations.Json;

/// <summary>The serializer's settings, and what they say of a property.</summary>
internal static class OperationJson
{
    internal const int MaxDepth = 32;

    /// <summary>Answers are JSON for programs, never pasted into HTML unescaped, so text stays readable.</summary>
    internal static readonly JsonWriterOptions Compact = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, MaxDepth = 64 };

    internal static readonly JsonWriterOptions Indented = Compact with { Indented = true, NewLine = "\n" };

    internal static readonly JsonDocumentOptions Document = new() { MaxDepth = MaxDepth };

    internal static readonly JsonSerializerOptions Options = Create();

    internal static JsonTypeInfo Of(Type type) => Options.GetTypeInfo(type);

    /// <summary>Whether null, or nothing at all, may stand for a property: the fact is not known.</summary>
    internal static bool IsNullable(JsonPropertyInfo property) => property.PropertyType.IsValueType
        ? Nullable.GetUnderlyingType(property.PropertyType) is not null
        : property.AssociatedParameter?.IsNullable ?? property.IsSetNullable;

    /// <summary>The default of a property that need not be written and cannot be null; null when there is none.</summary>
    internal static object? Default(JsonTypeInfo owner, JsonPropertyInfo property) =>
        property.IsRequired || IsNullable(property) || Prototypes.Find(owner.Type) is not { } prototype ? null : property.Get!(prototype);

    internal static void WriteNumber(Utf8JsonWriter writer, ReadOnlySpan<byte> name, double value)
    {
        if (double.IsFinite(value))
        {
            writer.WriteNumber(name, value);
        }
        else
        {
            writer.WriteNull(name);
        }
    }

    private static JsonSerializerOptions Create()
    {
        var options = new JsonSerializerOptions
        {
            TypeInfoResolver = OperationJsonContext.Default.WithAddedModifier(AskOnlyForWhatCannotBeNull),
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            AllowDuplicateProperties = false,
            MaxDepth = MaxDepth,
            Encoder = Compact.Encoder,
        };
        foreach (IValueShape shape in Vocabulary.All)
        {
            options.Converters.Add((JsonConverter)shape);
        }

        options.MakeReadOnly();
        return options;
    }

    private static void AskOnlyForWhatCannotBeNull(JsonTypeInfo type)
    {
        if (type.Kind != JsonTypeInfoKind.Object)
        {
            return;
        }

        foreach (JsonPropertyInfo property in type.Properties)
        {
            property.IsRequired = property.IsRequired && !IsNullable(property);
        }
    }
}
