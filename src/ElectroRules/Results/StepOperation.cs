namespace ElectroRules.Results;

/// <summary>What a step of a derivation does. From the operation and the inputs a person or a program can redo the step.</summary>
public enum StepOperation
{
    /// <summary>A fact given by the caller.</summary>
    Given,

    /// <summary>A value that the code itself sets when the fact is not known.</summary>
    CodeDefault,

    /// <summary>A value or a count that a rule lays down from the facts before it.</summary>
    Rule,

    /// <summary>A number read from a table cell.</summary>
    Table,

    /// <summary>The first entry of a table that is not below the input.</summary>
    NextUp,

    /// <summary>The last entry of a table that is not above the input.</summary>
    NextDown,

    /// <summary>The sum of the inputs.</summary>
    Sum,

    /// <summary>The first input less the second.</summary>
    Difference,

    /// <summary>The product of the inputs.</summary>
    Product,

    /// <summary>The first input divided by the second.</summary>
    Quotient,

    /// <summary>The least of the inputs.</summary>
    Minimum,

    /// <summary>The greatest of the inputs.</summary>
    Maximum,

    /// <summary>The square root of 1 less the square of the input: the sine that belongs to a cosine.</summary>
    SineOfCosine,

    /// <summary>The first input times the square of the ratio of the second to the third.</summary>
    SquareScaled,

    /// <summary>Degrees Celsius from degrees Fahrenheit difference: the input times 5/9.</summary>
    FahrenheitDifference,

    /// <summary>The inputs as they stand, passed on under the name of the result.</summary>
    Same,

    /// <summary>A candidate that was tried and rejected: its value is below (or above) the input.</summary>
    Rejected,

    /// <summary>A candidate that was tried and holds: its value is not below (or above) the input.</summary>
    Holds,
}
