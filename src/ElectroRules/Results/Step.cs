namespace ElectroRules.Results;

/// <summary>A cell of a reference table that a step read.</summary>
/// <param name="Table">The key of the table, for example "conductor.ampacity".</param>
/// <param name="Row">The key of the row.</param>
/// <param name="Column">The key of the column.</param>
public sealed record TableCell(string Table, string Row, string Column);

/// <summary>What a step or a finding speaks of.</summary>
public sealed record Subject
{
    /// <summary>The size of a conductor, for example "6 AWG"; null when the step is not about a conductor.</summary>
    public string? ConductorSize { get; init; }

    /// <summary>The material of a conductor, for example "copper"; null when the step is not about a conductor.</summary>
    public string? Material { get; init; }

    /// <summary>The place (from 0) in the list of the request that the step is about, such as a segment of the route; null when not of a list.</summary>
    public int? Item { get; init; }
}

/// <summary>One step of a derivation: numbers and names, no sentences. Words come from <c>ElectroRules.Wording</c>.</summary>
public sealed record Step
{
    /// <summary>The place in the derivation, from 0.</summary>
    public required int Index { get; init; }

    /// <summary>The rule that the step belongs to.</summary>
    public required RuleId Rule { get; init; }

    /// <summary>The name of the number within the rule, for example "required-ampacity".</summary>
    public required string Name { get; init; }

    /// <summary>What was done.</summary>
    public required StepOperation Operation { get; init; }

    /// <summary>The steps whose values went in.</summary>
    public required IReadOnlyList<int> Inputs { get; init; }

    /// <summary>The value that came out, in <see cref="Unit"/>.</summary>
    public required double Value { get; init; }

    /// <summary>The unit of the value.</summary>
    public required QuantityUnit Unit { get; init; }

    /// <summary>The table cell that was read; null when none was.</summary>
    public required TableCell? Cell { get; init; }

    /// <summary>What the step speaks of; null when it needs no saying.</summary>
    public required Subject? Subject { get; init; }

    /// <summary>What the step rests on.</summary>
    public required Citation Citation { get; init; }
}
