namespace ElectroRules.TableCompiler.Json;

internal enum NodeKind
{
    Object,
    Array,
    Text,
    Null,

    /// <summary>A number or a true/false: no data file uses them, numbers are texts as printed.</summary>
    Other,
}

/// <summary>A JSON value with the line on which it starts.</summary>
internal sealed class DataNode(NodeKind kind, int line)
{
    internal NodeKind Kind => kind;

    internal int Line => line;

    internal string Text { get; init; } = string.Empty;

    internal List<DataMember> Members { get; } = [];

    internal List<DataNode> Items { get; } = [];
}

/// <summary>A named value of an object.</summary>
internal sealed record DataMember(string Name, int Line, DataNode Value);
