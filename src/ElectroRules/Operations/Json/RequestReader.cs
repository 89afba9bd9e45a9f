using System.Buffers;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using ElectroRules.Internal;

namespace ElectroRules.Operations.Json;

/// <summary>Reads a request and notes everything that is wrong with it at once.</summary>
/// <remarks>
/// The document is walked along the types of the request and copied: defaults are filled in, and a stand-in takes the place of what
/// is bad, so that the numbers elsewhere can still be checked. This is done with two stand-ins: only a fault found with both counts.
/// </remarks>
internal sealed class RequestReader
{
    private readonly RequestErrors _errors;
    private readonly bool _other;

    private RequestReader(RequestErrors errors, bool other)
    {
        _errors = errors;
        _other = other;
    }

    /// <summary>Reads a request; null when something is wrong with it.</summary>
    internal static T? Read<T>(JsonElement element, string pointer, Action<T, RequestCheck> check, RequestErrors errors)
        where T : class
    {
        int before = errors.Count;
        T? request = new RequestReader(errors, other: false).Copy<T>(element, pointer);
        List<RequestFault> faults = Faults(request, check);
        if (errors.Count > before && faults.Count > 0)
        {
            T? again = new RequestReader(new RequestErrors(), other: true).Copy<T>(element, pointer);
            faults = [.. faults.Intersect(Faults(again, check))];
        }

        foreach (RequestFault fault in faults)
        {
            string place = FaultPlace.Of(fault.Path, typeof(T), pointer);
            if (!errors.Touches(place))
            {
                errors.Add(place, OperationErrorCode.OutOfRange, $"{place[(place.LastIndexOf('/') + 1)..]} {fault.Message}");
            }
        }

        return errors.Count == before ? request : null;
    }

    private static List<RequestFault> Faults<T>(T? request, Action<T, RequestCheck> check)
        where T : class
    {
        var faults = new List<RequestFault>();
        if (request is not null)
        {
            check(request, new RequestCheck(faults, string.Empty));
        }

        return faults;
    }

    private T? Copy<T>(JsonElement element, string pointer)
        where T : class
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer))
        {
            Value(writer, element, typeof(T), nullable: false, pointer);
        }

        return (T?)JsonSerializer.Deserialize(buffer.WrittenSpan, OperationJson.Of(typeof(T)));
    }

    private void Value(Utf8JsonWriter writer, JsonElement value, Type type, bool nullable, string pointer)
    {
        if (nullable && value.ValueKind == JsonValueKind.Null)
        {
            writer.WriteNullValue();
            return;
        }

        if (Vocabulary.Find(type) is { } shape)
        {
            Scalar(writer, value, shape.Check(value, pointer, _errors), nullable ? "null" : shape.StandIn(_other));
            return;
        }

        JsonTypeInfo info = OperationJson.Of(type);
        switch (info.Kind)
        {
            case JsonTypeInfoKind.Object:
                Object(writer, value, info, pointer);
                break;
            case JsonTypeInfoKind.Enumerable:
                List(writer, value, info.ElementType!, pointer);
                break;
            default:
                Plain(writer, value, Nullable.GetUnderlyingType(type) ?? type, nullable, pointer);
                break;
        }
    }

    private void Object(Utf8JsonWriter writer, JsonElement value, JsonTypeInfo info, string pointer)
    {
        string[] required = [.. info.Properties.Where(p => p.IsRequired).Select(p => p.Name)];
        if (JsonValues.Properties(value, pointer, [.. info.Properties.Select(p => p.Name)], required, _errors) is not { } found)
        {
            writer.WriteNullValue();
            return;
        }

        writer.WriteStartObject();
        foreach (JsonPropertyInfo property in info.Properties)
        {
            writer.WritePropertyName(property.Name);
            bool nullable = OperationJson.IsNullable(property);
            if (found.TryGetValue(property.Name, out JsonElement given))
            {
                Value(writer, given, property.PropertyType, nullable, JsonValues.Child(pointer, property.Name));
            }
            else if (OperationJson.Default(info, property) is { } standard)
            {
                JsonSerializer.Serialize(writer, standard, OperationJson.Of(property.PropertyType));
            }
            else
            {
                Missing(writer, property.PropertyType, nullable);
            }
        }

        writer.WriteEndObject();
    }

    private void List(Utf8JsonWriter writer, JsonElement value, Type element, string pointer)
    {
        if (!JsonValues.Is(value, JsonValueKind.Array, "a list", pointer, _errors))
        {
            writer.WriteNullValue();
            return;
        }

        writer.WriteStartArray();
        int index = 0;
        foreach (JsonElement item in value.EnumerateArray())
        {
            Value(writer, item, element, nullable: false, JsonValues.Child(pointer, index++));
        }

        writer.WriteEndArray();
    }

    private void Plain(Utf8JsonWriter writer, JsonElement value, Type type, bool nullable, string pointer)
    {
        bool good = type == typeof(bool) ? JsonValues.YesNo(value, pointer, _errors)
            : type == typeof(int) ? JsonValues.WholeNumber(value, pointer, _errors)
            : type == typeof(double) ? JsonValues.Number(value, pointer, _errors)
            : JsonValues.Is(value, JsonValueKind.String, "a text", pointer, _errors);
        Scalar(writer, value, good, nullable ? "null" : PlainStandIn(type));
    }

    private static void Scalar(Utf8JsonWriter writer, JsonElement value, bool good, string standIn)
    {
        if (good)
        {
            value.WriteTo(writer);
        }
        else
        {
            writer.WriteRawValue(standIn);
        }
    }

    /// <summary>Writes what stands for a missing property; that a required one is missing was noted with the object.</summary>
    private void Missing(Utf8JsonWriter writer, Type type, bool nullable)
    {
        if (nullable || !type.IsValueType)
        {
            writer.WriteNullValue();
            return;
        }

        writer.WriteRawValue(Vocabulary.Find(type)?.StandIn(_other) ?? PlainStandIn(type));
    }

    private static string PlainStandIn(Type type) => type == typeof(bool) ? "false" : type == typeof(string) ? "\"\"" : "1";
}
