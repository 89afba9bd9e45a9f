using System.Diagnostics;
using System.Runtime.CompilerServices;
using ElectroRules.Results;

namespace ElectroRules.Internal;

/// <summary>Writes a derivation down while a rule computes. The arithmetic is done here, so a step cannot differ from what it says.</summary>
internal ref struct Deriving
{
    private const short None = -1;
    private readonly StepResolver _resolver;
    private StepBuffer _inline;
    private StepData[]? _spill;
    private int _count;
    private List<Finding>? _findings;
    private List<Need>? _needs;
    private NotCoveredReason? _notCovered;
    private bool _isTrial;
    private string? _trialStop;

    internal Deriving(StepResolver resolver)
    {
        _resolver = resolver;
    }

    internal readonly bool IsStopped => _isTrial ? _trialStop is not null : _notCovered is not null || _needs is not null;

    /// <summary>Why the trial stopped, as a code; null when it did not.</summary>
    internal readonly string? WhyTrialStopped => _trialStop;

    /// <summary>Begins a trial: until it ends the same rules compute, but no step, finding or missing fact is kept.</summary>
    internal void BeginTrial()
    {
        _isTrial = true;
        _trialStop = null;
    }

    internal void EndTrial() => _isTrial = false;

    internal Figure Given(StepDefinition definition, double value, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Given, value, None, None, None, subject);

    internal Figure CodeDefault(StepDefinition definition, double value, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.CodeDefault, value, None, None, None, subject);

    /// <summary>A value that a rule lays down; the replay of such a step is the business of the rule's own tests.</summary>
    internal Figure Rule(StepDefinition definition, double value, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Rule, value, None, None, None, subject);

    internal Figure Rule(StepDefinition definition, double value, Figure from, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Rule, value, from.Step, None, None, subject);

    internal Figure Rule(StepDefinition definition, double value, Figure a, Figure b, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Rule, value, a.Step, b.Step, None, subject);

    internal Figure Rule(StepDefinition definition, double value, Figure a, Figure b, Figure c, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Rule, value, a.Step, b.Step, c.Step, subject);

    internal Figure Cell(StepDefinition definition, double value, int cell, ushort subject = StepSubject.None)
    {
        Figure figure = Add(definition, StepOperation.Table, value, None, None, None, subject);
        SetCell(cell);
        return figure;
    }

    internal Figure Cell(StepDefinition definition, double value, int cell, Figure key, ushort subject = StepSubject.None)
    {
        Figure figure = Add(definition, definition.Operation, value, key.Step, None, None, subject);
        SetCell(cell);
        return figure;
    }

    internal Figure Sum(StepDefinition definition, Figure a, Figure b, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Sum, a.Value + b.Value, a.Step, b.Step, None, subject);

    internal Figure Sum(StepDefinition definition, Figure a, Figure b, Figure c, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Sum, a.Value + b.Value + c.Value, a.Step, b.Step, c.Step, subject);

    internal Figure Difference(StepDefinition definition, Figure a, Figure b, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Difference, a.Value - b.Value, a.Step, b.Step, None, subject);

    internal Figure Product(StepDefinition definition, Figure a, Figure b, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Product, a.Value * b.Value, a.Step, b.Step, None, subject);

    internal Figure Product(StepDefinition definition, Figure a, Figure b, Figure c, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Product, a.Value * b.Value * c.Value, a.Step, b.Step, c.Step, subject);

    internal Figure Quotient(StepDefinition definition, Figure a, Figure b, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Quotient, a.Value / b.Value, a.Step, b.Step, None, subject);

    internal Figure Minimum(StepDefinition definition, Figure a, Figure b, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Minimum, Math.Min(a.Value, b.Value), a.Step, b.Step, None, subject);

    internal Figure Minimum(StepDefinition definition, Figure a, Figure b, Figure c, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Minimum, Math.Min(Math.Min(a.Value, b.Value), c.Value), a.Step, b.Step, c.Step, subject);

    internal Figure Maximum(StepDefinition definition, Figure a, Figure b, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Maximum, Math.Max(a.Value, b.Value), a.Step, b.Step, None, subject);

    internal Figure SineOfCosine(StepDefinition definition, Figure cosine) =>
        Add(definition, StepOperation.SineOfCosine, Math.Sqrt(1 - (cosine.Value * cosine.Value)), cosine.Step, None, None, StepSubject.None);

    internal Figure SquareScaled(StepDefinition definition, Figure value, Figure numerator, Figure denominator)
    {
        double ratio = numerator.Value / denominator.Value;
        return Add(
            definition, StepOperation.SquareScaled, value.Value * ratio * ratio, value.Step, numerator.Step, denominator.Step, StepSubject.None);
    }

    internal Figure FahrenheitDifference(StepDefinition definition, Figure fahrenheit) =>
        Add(definition, StepOperation.FahrenheitDifference, fahrenheit.Value * 5 / 9, fahrenheit.Step, None, None, StepSubject.None);

    /// <summary>The figure under the name of a result.</summary>
    internal Figure Same(StepDefinition definition, Figure figure, ushort subject = StepSubject.None) =>
        Add(definition, StepOperation.Same, figure.Value, figure.Step, None, None, subject);

    /// <summary>A candidate that fails against a need (or a cap).</summary>
    internal Figure Rejected(StepDefinition definition, double candidate, Figure limit, ushort subject) =>
        Add(definition, StepOperation.Rejected, candidate, limit.Step, None, None, subject);

    /// <summary>A candidate that holds against a need (or a cap).</summary>
    internal Figure Holds(StepDefinition definition, double candidate, Figure limit, ushort subject) =>
        Add(definition, StepOperation.Holds, candidate, limit.Step, None, None, subject);

    internal readonly Citation Cite(RuleId rule) => _resolver.Cite(rule);

    internal void Find(Finding finding)
    {
        if (!_isTrial)
        {
            (_findings ??= []).Add(finding);
        }
    }

    /// <summary>Notes a missing fact. The rule goes on as far as it can, so that all missing facts are named at once.</summary>
    internal void Needs(RuleId rule, string path) => Needs(rule, path, []);

    internal void Needs(RuleId rule, string path, IReadOnlyList<string> stillPossible)
    {
        if (_isTrial)
        {
            _trialStop ??= "needs-input";
            return;
        }

        (_needs ??= []).Add(new Need(path, rule, stillPossible));
    }

    /// <summary>Says that the rule set has no answer here. The first reason stands.</summary>
    internal void NotCovered(string code, RuleId rule, string detail, string reason)
    {
        if (_isTrial)
        {
            _trialStop ??= reason.Length > 0 ? reason : code;
            return;
        }

        _notCovered ??= new NotCoveredReason(code, rule, detail, reason);
    }

    /// <summary>Ends with the answer, or with what stopped it.</summary>
    internal Determination<T> Finish<T>(T? value)
        where T : class
    {
        DeterminationStatus status = Status(value is not null);
        StepData[] steps = Copy();
        _resolver.AddRemarks(steps, ref _findings);
        return new Determination<T>(
            status == DeterminationStatus.Determined ? value : null,
            status,
            new Derivation(steps, _resolver),
            _findings is null ? [] : _findings,
            status == DeterminationStatus.NeedsInput && _needs is not null ? _needs : [],
            status == DeterminationStatus.NotCovered ? _notCovered : null,
            _resolver.Stamp);
    }

    private readonly DeterminationStatus Status(bool hasValue)
    {
        if (_notCovered is not null)
        {
            return DeterminationStatus.NotCovered;
        }

        if (_needs is not null)
        {
            return DeterminationStatus.NeedsInput;
        }

        return hasValue ? DeterminationStatus.Determined : throw new UnreachableException("A rule ended with neither an answer nor a reason.");
    }

    private Figure Add(StepDefinition definition, StepOperation operation, double value, short a, short b, short c, ushort subject)
    {
        Debug.Assert(definition.Operation == operation, $"{definition.Rule.Slug}/{definition.Name} is declared as {definition.Operation} and used as {operation}.");
        if (_isTrial)
        {
            return new Figure(value, 0);
        }

        if (_count == StepBuffer.Length && _spill is null)
        {
            _spill = new StepData[StepBuffer.Length * 2];
            ((Span<StepData>)_inline).CopyTo(_spill);
        }
        else if (_spill is not null && _count == _spill.Length)
        {
            Array.Resize(ref _spill, _spill.Length * 2);
        }

        short index = checked((short)_count);
        _count++;
        ref StepData step = ref Last;
        step.Definition = definition;
        step.Value = value;
        step.A = a;
        step.B = b;
        step.CellOrC = c;
        step.Subject = subject;
        return new Figure(value, index);
    }

    [System.Diagnostics.CodeAnalysis.UnscopedRef]
    private ref StepData Last => ref _spill is null ? ref _inline[_count - 1] : ref _spill[_count - 1];

    private void SetCell(int cell)
    {
        if (!_isTrial)
        {
            Last.CellOrC = checked((short)cell);
        }
    }

    private readonly StepData[] Copy()
    {
        ReadOnlySpan<StepData> all = _spill is null ? (ReadOnlySpan<StepData>)_inline : _spill;
        return all[.._count].ToArray();
    }

    [InlineArray(Length)]
    private struct StepBuffer
    {
        internal const int Length = 80;
        private StepData _first;
    }
}
