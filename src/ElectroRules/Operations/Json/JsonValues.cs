using System.Globalization;
using System.Text.Json;

namespace ElectroRules.Operations.Json;

/// <summary>Reads parts of a document by kind and notes what is wrong.</summary>
internal static class JsonValues
{
    internal const double Least = 1e-9;
    internal const double Most = 1e9;

    internal static string Child(string pointer, string name) =>
        $"{pointer}/{name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";

    internal static string Child(string pointer, int index) => string.Create(CultureInfo.InvariantCulture, $"{pointer}/{index}");

    internal static bool Is(JsonElement value, JsonValueKind kind, string wanted, string pointer, RequestErrors errors)
    {
        if (value.ValueKind == kind)
        {
            return true;
        }

        errors.Add(pointer, OperationErrorCode.WrongKind, $"Here stands {Name(value.ValueKind)}; wanted: {wanted}.");
        return false;
    }

    /// <summary>The known properties of an object, the first of each name; null when the value is not an object.</summary>
    internal static Dictionary<string, JsonElement>? Properties(
        JsonElement value, string pointer, IReadOnlyCollection<string> known, IReadOnlyCollection<string> required, RequestErrors errors)
    {
        if (!Is(value, JsonValueKind.Object, "an object", pointer, errors))
        {
            return null;
        }

        var found = new Dictionary<string, JsonElement>(StringComparer.Ordinal);
        foreach (JsonProperty property in value.EnumerateObject())
        {
            if (!known.Contains(property.Name, StringComparer.Ordinal))
            {
                errors.Add(Child(pointer, property.Name), OperationErrorCode.UnknownProperty, $"There is no such property; the properties are {string.Join(", ", known)}.");
            }
            else if (!found.TryAdd(property.Name, property.Value))
            {
                errors.Add(Child(pointer, property.Name), OperationErrorCode.DuplicateProperty, "The property is written twice.");
            }
        }

        foreach (string name in required)
        {
            if (!found.ContainsKey(name))
            {
                errors.Add(Child(pointer, name), OperationErrorCode.MissingProperty, "The property is missing.");
            }
        }

        return found;
    }

    internal static bool Number(JsonElement value, string pointer, RequestErrors errors)
    {
        if (!Is(value, JsonValueKind.Number, "a number", pointer, errors))
        {
            return false;
        }

        double magnitude = value.TryGetDouble(out double number) ? Math.Abs(number) : double.PositiveInfinity;
        if (magnitude is 0 or (>= Least and <= Most))
        {
            return true;
        }

        errors.Add(pointer, OperationErrorCode.NumberOutOfBounds, "The number must be 0 or of a magnitude from 1e-9 to 1e9.");
        return false;
    }

    internal static bool WholeNumber(JsonElement value, string pointer, RequestErrors errors)
    {
        if (!Number(value, pointer, errors))
        {
            return false;
        }

        if (value.TryGetInt32(out _))
        {
            return true;
        }

        errors.Add(pointer, OperationErrorCode.WrongKind, "Here stands a number that is not whole, or not written as such; wanted: a whole number.");
        return false;
    }

    internal static bool YesNo(JsonElement value, string pointer, RequestErrors errors) =>
        value.ValueKind == JsonValueKind.False || Is(value, JsonValueKind.True, "true or false", pointer, errors);

    private static string Name(JsonValueKind kind) => kind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => "a text",
        JsonValueKind.Number => "a number",
        JsonValueKind.Null => "null",
        _ => "true or false",
    };
}
