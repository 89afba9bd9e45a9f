namespace ElectroRules.Results;

/// <summary>A number with its unit, as a finding holds it.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit of the number.</param>
public sealed record Measure(double Value, QuantityUnit Unit);

/// <summary>Something that is wrong, risky or worth knowing. It holds codes and numbers; words come from <c>ElectroRules.Wording</c>.</summary>
public sealed record Finding
{
    /// <summary>The rule that the finding belongs to.</summary>
    public required RuleId Rule { get; init; }

    /// <summary>The code of the finding within the rule, for example "drop-above-recommendation". Permanent.</summary>
    public required string Code { get; init; }

    /// <summary>How dangerous it is.</summary>
    public required Hazard Hazard { get; init; }

    /// <summary>What the code says of it.</summary>
    public required CodeStanding Standing { get; init; }

    /// <summary>The part of the request that it is about, as a JSON pointer, for example "/route/1"; empty for the whole.</summary>
    public required string Path { get; init; }

    /// <summary>What is there; null when there is nothing to measure.</summary>
    public Measure? Measured { get; init; }

    /// <summary>What the limit is; null when there is none.</summary>
    public Measure? Limit { get; init; }

    /// <summary>The code of the remedy, for example "use-larger-conductor"; null when none is offered.</summary>
    public string? Remedy { get; init; }

    /// <summary>What the finding rests on.</summary>
    public required Citation Citation { get; init; }
}
