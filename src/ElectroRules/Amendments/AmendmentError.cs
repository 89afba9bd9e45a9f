namespace ElectroRules.Amendments;

/// <summary>One thing that is wrong with an amendment.</summary>
/// <param name="Code">One of <see cref="AmendmentErrorCode"/>, for example "ERD2012".</param>
/// <param name="Amendment">The id of the amendment; empty when it could not be read.</param>
/// <param name="Pointer">The place in the amendment's document, as a JSON pointer, for example "/changes/0/column"; empty for the whole.</param>
/// <param name="Message">What is wrong, in English, for the person who writes the amendment.</param>
public sealed record AmendmentError(string Code, string Amendment, string Pointer, string Message);

/// <summary>Thrown with everything that is wrong when an amendment cannot be read or cannot be laid over a rule set.</summary>
public sealed class AmendmentException : Exception
{
    internal AmendmentException(IReadOnlyList<AmendmentError> errors)
        : base(Describe(errors))
    {
        Errors = errors;
    }

    /// <summary>All errors, at least one.</summary>
    public IReadOnlyList<AmendmentError> Errors { get; }

    private static string Describe(IReadOnlyList<AmendmentError> errors) => string.Join(
        Environment.NewLine,
        errors.Select(e => $"{e.Code} {(e.Amendment.Length == 0 ? "amendment" : e.Amendment)}#{e.Pointer}: {e.Message}"));
}
