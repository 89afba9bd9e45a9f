using System.Globalization;
using ElectroRules.Results;
using ElectroRules.Tables;

namespace ElectroRules.Tests.Support;

/// <summary>Redoes every step of a derivation from its inputs, with nothing but the public surface of the library.</summary>
public static class DerivationReplay
{
    private const double Tolerance = 1e-9;

    /// <summary>For each step that holds a candidate against a limit: whether the limit is the most allowed (true) or the least (false).</summary>
    private static readonly Dictionary<string, bool> LimitIsMost = new(StringComparer.Ordinal)
    {
        ["too-small-at-terminations"] = false,
        ["too-small-after-correction"] = false,
        ["enough-at-terminations"] = false,
        ["enough-after-correction"] = false,
        ["ampacity-below-load"] = false,
        ["device-above-largest"] = true,
        ["short-portion"] = true,
    };

    /// <summary>Says how the limit of a step of another part is meant, for the tests of that part.</summary>
    /// <param name="stepName">The name of the step.</param>
    /// <param name="isMost">Whether the limit is the most allowed; false when it is the least.</param>
    public static void DeclareLimit(string stepName, bool isMost)
    {
        lock (LimitIsMost)
        {
            LimitIsMost[stepName] = isMost;
        }
    }

    /// <summary>Redoes all steps and checks every citation.</summary>
    public static void Verify(RuleSet rules, Determination determination)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(determination);
        Derivation derivation = determination.Derivation;
        Assert.Equal(rules.Stamp, determination.Stamp);
        for (int i = 0; i < derivation.Count; i++)
        {
            Step step = derivation[i];
            Assert.Equal(i, step.Index);
            Assert.All(step.Inputs, input => Assert.InRange(input, 0, i - 1));
            Assert.True(double.IsFinite(step.Value), $"{Place(step)} has no finite value.");
            Cited(rules, step);
            Redo(rules, step, [.. step.Inputs.Select(input => derivation[input].Value)]);
        }

        Assert.All(determination.Findings, finding => Cited(rules, finding.Citation, finding.Code));
    }

    private static void Redo(RuleSet rules, Step step, double[] inputs)
    {
        switch (step.Operation)
        {
            case StepOperation.Given or StepOperation.CodeDefault:
                Assert.Empty(inputs);
                Assert.Null(step.Cell);
                break;
            case StepOperation.Rule:
                Assert.Null(step.Cell);
                break;
            case StepOperation.Table or StepOperation.NextUp or StepOperation.NextDown:
                ReadAgain(rules, step, inputs);
                break;
            case StepOperation.Rejected or StepOperation.Holds:
                Compare(step, Assert.Single(inputs));
                break;
            default:
                Assert.True(Compute(step, inputs).Equals(step.Value), $"{Place(step)}: {step.Operation} gives {Text(Compute(step, inputs))}, not {Text(step.Value)}.");
                break;
        }
    }

    private static double Compute(Step step, double[] inputs) => step.Operation switch
    {
        StepOperation.Sum when inputs.Length >= 2 => inputs.Aggregate((a, b) => a + b),
        StepOperation.Difference when inputs.Length == 2 => inputs[0] - inputs[1],
        StepOperation.Product when inputs.Length >= 2 => inputs.Aggregate((a, b) => a * b),
        StepOperation.Quotient when inputs.Length == 2 => inputs[0] / inputs[1],
        StepOperation.Minimum when inputs.Length >= 2 => inputs.Min(),
        StepOperation.Maximum when inputs.Length >= 2 => inputs.Max(),
        StepOperation.SineOfCosine when inputs.Length == 1 => Math.Sqrt(1 - (inputs[0] * inputs[0])),
        StepOperation.SquareScaled when inputs.Length == 3 => inputs[0] * (inputs[1] / inputs[2]) * (inputs[1] / inputs[2]),
        StepOperation.FahrenheitDifference when inputs.Length == 1 => inputs[0] * 5 / 9,
        StepOperation.Same when inputs.Length == 1 => inputs[0],
        _ => throw new InvalidOperationException($"{Place(step)}: {step.Operation} with {inputs.Length} inputs cannot be redone."),
    };

    private static void ReadAgain(RuleSet rules, Step step, double[] inputs)
    {
        Assert.NotNull(step.Cell);
        ReferenceTable table = rules.Table(step.Cell.Table);
        Assert.Equal(table.Value(step.Cell.Row, step.Cell.Column), step.Value);
        if (step.Operation is StepOperation.NextUp or StepOperation.NextDown)
        {
            double key = Assert.Single(inputs);
            IEnumerable<string> holding = table.Rows.Where(row => Holds(table.Value(row, step.Cell.Column), key, step.Operation == StepOperation.NextDown));
            Assert.Equal(step.Operation == StepOperation.NextUp ? holding.First() : holding.Last(), step.Cell.Row);
        }
        else if (inputs.Length == 1 && table.Lookup != RowLookup.Exact)
        {
            Assert.Equal(table.Rows.First(row => Holds(Edge(row), inputs[0], isMost: false)), step.Cell.Row);
        }
    }

    private static void Compare(Step step, double limit)
    {
        bool isMost;
        lock (LimitIsMost)
        {
            Assert.True(LimitIsMost.TryGetValue(step.Name, out isMost), $"{Place(step)}: say in {nameof(DerivationReplay)} how its limit is meant.");
        }

        Assert.True(
            Holds(step.Value, limit, isMost) == (step.Operation == StepOperation.Holds),
            $"{Place(step)}: {Text(step.Value)} against {Text(limit)} is said to be {step.Operation}.");
    }

    private static bool Holds(double? value, double limit, bool isMost)
    {
        double slack = Math.Abs(limit) * Tolerance;
        return isMost ? value <= limit + slack : value >= limit - slack;
    }

    private static double Edge(string row) =>
        row == "inf" ? double.PositiveInfinity : double.Parse(row, CultureInfo.InvariantCulture);

    private static void Cited(RuleSet rules, Step step) => Cited(rules, step.Citation, Place(step));

    private static void Cited(RuleSet rules, Citation citation, string place)
    {
        Assert.Equal(rules.Edition, citation.Edition);
        bool needsSection = citation.Kind is CitationKind.Code or CitationKind.Amendment;
        Assert.True(needsSection == (citation.Section.Length > 0), $"{place} is cited as {citation.Kind} with the section '{citation.Section}'.");
        Assert.Equal(citation.Kind == CitationKind.Amendment, citation.Amendment is not null);
    }

    private static string Place(Step step) => string.Create(CultureInfo.InvariantCulture, $"step {step.Index} {step.Rule.Slug}/{step.Name}");

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
