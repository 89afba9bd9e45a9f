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

    /// <summary>Whether the value is what the code itself sets when the fact is not known.</summary>
    internal bool IsCodeDefault { get; init; }

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

    /// <summary>The third input, or the cell of the table for a step that reads one: such a step has no third input.</summary>
    internal short CellOrC;

    /// <summary>What the step speaks of: see <see cref="StepSubject"/>.</summary>
    internal ushort Subject;

    internal readonly bool HasCell => Definition.Table != StepDefinition.NoTable;
}

/// <summary>Packs what a step speaks of (a size and a metal, or a place in a list) into 16 bits.</summary>
internal static class StepSubject
{
    internal const ushort None = 0;
    private const int ConductorBit = 0x8000;
    private const int ItemBit = 0x4000;

    /// <summary>A conductor: the size's place in the list and the material's number.</summary>
    internal static ushort Conductor(int size, int material) => (ushort)(ConductorBit | (material << 8) | size);

    /// <summary>The n-th entry of a list in the request, from 0.</summary>
    internal static ushort Item(int index) => (ushort)(ItemBit | index);

    internal static bool IsConductor(ushort subject) => (subject & ConductorBit) != 0;

    internal static bool IsItem(ushort subject) => (subject & ItemBit) != 0;

    internal static int Size(ushort subject) => subject & 0xFF;

    internal static int Material(ushort subject) => (subject >> 8) & 0x3F;

    internal static int Index(ushort subject) => subject & 0x3FFF;
}
