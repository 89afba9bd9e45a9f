using System.Text.Json.Serialization.Metadata;

namespace ElectroRules.Operations.Json;

/// <summary>Finds the place in the document of a member written as in C#: "Run.Route[0].Length" is "/run/route/0/length".</summary>
internal static class FaultPlace
{
    /// <summary>The pointer of a member. A part that JSON does not know, such as a count, ends the pointer.</summary>
    internal static string Of(string path, Type type, string pointer)
    {
        foreach (string part in path.Split('.'))
        {
            string member = part.Split('[')[0];
            JsonTypeInfo info = OperationJson.Of(type);
            if (info.Kind != JsonTypeInfoKind.Object
                || info.Properties.FirstOrDefault(p => string.Equals(p.Name, Name(member), StringComparison.Ordinal)) is not { } property)
            {
                break;
            }

            pointer = JsonValues.Child(pointer, property.Name);
            type = property.PropertyType;
            if (part.Length > member.Length)
            {
                pointer = $"{pointer}/{part[(member.Length + 1)..^1]}";
                type = OperationJson.Of(type).ElementType!;
            }
        }

        return pointer;
    }

    private static string Name(string member) => System.Text.Json.JsonNamingPolicy.CamelCase.ConvertName(member);
}
