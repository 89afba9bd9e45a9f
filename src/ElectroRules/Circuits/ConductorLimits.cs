using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;
using UnitsNet;

namespace ElectroRules.Circuits;

/// <summary>Asks what a conductor that is there allows.</summary>
public sealed record ConductorLimitsRequest
{
    /// <summary>The size.</summary>
    public required ConductorSize Size { get; init; }

    /// <summary>Where and how it lies.</summary>
    public required ConductorRun Run { get; init; }

    /// <summary>The rating of the device that is there; asked for when a termination is not marked. More than 0 A.</summary>
    public ElectricCurrent? CircuitRating { get; init; }

    /// <summary>Whether the circuit supplies more than one receptacle for cord-and-plug loads; then no next size up.</summary>
    public required bool? SeveralReceptacles { get; init; }

    /// <summary>Whether the device and its assembly are listed for continuous operation at 100 percent of their rating. Null counts as no.</summary>
    public bool? HundredPercentRated { get; init; }

    /// <summary>The kind of the device.</summary>
    public OvercurrentDeviceKind DeviceKind { get; init; } = OvercurrentDeviceKind.CircuitBreaker;

    /// <summary>The voltage at the supply end for the longest run: more than 0 V; null takes the nominal voltage.</summary>
    public ElectricPotential? SourceVoltage { get; init; }

    /// <summary>The power factor for the longest run, more than 0 and at most 1.</summary>
    public required Ratio? PowerFactor { get; init; }

    /// <summary>The most drop wanted, more than 0 and at most 1; null takes the recommendation for a branch circuit.</summary>
    public Ratio? LimitShare { get; init; }

    internal void Check(RequestCheck check)
    {
        check.Defined<ConductorSize>(Size, nameof(Size));
        check.MoreThanZero(CircuitRating is { } a ? Canonical.Amperes(a) : null, nameof(CircuitRating), QuantityUnit.Ampere);
        check.Defined<OvercurrentDeviceKind>(DeviceKind, nameof(DeviceKind));
        check.MoreThanZero(SourceVoltage is { } v ? Canonical.Volts(v) : null, nameof(SourceVoltage), QuantityUnit.Volt);
        check.Share(PowerFactor is { } p ? Canonical.Fraction(p) : null, nameof(PowerFactor));
        check.Share(LimitShare is { } s ? Canonical.Fraction(s) : null, nameof(LimitShare));
        check.NotNull(Run, nameof(Run));
        Run?.Check(check.In(nameof(Run)));
    }
}

/// <summary>What a conductor that is there allows.</summary>
public sealed record ConductorLimitsResult
{
    /// <summary>Its ampacity where it lies.</summary>
    public required ElectricCurrent Ampacity { get; init; }

    /// <summary>The largest device that protects it.</summary>
    public required ElectricCurrent LargestDevice { get; init; }

    /// <summary>The most load that is not continuous: within the ampacity and the largest device.</summary>
    public required ElectricCurrent MostNoncontinuousLoad { get; init; }

    /// <summary>The most load that runs for three hours or more: also within the ampacity before correction and the device, divided by the continuous factor.</summary>
    public required ElectricCurrent MostContinuousLoad { get; init; }

    /// <summary>The longest run, one way, that keeps the most noncontinuous load within the drop limit.</summary>
    public required Length LongestRun { get; init; }
}

/// <summary>What a conductor that is there allows: operation <c>conductor.limits-of-existing</c>.</summary>
public static class ConductorLimits
{
    private static readonly StepDefinition CircuitRating = new(Rules.TerminalTemperature, "circuit-rating", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition MostLoad = new(Rules.MinimumForLoad, "most-noncontinuous-load", StepOperation.Minimum, QuantityUnit.Ampere);
    private static readonly StepDefinition Factor = new(Rules.ContinuousLoad, "factor", StepOperation.Table, QuantityUnit.One, OvercurrentFactorsTable.Index);
    private static readonly StepDefinition AtTerminations = new(Rules.MinimumForLoad, "ampacity-at-terminations", StepOperation.Rule, QuantityUnit.Ampere);
    private static readonly StepDefinition Carried = new(Rules.ContinuousLoad, "most-at-device-and-terminations", StepOperation.Minimum, QuantityUnit.Ampere);
    private static readonly StepDefinition Divided = new(Rules.ContinuousLoad, "most-divided-by-factor", StepOperation.Quotient, QuantityUnit.Ampere);
    private static readonly StepDefinition MostContinuous = new(Rules.ContinuousLoad, "most-continuous-load", StepOperation.Minimum, QuantityUnit.Ampere);
    private static readonly StepDefinition Volts = new(Rules.NominalVoltage, "supply-voltage", StepOperation.Table, QuantityUnit.Volt, SupplyVoltagesTable.Index);
    private static readonly StepDefinition FoundVolts = new(Rules.VoltageDropFormula, "panel-voltage", StepOperation.Given, QuantityUnit.Volt);
    private static readonly StepDefinition OneFoot = new(Rules.VoltageDropFormula, "one-foot", StepOperation.Rule, QuantityUnit.Foot);
    private static readonly StepDefinition Longest = new(Rules.VoltageDropFormula, "longest-run-of-existing", StepOperation.Quotient, QuantityUnit.Foot);

    /// <summary>What a conductor that is there allows: most load, largest device, longest run.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A number of the request is out of its range, or a choice is not a defined one.</exception>
    public static Determination<ConductorLimitsResult> Determine(RuleSet rules, ConductorLimitsRequest request)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(request);
        request.Check(RequestCheck.Throwing);
        var d = new Deriving(rules.Resolver);
        bool covered = OvercurrentDevice.Covered(rules, ref d) && ConductorImpedance.Covered(rules, ref d);
        if (!covered)
        {
            return d.Finish<ConductorLimitsResult>(value: null);
        }

        Ask(ref d, request);
        var segments = new SegmentFactors[request.Run.Route.Count];
        bool resolved = Ampacity.Resolve(rules, ref d, request.Run, segments, "/run", "/run/wires");
        TerminalTemperature.Ask(ref d, request.Run, request.CircuitRating is not null, "/circuitRating");
        if (!resolved || d.IsStopped)
        {
            return d.Finish<ConductorLimitsResult>(value: null);
        }

        Figure? rating = request.CircuitRating is { } amperes ? d.Given(CircuitRating, Canonical.Amperes(amperes)) : null;
        TerminalNeeds terminals = TerminalNeeds.Derive(rules, ref d, request.Run, rating, TerminalTest.LowerEnd);
        var run = new ResolvedRun(rules, request.Run, segments);
        ParallelConductors.Check(rules, ref d, request.Run, request.Size);
        if (double.IsNaN(ConductorNeeds.Usable(in run, (int)request.Size, in terminals)))
        {
            d.NotCovered("no-ampacity-in-table", Rules.BaseAmpacity, "/size", string.Empty);
        }

        return d.IsStopped
            ? d.Finish<ConductorLimitsResult>(value: null)
            : Finish(rules, ref d, in run, request, terminals);
    }

