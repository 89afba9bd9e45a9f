using System.Globalization;
using ElectroRules.Internal;
using ElectroRules.Results;

namespace ElectroRules.Wording;

/// <summary>Steps of a derivation as lines that a person can redo with a pencil.</summary>
public static class StepWording
{
    /// <summary>Writes a step, for example "12. Voltage at the load = 240 V − 4.2 V = 235.8 V  [arithmetic]".</summary>
    /// <param name="derivation">The derivation that the step is part of.</param>
    /// <param name="index">The place of the step, from 0.</param>
    /// <param name="words">The words.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such step.</exception>
    public static string Write(Derivation derivation, int index, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(derivation);
        ArgumentNullException.ThrowIfNull(words);
        Step step = derivation[index];
        string number = (index + 1).ToString(CultureInfo.InvariantCulture);
        return string.Concat(number, ". ", Body(derivation, step, words), string.Concat("  [", Ground(step, words), "]"));
    }

    /// <summary>The name of the number that a step gives, for example "Ampacity of 4 AWG copper, 90 °C column".</summary>
    public static string Name(Step step, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(words);
        string text = words.Text(KeyOf(step));
        string? subject = SubjectOf(step.Subject, words);
        string name = Template.Fill(
            text,
            ("subject", subject ?? words.Text("subject.unnamed")),
            ("column", step.Cell is { } cell ? words.Text("column." + cell.Column) : string.Empty));
        return subject is null || text.Contains("{subject}", StringComparison.Ordinal) ? name : $"{name}, {subject}";
    }

    /// <summary>The value of a step with its unit, for example "47.92 A".</summary>
    public static string Value(Step step, WordingSet words)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(words);
        string own = "value." + step.Rule.Slug + "." + step.Name;
        return words.Has(own)
            ? words.Fill(own, ("number", NumberWording.Digits(step.Value, decimals: 4)))
            : NumberWording.Write(words, step.Value, step.Unit, IsShare(step.Unit, step.Name));
    }

    /// <summary>Whether a plain number is a part of a whole and reads best in percent.</summary>
    internal static bool IsShare(QuantityUnit unit, string name) =>
        unit == QuantityUnit.One
        && (string.Equals(name, "share", StringComparison.Ordinal) || name.EndsWith("-share", StringComparison.Ordinal))
        && !name.EndsWith("-to-share", StringComparison.Ordinal);

    internal static string KeyOf(Step step) => "step." + step.Rule.Slug + "." + step.Name;

    /// <summary>The step without its number and its citation.</summary>
    internal static string Body(Derivation derivation, Step step, WordingSet words)
    {
        string name = Name(step, words);
        if (step.Operation is StepOperation.Rejected or StepOperation.Holds && step.Inputs.Count > 0)
        {
            return Tried(derivation[step.Inputs[0]], step, name, words);
        }

        string line = words.Fill(
            OperationKey(step.Operation),
            ("name", name),
            ("value", Value(step, words)),
            ("terms", Terms(derivation, step, words)),
            ("input", Input(derivation, step, 0, words)),
            ("second", Input(derivation, step, 1, words)),
            ("third", Input(derivation, step, 2, words)));
        bool says = step.Operation is StepOperation.Rule or StepOperation.Table && step.Inputs.Count > 0;
        return says ? words.Fill("operation.from", ("line", line), ("terms", Terms(derivation, step, words))) : line;
    }

    internal static string OperationKey(StepOperation operation) => "operation." + operation.ToString();

    private static string Tried(Step limit, Step step, string name, WordingSet words)
    {
        bool below = step.Operation == StepOperation.Rejected
            ? Limit.Below(step.Value, limit.Value)
            : Limit.Below(step.Value, limit.Value) || (IsCap(step) && Limit.AtMost(step.Value, limit.Value));
        (string value, string against) = NumberWording.Compared(words, step.Value, limit.Value, step.Unit, IsShare(limit.Unit, limit.Name));
        return words.Fill(
            OperationKey(step.Operation) + (below ? ".below" : ".above"), ("name", name), ("value", value), ("input", against));
    }

    /// <summary>Lengths and shares are held under a cap; ampacities are held over a need.</summary>
    private static bool IsCap(Step step) => step.Unit is QuantityUnit.Foot or QuantityUnit.One;

    private static string Terms(Derivation derivation, Step step, WordingSet words)
    {
        string joint = step.Operation switch
        {
            StepOperation.Sum => " + ",
            StepOperation.Difference => " − ",
            StepOperation.Product => " × ",
            StepOperation.Quotient => " / ",
            _ => ", ",
        };
        return string.Join(joint, step.Inputs.Select(i => Value(derivation[i], words)));
    }

    private static string Input(Derivation derivation, Step step, int place, WordingSet words) =>
        place < step.Inputs.Count ? Value(derivation[step.Inputs[place]], words) : string.Empty;

    private static string Ground(Step step, WordingSet words) => step.Cell is { } cell
        ? CitationWording.WriteCell(step.Citation, cell, words)
        : CitationWording.Write(step.Citation, words);

    private static string? SubjectOf(Subject? subject, WordingSet words)
    {
        if (subject?.ConductorSize is { } size)
        {
            return subject.Material is { } material
                ? words.Fill("subject.conductor", ("size", size), ("material", words.Text("material." + material)))
                : size;
        }

        if (subject?.Item is { } item)
        {
            return words.Fill("subject.item", ("item", (item + 1).ToString(CultureInfo.InvariantCulture)));
        }

        return null;
    }
}
