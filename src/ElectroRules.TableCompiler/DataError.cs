namespace ElectroRules.TableCompiler;

/// <summary>One thing that is wrong in a data file.</summary>
/// <param name="Code">The kind: see <see cref="DataErrorCode"/>.</param>
/// <param name="File">The name of the file.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Message">What is wrong.</param>
internal sealed record DataError(string Code, string File, int Line, string Message)
{
    /// <summary>The form that build tools read: file(line): error code: message.</summary>
    public override string ToString() =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{File}({Line}): error {Code}: {Message}");
}

/// <summary>Collects the errors of one file.</summary>
internal sealed class FileErrors(string file)
{
    private readonly List<DataError> _all = [];

    internal string File => file;

    internal IReadOnlyList<DataError> All => _all;

    internal void Add(string code, int line, string message) => _all.Add(new DataError(code, file, line, message));
}
