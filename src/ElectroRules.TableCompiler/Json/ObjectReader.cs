namespace ElectroRules.TableCompiler.Json;

/// <summary>Takes the known properties out of an object and reports what is missing, unknown or of the wrong type.</summary>
internal sealed class ObjectReader
{
    private readonly DataNode _node;
    private readonly FileErrors _errors;
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    private ObjectReader(DataNode node, FileErrors errors)
    {
        _node = node;
        _errors = errors;
    }

    internal int Line => _node.Line;

    /// <summary>Opens an object; null when the value is something else, which is then reported.</summary>
    internal static ObjectReader? Open(DataNode node, string what, FileErrors errors) =>
        Is(node, NodeKind.Object, what, errors) ? new ObjectReader(node, errors) : null;

    /// <summary>Whether a value has a type; reports it when not.</summary>
    internal static bool Is(DataNode node, NodeKind kind, string what, FileErrors errors)
    {
        if (node.Kind == kind)
        {
            return true;
        }

        errors.Add(DataErrorCode.WrongType, node.Line, $"{what} must be {NameOf(kind)}");
        return false;
    }

    internal DataNode? Take(string name, NodeKind kind)
    {
        DataNode? value = TakeOptional(name, kind, out bool present);
        if (!present)
        {
            _errors.Add(DataErrorCode.MissingProperty, Line, $"the property '{name}' is missing");
        }

        return value;
    }

    internal DataNode? TakeOptional(string name, NodeKind kind) => TakeOptional(name, kind, out _);

    /// <summary>A text that says something; empty when it is missing or wrong.</summary>
    internal DataNode? TakeText(string name)
    {
        DataNode? value = Take(name, NodeKind.Text);
        if (value is not null && string.IsNullOrWhiteSpace(value.Text))
        {
            _errors.Add(DataErrorCode.EmptyText, value.Line, $"'{name}' must not be empty");
            return null;
        }

        return value;
    }

    /// <summary>A text that must be one of a list; the member that stands for it, or null.</summary>
    internal string? TakeChoice(string name, IReadOnlyList<(string Code, string Member)> list, string errorCode)
    {
        DataNode? value = Take(name, NodeKind.Text);
        return value is null ? null : Choose(value, name, list, errorCode, _errors);
    }

    /// <summary>Reports every property that was not taken.</summary>
    internal void Close()
    {
        foreach (DataMember member in _node.Members)
        {
            if (!_taken.Contains(member.Name))
            {
                _errors.Add(DataErrorCode.UnknownProperty, member.Line, $"there is no property '{member.Name}' here");
            }
        }
    }

    internal static string? Choose(
        DataNode value, string name, IReadOnlyList<(string Code, string Member)> list, string errorCode, FileErrors errors)
    {
        string? member = Vocabulary.MemberOf(list, value.Text);
        if (member is null)
        {
            errors.Add(errorCode, value.Line, $"'{name}' is '{value.Text}'; it must be one of {Vocabulary.CodesOf(list)}");
        }

        return member;
    }

    private DataNode? TakeOptional(string name, NodeKind kind, out bool present)
    {
        _taken.Add(name);
        DataMember? member = _node.Members.Find(m => string.Equals(m.Name, name, StringComparison.Ordinal));
        present = member is not null;
        return member is not null && Is(member.Value, kind, $"'{name}'", _errors) ? member.Value : null;
    }

    private static string NameOf(NodeKind kind) => kind switch
    {
        NodeKind.Object => "an object",
        NodeKind.Array => "a list",
        NodeKind.Text => "a text",
        _ => "of another type",
    };
}
