using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>Which wires of a circuit count as current-carrying: the equipment ground never, a neutral by what it carries.</summary>
internal static class CurrentCarrying
{
    private static readonly StepDefinition OwnCount =
        new(Rules.ConductorCounting, "own-count", StepOperation.Rule, QuantityUnit.Count);

    /// <summary>The count of the circuit itself; NaN when a fact is missing.</summary>
    internal static Figure Count(ref Deriving d, CircuitWires wires, string pointer)
    {
        int count = Raw(wires);
        if (count < 0)
        {
            d.Needs(Rules.ConductorCounting, pointer + "/mostlyNonlinear");
            return default;
        }

        return d.Rule(OwnCount, count);
    }

    /// <summary>The count, or -1 when it depends on a fact that is missing.</summary>
    internal static int Raw(CircuitWires wires) => wires.Connection switch
    {
        CircuitConnection.LineToNeutral => 2,
        CircuitConnection.LineToLine => wires.Neutral && IsWye(wires.System) ? 3 : 2,
        _ => !wires.Neutral || !IsWye(wires.System) ? 3 : wires.MostlyNonlinear switch { null => -1, true => 4, false => 3 },
    };

    /// <summary>The ungrounded conductors of a circuit.</summary>
    internal static int Ungrounded(CircuitConnection connection) => connection switch
    {
        CircuitConnection.LineToNeutral => 1,
        CircuitConnection.LineToLine => 2,
        _ => 3,
    };

    private static bool IsWye(SupplySystem system) => system is SupplySystem.Wye120V208V or SupplySystem.Wye277V480V;
}
