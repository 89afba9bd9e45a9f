using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>Which temperature column the terminations allow for the final ampacity.</summary>
internal static class TerminalTemperature
{
    private static readonly StepDefinition Marked = new(Rules.TerminalTemperature, "marked-limit", StepOperation.Table, QuantityUnit.Celsius, ConductorTerminalCeilingTable.Index);
    private static readonly StepDefinition Unmarked = new(Rules.TerminalTemperature, "unmarked-limit", StepOperation.Table, QuantityUnit.Celsius, ConductorTerminalDefaultTable.Index) { IsCodeDefault = true };
    private static readonly StepDefinition Lower = new(Rules.TerminalTemperature, "lower-end", StepOperation.Minimum, QuantityUnit.Celsius);

    internal static bool Covered(RuleSet rules, ref Deriving d) =>
        rules.Has(ref d, ConductorTerminalCeilingTable.Index, Rules.TerminalTemperature)
        && rules.Has(ref d, ConductorTerminalDefaultTable.Index, Rules.TerminalTemperature);

    /// <summary>The limit of one end in degrees Celsius, without a step.</summary>
    internal static double Raw(RuleSet rules, TerminationRating? rating, double circuitAmperes)
    {
        if (rating is { } marked)
        {
            return rules.Table(ConductorTerminalCeilingTable.Index).At((int)marked - 1, ConductorTerminalCeilingTable.Column.Temperature);
        }

        ReferenceTable table = rules.Table(ConductorTerminalDefaultTable.Index);
        return table.At(table.RowNotBelow(circuitAmperes), ConductorTerminalDefaultTable.Column.Temperature);
    }

    /// <summary>Asks for the rating of the circuit when an end is not marked.</summary>
    internal static void Ask(ref Deriving d, ConductorRun run, bool hasRating, string ratingPointer)
    {
        if ((run.SupplyTermination is null || run.LoadTermination is null) && !hasRating)
        {
            d.Needs(Rules.TerminalTemperature, ratingPointer);
        }
    }

    /// <summary>The lower limit of both ends. An end without a marking takes the default for the rating of the circuit.</summary>
    internal static Figure Derive(RuleSet rules, ref Deriving d, ConductorRun run, Figure? circuitRating)
    {
        Figure supply = End(rules, ref d, run.SupplyTermination, circuitRating ?? default);
        return run.LoadTermination == run.SupplyTermination
            ? supply
            : d.Minimum(Lower, supply, End(rules, ref d, run.LoadTermination, circuitRating ?? default));
    }

    private static Figure End(RuleSet rules, ref Deriving d, TerminationRating? rating, Figure circuitRating)
    {
        if (rating is { } marked)
        {
            return rules.Table(ConductorTerminalCeilingTable.Index)
                .Read(ref d, Marked, (int)marked - 1, ConductorTerminalCeilingTable.Column.Temperature);
        }

        ReferenceTable table = rules.Table(ConductorTerminalDefaultTable.Index);
        return table.Read(ref d, Unmarked, table.RowNotBelow(circuitRating.Value), ConductorTerminalDefaultTable.Column.Temperature, circuitRating);
    }
}
