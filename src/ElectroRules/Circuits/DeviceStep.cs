using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Circuits;

/// <summary>The device of a branch circuit, chosen from the load before the conductors are.</summary>
internal readonly struct DeviceStep
{
    private static readonly StepDefinition Marked = new(Rules.NameplateMaximum, "marked-maximum", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition WithinMarked = new(Rules.NameplateMaximum, "largest-standard-rating", StepOperation.NextDown, QuantityUnit.Ampere, OvercurrentStandardRatingsTable.Index);
    private static readonly StepDefinition Outlets = new(Rules.BranchCircuitOutletRatings, "rating-for-several-outlets", StepOperation.NextUp, QuantityUnit.Ampere, BranchCircuitOutletRatingsTable.Index);
    private static readonly StepDefinition LeastRating = new(Rules.BranchCircuitOutletRatings, "least-rating-for-receptacles", StepOperation.Table, QuantityUnit.Ampere, OvercurrentSmallConductorTable.Index);
    private static readonly StepDefinition AtLeast = new(Rules.BranchCircuitOutletRatings, "need-of-outlets", StepOperation.Maximum, QuantityUnit.Ampere);
    private static readonly StepDefinition TooLarge = new(Rules.NameplateMaximum, "device-above-maximum", StepOperation.Rejected, QuantityUnit.Ampere);

    private DeviceStep(Figure rating, Figure? ceiling, DesignLimit limit, ProtectionRules protection)
    {
        Rating = rating;
        Ceiling = ceiling;
        Limit = limit;
        Protection = protection;
    }

    internal Figure Rating { get; }

    /// <summary>What the load itself sets as the largest device; null when it sets none.</summary>
    internal Figure? Ceiling { get; }

    internal DesignLimit Limit { get; }

    internal ProtectionRules Protection { get; }

    internal static DeviceStep Derive(RuleSet rules, ref Deriving d, BranchCircuitRequest request, Figure current, in ContinuousNeed need)
    {
        Load load = request.Load;
        bool severalReceptacles = LoadKinds.Property(rules, load.Kind, LoadKindsTable.Column.SeveralReceptacles) == true;
        bool exempt = LoadKinds.Property(rules, load.Kind, LoadKindsTable.Column.SmallConductorExempt) == true;
        double marked = load.MaximumDevice is { } maximum ? Canonical.Amperes(maximum) : double.NaN;
        var protection = new ProtectionRules(request.DeviceKind, severalReceptacles, request.Preferences.NoNextSizeUp, exempt, marked);
        if (exempt)
        {
            return FromNameplate(rules, ref d, request, marked, need, protection);
        }

        Figure rating = severalReceptacles
            ? ForOutlets(rules, ref d, need.AtTerminations)
            : OvercurrentDevice.SmallestFor(rules, ref d, need.AtTerminations, request.DeviceKind);
        Figure? ceiling = CeilingOf(rules, ref d, load, current, request.DeviceKind);
        if (!d.IsStopped && ceiling is { } most && Internal.Limit.Above(rating.Value, most.Value))
        {
            d.Rejected(TooLarge, rating.Value, most, StepSubject.None);
            SegmentAmpacity.Refuse(ref d, Rules.NameplateMaximum, "no-device-fits", "/load");
        }

        if (LoadKinds.IsResistive(rules, load.Kind))
        {
            ApplianceLimits.Elements(rules, ref d, current, "/load");
        }

        return new DeviceStep(rating, ceiling, severalReceptacles ? DesignLimit.OutletRatings : DesignLimit.Load, protection);
    }

    private static DeviceStep FromNameplate(
        RuleSet rules, ref Deriving d, BranchCircuitRequest request, double marked, in ContinuousNeed need, ProtectionRules protection)
    {
        Figure maximum = d.Given(Marked, marked);
        int row = StandardRatings.RowNotAbove(rules, marked, request.DeviceKind);
        if (row == StandardRatings.NoRow)
        {
            SegmentAmpacity.Refuse(ref d, Rules.NameplateMaximum, "no-device-fits", "/load/maximumDevice");
            return default;
        }

        Figure rating = rules.Table(OvercurrentStandardRatingsTable.Index)
            .Read(ref d, WithinMarked, row, StandardRatings.Column(request.DeviceKind), maximum);
        if (Internal.Limit.Below(rating.Value, need.AtTerminations.Value))
        {
            SegmentAmpacity.Refuse(ref d, Rules.NameplateMaximum, "nameplate-contradicts-itself", "/load/maximumDevice");
        }

        return new DeviceStep(rating, rating, DesignLimit.Nameplate, protection with { NameplateMaximum = rating.Value });
    }

    private static Figure ForOutlets(RuleSet rules, ref Deriving d, Figure required)
    {
        ReferenceTable table = rules.Table(BranchCircuitOutletRatingsTable.Index);
        Figure rating = d.Maximum(AtLeast, required, LeastForReceptacles(rules, ref d));
        int row = table.RowNotBelow(rating.Value);
        if (row < 0)
        {
            SegmentAmpacity.Refuse(ref d, Rules.BranchCircuitOutletRatings, "load-above-outlet-ratings", "/load");
            return default;
        }

        return table.Read(ref d, Outlets, row, BranchCircuitOutletRatingsTable.Column.Rating, rating);
    }

    /// <summary>The smallest rating for receptacles: that of the smallest copper conductor of general wiring.</summary>
    private static Figure LeastForReceptacles(RuleSet rules, ref Deriving d)
    {
        int smallest = ConductorSearch.SmallestAllowed(rules, ConductorMaterial.Copper);
        return rules.Table(OvercurrentSmallConductorTable.Index).Read(
            ref d, LeastRating, smallest - 1, (int)ConductorMaterial.Copper - 1, StepSubject.Conductor(smallest, (int)ConductorMaterial.Copper));
    }

    private static Figure? CeilingOf(RuleSet rules, ref Deriving d, Load load, Figure current, OvercurrentDeviceKind kind)
    {
        if (load.MaximumDevice is { } marked)
        {
            return d.Given(Marked, Canonical.Amperes(marked));
        }

        return LoadKinds.Property(rules, load.Kind, LoadKindsTable.Column.NonmotorAppliance) == true
            ? ApplianceLimits.Nonmotor(rules, ref d, current, kind)
            : null;
    }
}
