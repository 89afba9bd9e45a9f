using System.Text.Json;
using System.Text.Json.Nodes;

namespace ElectroRules.Operations.Json;

/// <summary>How one type is written in JSON where the type's members are not its properties: a quantity, a choice.</summary>
internal interface IValueShape
{
    Type Type { get; }

    /// <summary>A valid value, to go on reading with when the given one is bad: one of two that are far apart.</summary>
    string StandIn(bool other);

    /// <summary>Notes what is wrong with a value.</summary>
    /// <returns>Whether it can be read.</returns>
    bool Check(JsonElement value, string pointer, RequestErrors errors);

    /// <summary>The JSON Schema of a value.</summary>
    JsonObject Schema();
}