    private static void Ask(ref Deriving d, ConductorLimitsRequest request)
    {
        if (request.SeveralReceptacles is null)
        {
            d.Needs(Rules.NextSizeUp, "/severalReceptacles");
        }

        if (request.PowerFactor is null)
        {
            d.Needs(Rules.VoltageDropFormula, "/powerFactor");
        }
    }

    private static Determination<ConductorLimitsResult> Finish(
        RuleSet rules, ref Deriving d, in ResolvedRun run, ConductorLimitsRequest request, in TerminalNeeds terminals)
    {
        int size = (int)request.Size;
        Span<double> perSegment = stackalloc double[run.Segments.Length];
        Figure corrected = run.Derive(ref d, size, perSegment);
        Figure usable = Ampacity.UsableAmpacity(ref d, corrected, Ampacity.TerminalAmpacity(ref d, in run, request.Size, terminals.Usable));
        var protection = new ProtectionRules(request.DeviceKind, request.SeveralReceptacles == true, NoNextSizeUp: false, SmallConductorExempt: false, double.NaN);
        Figure device = DeviceForConductor.Derive(rules, ref d, usable, size, request.Run.Material, in protection);
        if (d.IsStopped)
        {
            return d.Finish<ConductorLimitsResult>(value: null);
        }

        Figure most = d.Minimum(MostLoad, usable, device);
        int row = request.HundredPercentRated == true ? OvercurrentFactorsTable.Row.HundredPercentRated : OvercurrentFactorsTable.Row.ContinuousLoad;
        Figure factor = rules.Table(OvercurrentFactorsTable.Index).Read(ref d, Factor, row, OvercurrentFactorsTable.Column.Value);
        Figure listed = d.Rule(AtTerminations, run.ListedWithinCable(size, TemperatureColumn.Of(terminals.Required.Value)), terminals.Required);
        Figure divided = d.Quotient(Divided, d.Minimum(Carried, device, listed), factor);
        Figure continuous = d.Minimum(MostContinuous, divided, usable);
        Figure longest = LongestRun(rules, ref d, request, most);
        if (d.IsStopped)
        {
            return d.Finish<ConductorLimitsResult>(value: null);
        }

        return d.Finish(new ConductorLimitsResult
        {
            Ampacity = Canonical.Current(usable.Value),
            LargestDevice = Canonical.Current(device.Value),
            MostNoncontinuousLoad = Canonical.Current(most.Value),
            MostContinuousLoad = Canonical.Current(continuous.Value),
            LongestRun = Canonical.Length(longest.Value),
        });
    }

    private static Figure LongestRun(RuleSet rules, ref Deriving d, ConductorLimitsRequest request, Figure load)
    {
        Figure source = request.SourceVoltage is { } found
            ? d.Given(FoundVolts, Canonical.Volts(found))
            : rules.Table(SupplyVoltagesTable.Index)
                .Read(ref d, Volts, (int)request.Run.Wires.System - 1, (int)request.Run.Wires.Connection - 1);
        Figure impedance = ConductorImpedance.Derive(
            rules, ref d, (int)request.Size, request.Run.Material, request.Run.Method, ImpedanceMethod.AcImpedance, Canonical.Fraction(request.PowerFactor!.Value), isResistive: false);
        DropFigures ofFoot = VoltageDrop.Derive(
            ref d, request.Run.Wires.Connection, load, source, impedance, d.Rule(OneFoot, 1), request.Run.ParallelSets);
        Figure limit = VoltageDrop.LimitOf(rules, ref d, request.LimitShare is { } share ? Canonical.Fraction(share) : null);
        if (double.IsNaN(impedance.Value))
        {
            d.NotCovered("no-impedance-in-table", Rules.ConductorImpedance, "/size", string.Empty);
        }

        return d.Quotient(Longest, limit, ofFoot.Share);
    }
}
