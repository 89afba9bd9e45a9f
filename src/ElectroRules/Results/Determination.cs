using System.Diagnostics.CodeAnalysis;

namespace ElectroRules.Results;

/// <summary>Whether there is an answer.</summary>
public enum DeterminationStatus
{
    /// <summary>There is an answer.</summary>
    Determined,

    /// <summary>Facts are missing; <see cref="Determination.Needs"/> names them.</summary>
    NeedsInput,

    /// <summary>The library does not answer this; <see cref="Determination.NotCovered"/> says why.</summary>
    NotCovered,
}

/// <summary>A fact that is missing.</summary>
/// <param name="Path">The part of the request, as a JSON pointer, for example "/route/0/ambientTemperature".</param>
/// <param name="Rule">The rule that asks for it.</param>
/// <param name="StillPossible">The answers that are still possible, as short codes such as "50 A" or "60 A"; empty when they were not tried.</param>
public sealed record Need(string Path, RuleId Rule, IReadOnlyList<string> StillPossible);

/// <summary>Why the library does not answer.</summary>
/// <param name="Code">A permanent code, for example "table-not-verified".</param>
/// <param name="Rule">The rule that could not be applied.</param>
/// <param name="Detail">What it is about: the key of a table, or the part of the request as a JSON pointer.</param>
/// <param name="Reason">The reason recorded with the data; empty when the code says it all.</param>
public sealed record NotCoveredReason(string Code, RuleId Rule, string Detail, string Reason);

/// <summary>The parts of an answer that do not depend on its kind.</summary>
public abstract class Determination
{
    private protected Determination(
        DeterminationStatus status,
        Derivation derivation,
        IReadOnlyList<Finding> findings,
        IReadOnlyList<Need> needs,
        NotCoveredReason? notCovered,
        Stamp stamp)
    {
        Status = status;
        Derivation = derivation;
        Findings = findings;
        Needs = needs;
        NotCovered = notCovered;
        Stamp = stamp;
    }

    /// <summary>Whether there is an answer.</summary>
    public DeterminationStatus Status { get; }

    /// <summary>Every step taken.</summary>
    public Derivation Derivation { get; }

    /// <summary>The facts that the answer rests on, with where they come from, in the order of the derivation.</summary>
    public IReadOnlyList<Assumption> Assumptions => Derivation.Assumptions();

    /// <summary>What is wrong, risky or worth knowing.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The missing facts, in the order of their effect; empty unless the status is <see cref="DeterminationStatus.NeedsInput"/>.</summary>
    public IReadOnlyList<Need> Needs { get; }

    /// <summary>Why there is no answer; null unless the status is <see cref="DeterminationStatus.NotCovered"/>.</summary>
    public NotCoveredReason? NotCovered { get; }

    /// <summary>Which rules made the answer.</summary>
    public Stamp Stamp { get; }

    /// <summary>The answer as an object, for code that handles every kind of answer; null when there is none.</summary>
    public abstract object? ValueOrNull { get; }
}

/// <summary>An answer with its grounds.</summary>
/// <typeparam name="T">The kind of the answer.</typeparam>
public sealed class Determination<T> : Determination
    where T : class
{
    private readonly T? _value;

    internal Determination(
        T? value,
        DeterminationStatus status,
        Derivation derivation,
        IReadOnlyList<Finding> findings,
        IReadOnlyList<Need> needs,
        NotCoveredReason? notCovered,
        Stamp stamp)
        : base(status, derivation, findings, needs, notCovered, stamp)
    {
        _value = value;
    }

    /// <summary>The answer.</summary>
    /// <exception cref="InvalidOperationException">There is none; <see cref="Determination.Status"/> says why.</exception>
    public T Value => _value ?? throw new InvalidOperationException(
        Status == DeterminationStatus.NeedsInput
            ? $"There is no answer: facts are missing ({string.Join(", ", Needs.Select(n => n.Path))})."
            : $"There is no answer: not covered ({NotCovered?.Code}: {NotCovered?.Detail}).");

    /// <inheritdoc />
    public override object? ValueOrNull => _value;

    /// <summary>Gives the answer when there is one.</summary>
    public bool TryGetValue([NotNullWhen(true)] out T? value)
    {
        value = _value;
        return value is not null;
    }
}
