using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Overcurrent;

/// <summary>How far the device of an appliance may go: the single non-motor appliance and resistance elements.</summary>
internal static class ApplianceLimits
{
    private static readonly StepDefinition Threshold = new(Rules.NonmotorAppliance, "threshold", StepOperation.Table, QuantityUnit.Ampere, OvercurrentCurrentsTable.Index);
    private static readonly StepDefinition Small = new(Rules.NonmotorAppliance, "small-appliance-device", StepOperation.Table, QuantityUnit.Ampere, OvercurrentCurrentsTable.Index);
    private static readonly StepDefinition Factor = new(Rules.NonmotorAppliance, "factor", StepOperation.Table, QuantityUnit.One, OvercurrentFactorsTable.Index);
    private static readonly StepDefinition Limit150 = new(Rules.NonmotorAppliance, "limit", StepOperation.Product, QuantityUnit.Ampere);
    private static readonly StepDefinition Device = new(Rules.NonmotorAppliance, "largest-device", StepOperation.NextUp, QuantityUnit.Ampere, OvercurrentStandardRatingsTable.Index);
    private static readonly StepDefinition ElementLoad = new(Rules.ResistanceElements, "largest-element-load", StepOperation.Table, QuantityUnit.Ampere, OvercurrentCurrentsTable.Index);

    /// <summary>The largest device for a single non-motor appliance without a marked maximum.</summary>
    internal static Figure Nonmotor(RuleSet rules, ref Deriving d, Figure load, OvercurrentDeviceKind kind)
    {
        ReferenceTable currents = rules.Table(OvercurrentCurrentsTable.Index);
        Figure threshold = currents.Read(ref d, Threshold, OvercurrentCurrentsTable.Row.NonmotorApplianceThreshold, OvercurrentCurrentsTable.Column.Value);
        if (Limit.AtMost(load.Value, threshold.Value))
        {
            return currents.Read(ref d, Small, OvercurrentCurrentsTable.Row.NonmotorApplianceSmallDevice, OvercurrentCurrentsTable.Column.Value);
        }

        Figure factor = rules.Table(OvercurrentFactorsTable.Index)
            .Read(ref d, Factor, OvercurrentFactorsTable.Row.NonmotorAppliance, OvercurrentFactorsTable.Column.Value);
        Figure limit = d.Product(Limit150, load, factor);
        int row = StandardRatings.RowNotBelow(rules, limit.Value, kind);
        if (row == StandardRatings.NoRow)
        {
            d.NotCovered("no-standard-rating", Rules.StandardRating, string.Empty, string.Empty);
            return default;
        }

        return rules.Table(OvercurrentStandardRatingsTable.Index).Read(ref d, Device, row, StandardRatings.Column(kind), limit);
    }

    /// <summary>Notes when resistance elements are above what one circuit within the appliance may feed.</summary>
    internal static void Elements(RuleSet rules, ref Deriving d, Figure load, string pointer)
    {
        Figure most = rules.Table(OvercurrentCurrentsTable.Index)
            .Read(ref d, ElementLoad, OvercurrentCurrentsTable.Row.ResistanceElementLargestLoad, OvercurrentCurrentsTable.Column.Value);
        if (Limit.AtMost(load.Value, most.Value))
        {
            return;
        }

        d.Find(new Finding
        {
            Rule = Rules.ResistanceElements,
            Code = "elements-must-be-subdivided",
            Hazard = Hazard.FixSoon,
            Standing = CodeStanding.Note,
            Path = pointer,
            Measured = new Measure(load.Value, QuantityUnit.Ampere),
            Limit = new Measure(most.Value, QuantityUnit.Ampere),
            Remedy = "check-internal-subdivision",
            Citation = d.Cite(Rules.ResistanceElements),
        });
    }
}
