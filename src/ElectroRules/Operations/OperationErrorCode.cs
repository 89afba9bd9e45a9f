namespace ElectroRules.Operations;

/// <summary>The codes of what can be wrong with a request in JSON. Errors of amendments have the codes of <see cref="Amendments.AmendmentErrorCode"/>.</summary>
public static class OperationErrorCode
{
    /// <summary>The text is not JSON, or it is nested too deeply.</summary>
    public const string NotJson = "not-json";

    /// <summary>There is no such operation.</summary>
    public const string UnknownOperation = "unknown-operation";

    /// <summary>There is no such edition.</summary>
    public const string UnknownEdition = "unknown-edition";

    /// <summary>There is no such property here.</summary>
    public const string UnknownProperty = "unknown-property";

    /// <summary>The property is written twice.</summary>
    public const string DuplicateProperty = "duplicate-property";

    /// <summary>A property that must be written is not.</summary>
    public const string MissingProperty = "missing-property";

    /// <summary>A value of the wrong kind, such as a text where a number belongs.</summary>
    public const string WrongKind = "wrong-kind";

    /// <summary>A text that is not one of the choices.</summary>
    public const string UnknownChoice = "unknown-choice";

    /// <summary>A unit that this quantity is not written in.</summary>
    public const string UnknownUnit = "unknown-unit";

    /// <summary>A text that is not the label of a conductor size.</summary>
    public const string UnknownSize = "unknown-size";

    /// <summary>A number too large or too small for any wiring: only 0 and magnitudes from 1e-9 to 1e9 are read.</summary>
    public const string NumberOutOfBounds = "number-out-of-bounds";

    /// <summary>A number or a choice that the request does not allow in this place.</summary>
    public const string OutOfRange = "out-of-range";
}
