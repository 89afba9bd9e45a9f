using System.Collections;

namespace ElectroRules.Results;

/// <summary>Every step from the facts to the answer, in the order in which they were taken.</summary>
/// <remarks>The steps are kept packed and are unfolded when they are read.</remarks>
public sealed class Derivation : IReadOnlyList<Step>
{
    private readonly StepData[] _steps;
    private readonly StepResolver _resolver;

    internal Derivation(StepData[] steps, StepResolver resolver)
    {
        _steps = steps;
        _resolver = resolver;
    }

    /// <summary>The number of steps.</summary>
    public int Count => _steps.Length;

    /// <summary>The step at a place.</summary>
    /// <param name="index">From 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such step.</exception>
    public Step this[int index]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfNegative(index);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, _steps.Length);
            return Unfold(index);
        }
    }

    internal ReadOnlySpan<StepData> Data => _steps;

    /// <summary>The facts among the steps, with where they come from.</summary>
    internal IReadOnlyList<Assumption> Assumptions()
    {
        var found = new List<Assumption>();
        for (int i = 0; i < _steps.Length; i++)
        {
            if (OriginOf(in _steps[i]) is { } origin)
            {
                found.Add(new Assumption(i, origin));
            }
        }

        return found;
    }

    /// <inheritdoc />
    public IEnumerator<Step> GetEnumerator()
    {
        for (int i = 0; i < _steps.Length; i++)
        {
            yield return Unfold(i);
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private Step Unfold(int index)
    {
        ref readonly StepData data = ref _steps[index];
        StepDefinition definition = data.Definition;
        return new Step
        {
            Index = index,
            Rule = definition.Rule,
            Name = definition.Name,
            Operation = definition.Operation,
            Inputs = Inputs(in data),
            Value = data.Value,
            Unit = definition.Unit,
            Cell = data.HasCell ? _resolver.Cell(definition.Table, data.CellOrC) : null,
            Subject = _resolver.Subject(data.Subject),
            Citation = data.HasCell ? _resolver.CiteCell(definition.Table, data.CellOrC) : _resolver.Cite(definition.Rule),
        };
    }

    private AssumptionOrigin? OriginOf(in StepData data)
    {
        if (data.Definition.Operation == StepOperation.Given)
        {
            return AssumptionOrigin.Given;
        }

        if (data.Definition.IsCodeDefault)
        {
            return AssumptionOrigin.CodeDefault;
        }

        bool isPractice = data.HasCell && _resolver.CiteCell(data.Definition.Table, data.CellOrC).Kind == CitationKind.CommonPractice;
        return isPractice ? AssumptionOrigin.CommonPractice : null;
    }

    private static int[] Inputs(in StepData data)
    {
        if (data.A < 0)
        {
            return [];
        }

        if (data.B < 0)
        {
            return [data.A];
        }

        return data.HasCell || data.CellOrC < 0 ? [data.A, data.B] : [data.A, data.B, data.CellOrC];
    }
}

/// <summary>Turns the packed parts of a step into what the rule set says of them.</summary>
internal abstract class StepResolver
{
    internal abstract Stamp Stamp { get; }

    internal abstract Citation Cite(RuleId rule);

    internal abstract Citation CiteCell(int table, int cell);

    internal abstract TableCell Cell(int table, int cell);

    internal abstract Subject? Subject(ushort subject);

    /// <summary>Adds the local findings of amendments that go with the rules that were used.</summary>
    internal abstract void AddRemarks(ReadOnlySpan<StepData> steps, ref List<Finding>? findings);
}
