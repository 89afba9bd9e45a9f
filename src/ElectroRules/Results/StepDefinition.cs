namespace ElectroRules.Results;

/// <summary>What all uses of a step have in common. Each rule declares its own next to its code.</summary>
internal sealed class StepDefinition
{
    internal const int NoTable = -1;

    internal StepDefinition(RuleId rule, string name, StepOperation operation, QuantityUnit unit, int table = NoTable)
    {
        Rule = rule;
        Name = name;
        Operation = operation;
        Unit = unit;
        Table = table;
    }

    internal RuleId Rule { get; }

    /// <summary>The name of the number within the rule, in kebab case; with the slug of the rule it is the key of the wording.</summary>
    internal string Name { get; }

    internal StepOperation Operation { get; }

    internal QuantityUnit Unit { get; }

    /// <summary>The table that the value is read from, or <see cref="NoTable"/>.</summary>
    internal int Table { get; }
}

/// <summary>One step as it is stored: small, so that a derivation costs little.</summary>
internal struct StepData
{
    internal StepDefinition Definition;
    internal double Value;
    internal short A;
    internal short B;
    internal short C;

    /// <summary>The cell of the table plus one; 0 for none.</summary>
    internal ushort Cell;

    /// <summary>What the step speaks of: see <see cref="StepSubject"/>.</summary>
    internal int Subject;
}

/// <summary>Packs what a step speaks of (a size, a material, a place in a list) into one integer.</summary>
internal static class StepSubject
{
    internal const int None = 0;

    /// <summary>A conductor: the size's place in the list and the material's number.</summary>
    internal static int Conductor(int size, int material) => (1 << 28) | (material << 8) | size;

    /// <summary>The n-th entry of a list in the request, from 0.</summary>
    internal static int Item(int index) => (2 << 28) | index;

    /// <summary>A member of an enumeration: which enumeration is known from the step.</summary>
    internal static int Choice(int value) => (3 << 28) | value;

    internal static SubjectKind Kind(int subject) => (SubjectKind)(subject >> 28);

    internal static int Low(int subject) => subject & 0xFF;

    internal static int High(int subject) => (subject >> 8) & 0xFF;
}

internal enum SubjectKind
{
    None,
    Conductor,
    Item,
    Choice,
}
