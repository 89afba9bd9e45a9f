namespace ElectroRules.Wording;

/// <summary>A set of words that cannot be used. All faults are listed at once.</summary>
public sealed class WordingException : FormatException
{
    /// <summary>Makes an exception with no faults listed.</summary>
    public WordingException()
    {
    }

    /// <summary>Makes an exception with a message.</summary>
    public WordingException(string message)
        : base(message)
    {
    }

    /// <summary>Makes an exception with a message and its cause.</summary>
    public WordingException(string message, Exception innerException)
        : base(message, innerException)
    {
    }

    internal WordingException(IReadOnlyList<string> faults)
        : base($"The words cannot be used: {string.Join(" ", faults)}")
    {
        Faults = faults;
    }

    /// <summary>Each fault, with the key that it is about.</summary>
    public IReadOnlyList<string> Faults { get; } = [];
}
