using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Loads;
using ElectroRules.Results;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Circuits;

/// <summary>Whether a branch circuit needs a neutral, and whether one is run.</summary>
internal readonly record struct NeutralNeed(bool IsNeeded, bool IsRun)
{
    private static readonly StepDefinition Needed = new(Rules.BranchCircuitNeutral, "needed", StepOperation.Rule, QuantityUnit.YesNo);

    internal static NeutralNeed Find(RuleSet rules, ref Deriving d, BranchCircuitRequest request)
    {
        Load load = request.Load;
        bool? needed = load.Connection == CircuitConnection.LineToNeutral
            ? true
            : load.NeedsNeutral ?? LoadKinds.Property(rules, load.Kind, LoadKindsTable.Column.Neutral);
        if (needed is not { } known)
        {
            d.Needs(Rules.BranchCircuitNeutral, "/load/needsNeutral");
            return default;
        }

        d.Rule(Needed, known ? 1 : 0);
        return new NeutralNeed(known, known || request.Preferences.SpareNeutral);
    }

    /// <summary>The insulated conductors of the circuit.</summary>
    internal int Insulated(CircuitConnection connection) => CurrentCarrying.Ungrounded(connection) + (IsRun ? 1 : 0);
}

/// <summary>Facts of the load that a design asks for beside those of the route.</summary>
internal static class DesignQuestions
{
    internal static void Ask(RuleSet rules, ref Deriving d, BranchCircuitRequest request)
    {
        Load load = request.Load;
        if (LoadKinds.Property(rules, load.Kind, LoadKindsTable.Column.NameplateCircuit) == true)
        {
            if (load.MinimumCircuitAmpacity is null)
            {
                d.Needs(Rules.NameplateCircuit, "/load/minimumCircuitAmpacity");
            }

            if (load.MaximumDevice is null)
            {
                d.Needs(Rules.NameplateMaximum, "/load/maximumDevice");
            }
        }

        bool powerAsksToo = load.Power is not null && !LoadKinds.IsResistive(rules, load.Kind);
        if (load.PowerFactor is null && !powerAsksToo && !LoadKinds.IsResistive(rules, load.Kind))
        {
            d.Needs(Rules.VoltageDropFormula, "/load/powerFactor");
        }
    }
}
