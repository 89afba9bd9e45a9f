using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Loads;

/// <summary>What a load asks of its circuit: continuous or not, and what its nameplate sets.</summary>
internal static class LoadNeed
{
    private static readonly StepDefinition ByKind = new(Rules.ContinuousByKind, "continuous-by-kind", StepOperation.Table, QuantityUnit.YesNo, LoadKindsTable.Index);
    private static readonly StepDefinition Said = new(Rules.ContinuousByKind, "continuous-as-said", StepOperation.Given, QuantityUnit.YesNo);
    private static readonly StepDefinition MinimumAmpacity = new(Rules.NameplateCircuit, "minimum-circuit-ampacity", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition Greater = new(Rules.NameplateCircuit, "greater-need", StepOperation.Maximum, QuantityUnit.Ampere);

    /// <summary>Whether a load counts as continuous; null when that is not known.</summary>
    internal static bool? IsContinuous(RuleSet rules, Load load)
    {
        bool? byKind = LoadKinds.Property(rules, load.Kind, LoadKindsTable.Column.Continuous);
        if (byKind == true && LoadKinds.IsByCode(rules, load.Kind))
        {
            return true;
        }

        return load.Duty switch
        {
            LoadDuty.Continuous => true,
            LoadDuty.Noncontinuous => false,
            LoadDuty.ByKind => byKind,
            _ => byKind is not null && LoadKinds.IsByCode(rules, load.Kind) ? byKind : null,
        };
    }

    /// <summary>The need of the load. The factor for the continuous part is applied once, and not to what a nameplate already holds.</summary>
    internal static ContinuousNeed Derive(
        RuleSet rules, ref Deriving d, Load load, Figure current, bool isContinuous, bool? hundredPercentRated)
    {
        bool byNameplate = LoadKinds.Property(rules, load.Kind, LoadKindsTable.Column.NameplateCircuit) == true;
        if (byNameplate)
        {
            Figure ampacity = d.Given(MinimumAmpacity, Canonical.Amperes(load.MinimumCircuitAmpacity!.Value));
            return ContinuousNeed.AsItStands(ampacity, ampacity);
        }

        SayDuty(rules, ref d, load, isContinuous);
        ContinuousNeed need = isContinuous
            ? ContinuousNeed.AllContinuous(rules, ref d, current, hundredPercentRated)
            : ContinuousNeed.AsItStands(current, current);
        if (load.MinimumCircuitAmpacity is not { } marked)
        {
            return need;
        }

        Figure minimum = d.Given(MinimumAmpacity, Canonical.Amperes(marked));
        return ContinuousNeed.AsItStands(d.Maximum(Greater, need.AtTerminations, minimum), need.Load);
    }

    private static void SayDuty(RuleSet rules, ref Deriving d, Load load, bool isContinuous)
    {
        bool? byKind = LoadKinds.Property(rules, load.Kind, LoadKindsTable.Column.Continuous);
        bool kindDecides = byKind == isContinuous && load.Duty is null or LoadDuty.ByKind || (byKind == true && LoadKinds.IsByCode(rules, load.Kind));
        if (kindDecides && byKind is not null)
        {
            rules.Table(LoadKindsTable.Index).Read(ref d, ByKind, (int)load.Kind - 1, LoadKindsTable.Column.Continuous);
        }
        else
        {
            d.Given(Said, isContinuous ? 1 : 0);
        }

        if (kindDecides && load.Duty == LoadDuty.Noncontinuous)
        {
            d.Find(new Finding
            {
                Rule = Rules.ContinuousByKind,
                Code = "counts-as-continuous",
                Hazard = Hazard.None,
                Standing = CodeStanding.Note,
                Path = "/load/duty",
                Citation = d.Cite(Rules.ContinuousByKind),
            });
        }
    }
}
