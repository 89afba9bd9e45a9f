using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>The temperature columns that the two tests of a conductor against its load are made at.</summary>
internal readonly struct TerminalNeeds
{
    private TerminalNeeds(Figure required, Figure usable)
    {
        Required = required;
        Usable = usable;
    }

    /// <summary>The column for the need with the continuous factor.</summary>
    internal Figure Required { get; }

    /// <summary>The column for the bare load and for what the device protects: the lower end.</summary>
    internal Figure Usable { get; }

    internal static TerminalNeeds Derive(
        RuleSet rules, ref Deriving d, ConductorRun run, Figure? rating, TerminalTest test)
    {
        Figure lower = TerminalTemperature.Derive(rules, ref d, run, rating);
        if (test == TerminalTest.LowerEnd)
        {
            return new TerminalNeeds(lower, lower);
        }

        d.Find(new Finding
        {
            Rule = Rules.TerminalTemperature,
            Code = "each-end-tested-alone",
            Hazard = Hazard.None,
            Standing = CodeStanding.Note,
            Path = "/terminalTest",
            Citation = d.Cite(Rules.TerminalTemperature),
        });
        ConductorRun supplyOnly = run with { LoadTermination = run.SupplyTermination };
        return new TerminalNeeds(TerminalTemperature.Derive(rules, ref d, supplyOnly, rating), lower);
    }
}
