using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;
using UnitsNet;

namespace ElectroRules.Overcurrent;

/// <summary>The overcurrent device of a load: operation <c>overcurrent.select</c>.</summary>
public static class OvercurrentDevice
{
    private static readonly StepDefinition ConductorAmpacity = new(Rules.NextSizeUp, "conductor-ampacity", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition Marked = new(Rules.NameplateMaximum, "marked-maximum", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition Smallest = new(Rules.StandardRating, "smallest-device", StepOperation.NextUp, QuantityUnit.Ampere, OvercurrentStandardRatingsTable.Index);
    private static readonly StepDefinition Largest = new(Rules.NameplateMaximum, "largest-device", StepOperation.Minimum, QuantityUnit.Ampere);
    private static readonly StepDefinition TooLarge = new(Rules.NextSizeUp, "device-above-largest", StepOperation.Rejected, QuantityUnit.Ampere);
    private static readonly StepDefinition LoadAboveAmpacity = new(Rules.NextSizeUp, "ampacity-below-load", StepOperation.Rejected, QuantityUnit.Ampere);

    /// <summary>The overcurrent device of a load, and of the conductor that it protects when that is known.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A number of the request is out of its range, or a choice is not a defined one.</exception>
    public static Determination<OvercurrentSelection> Select(RuleSet rules, OvercurrentRequest request)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(request);
        request.Check(RequestCheck.Throwing);
        var d = new Deriving(rules.Resolver);
        if (!Covered(rules, ref d))
        {
            return d.Finish<OvercurrentSelection>(value: null);
        }

        ContinuousNeed need = ContinuousNeed.Derive(rules, ref d, request.Continuous, request.Noncontinuous, request.HundredPercentRated, string.Empty);
        AskForConductor(ref d, request);
        if (d.IsStopped)
        {
            return d.Finish<OvercurrentSelection>(value: null);
        }

        Figure device = SmallestFor(rules, ref d, need.AtTerminations, request.Kind);
        Figure? largest = d.IsStopped ? null : LargestFor(rules, ref d, request, need);
        if (!d.IsStopped && largest is { } most && Limit.Above(device.Value, most.Value))
        {
            d.Rejected(TooLarge, device.Value, most, StepSubject.None);
            SegmentAmpacity.Refuse(ref d, Rules.NextSizeUp, "no-device-fits", request.ConductorAmpacity is null ? "/markedMaximum" : "/conductorAmpacity");
        }

        return d.IsStopped ? d.Finish<OvercurrentSelection>(value: null) : d.Finish(Describe(rules, request, need, device, largest));
    }

    internal static bool Covered(RuleSet rules, ref Deriving d) =>
        rules.Has(ref d, OvercurrentStandardRatingsTable.Index, Rules.StandardRating)
        && rules.Has(ref d, OvercurrentCurrentsTable.Index, Rules.NextSizeUp)
        && rules.Has(ref d, OvercurrentFactorsTable.Index, Rules.ContinuousLoad)
        && rules.Has(ref d, OvercurrentSmallConductorTable.Index, Rules.SmallConductor);

    /// <summary>The smallest standard device for a need.</summary>
    internal static Figure SmallestFor(RuleSet rules, ref Deriving d, Figure required, OvercurrentDeviceKind kind)
    {
        int row = StandardRatings.RowNotBelow(rules, required.Value, kind);
        if (row == StandardRatings.NoRow)
        {
            d.NotCovered("no-standard-rating", Rules.StandardRating, string.Empty, string.Empty);
            return default;
        }

        return rules.Table(OvercurrentStandardRatingsTable.Index).Read(ref d, Smallest, row, StandardRatings.Column(kind), required);
    }

    private static void AskForConductor(ref Deriving d, OvercurrentRequest request)
    {
        if (request.ConductorAmpacity is null)
        {
            return;
        }

        if (request.ConductorSize is null)
        {
            d.Needs(Rules.SmallConductor, "/conductorSize");
        }

        if (request.ConductorMaterial is null)
        {
            d.Needs(Rules.SmallConductor, "/conductorMaterial");
        }

        if (request.SeveralReceptacles is null)
        {
            d.Needs(Rules.NextSizeUp, "/severalReceptacles");
        }
    }

    private static Figure? LargestFor(RuleSet rules, ref Deriving d, OvercurrentRequest request, in ContinuousNeed need)
    {
        Figure? largest = null;
        double marked = request.MarkedMaximum is { } amperes ? Canonical.Amperes(amperes) : double.NaN;
        if (request is { ConductorAmpacity: { } ampacity, ConductorSize: { } size, ConductorMaterial: { } material })
        {
            var protection = new ProtectionRules(
                request.Kind, request.SeveralReceptacles == true, request.NoNextSizeUp, request.SpecificApplication == true, marked);
            Figure available = d.Given(ConductorAmpacity, Canonical.Amperes(ampacity));
            largest = DeviceForConductor.Derive(rules, ref d, available, (int)size, material, in protection);
            if (Limit.Below(available.Value, need.Load.Value))
            {
                d.Rejected(LoadAboveAmpacity, available.Value, need.Load, StepSubject.None);
                SegmentAmpacity.Refuse(ref d, Rules.NextSizeUp, "conductor-below-load", "/conductorAmpacity");
            }
        }

        if (!double.IsNaN(marked) && request.SpecificApplication != true)
        {
            largest = Least(ref d, largest, d.Given(Marked, marked));
        }
        else if (!double.IsNaN(marked) && largest is null)
        {
            largest = d.Given(Marked, marked);
        }
        else if (double.IsNaN(marked) && request.SingleNonmotorAppliance == true)
        {
            largest = Least(ref d, largest, ApplianceLimits.Nonmotor(rules, ref d, need.Load, request.Kind));
        }

        return largest;
    }

    private static Figure Least(ref Deriving d, Figure? a, Figure b) => a is { } first ? d.Minimum(Largest, first, b) : b;

    private static OvercurrentSelection Describe(
        RuleSet rules, OvercurrentRequest request, in ContinuousNeed need, Figure device, Figure? largest)
    {
        var allowed = new List<ElectricCurrent> { Canonical.Current(device.Value) };
        if (largest is { } most)
        {
            int row = StandardRatings.RowNotBelow(rules, device.Value, request.Kind);
            for (int next = row + 1; next < rules.Table(OvercurrentStandardRatingsTable.Index).RowCount; next++)
            {
                double rating = StandardRatings.At(rules, next, request.Kind);
                if (Limit.AtMost(rating, most.Value))
                {
                    allowed.Add(Canonical.Current(rating));
                }
            }
        }

        return new OvercurrentSelection
        {
            Device = new OvercurrentDeviceChoice
            {
                Rating = Canonical.Current(device.Value),
                Poles = CurrentCarrying.Ungrounded(request.Connection),
                Kind = request.Kind,
            },
            Required = Canonical.Current(need.AtTerminations.Value),
            Largest = largest is { } l ? Canonical.Current(l.Value) : null,
            Allowed = allowed,
        };
    }
}
