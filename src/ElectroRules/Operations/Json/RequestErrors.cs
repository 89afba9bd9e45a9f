using System.Text.Json;

namespace ElectroRules.Operations.Json;

/// <summary>One thing that is wrong with a request in JSON.</summary>
internal readonly record struct RequestError(string Pointer, string Code, string Message);

/// <summary>Everything that is wrong with a request in JSON, in the order in which it was found.</summary>
internal sealed class RequestErrors
{
    private readonly List<RequestError> _errors = [];

    internal int Count => _errors.Count;

    internal void Add(string pointer, string code, string message) => _errors.Add(new RequestError(pointer, code, message));

    /// <summary>Whether something was reported at a place, in it or around it.</summary>
    internal bool Touches(string pointer) => _errors.Exists(e => IsWithin(e.Pointer, pointer) || IsWithin(pointer, e.Pointer));

    internal void Write(Utf8JsonWriter writer, string operation)
    {
        writer.WriteStartObject();
        writer.WriteString("operation"u8, operation);
        writer.WriteStartArray("errors"u8);
        foreach (RequestError error in _errors.Distinct())
        {
            writer.WriteStartObject();
            writer.WriteString("pointer"u8, error.Pointer);
            writer.WriteString("code"u8, error.Code);
            writer.WriteString("message"u8, error.Message);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteEndObject();
    }

    private static bool IsWithin(string pointer, string outer) =>
        pointer.StartsWith(outer, StringComparison.Ordinal) && (pointer.Length == outer.Length || pointer[outer.Length] == '/');
}
