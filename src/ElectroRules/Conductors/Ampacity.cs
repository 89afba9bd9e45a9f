using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;
using UnitsNet;

namespace ElectroRules.Conductors;

/// <summary>Asks for the ampacity of a conductor where it lies.</summary>
public sealed record AmpacityRequest
{
    /// <summary>The size.</summary>
    public required ConductorSize Size { get; init; }

    /// <summary>Where and how it lies.</summary>
    public required ConductorRun Run { get; init; }

    /// <summary>The rating of the circuit (of its overcurrent device); asked for when a termination is not marked. More than 0 A.</summary>
    public ElectricCurrent? CircuitRating { get; init; }

    internal void Check(RequestCheck check)
    {
        check.Defined<ConductorSize>(Size, nameof(Size));
        check.MoreThanZero(CircuitRating is { } a ? Canonical.Amperes(a) : null, nameof(CircuitRating), QuantityUnit.Ampere);
        check.NotNull(Run, nameof(Run));
        Run?.Check(check.In(nameof(Run)));
    }
}

/// <summary>What holds the ampacity down to its value.</summary>
public enum AmpacityLimit
{
    /// <summary>The temperature of the terminations.</summary>
    Terminations = 1,

    /// <summary>The kind of cable.</summary>
    Cable,

    /// <summary>Ambient temperature and other conductors, or the table value itself when there are none.</summary>
    Surroundings,
}

/// <summary>The ampacity of a stretch of the route.</summary>
public sealed record SegmentAmpacityResult
{
    /// <summary>The factor for the ambient temperature.</summary>
    public required Ratio AmbientFactor { get; init; }

    /// <summary>The factor for the number of current-carrying conductors.</summary>
    public required Ratio AdjustmentFactor { get; init; }

    /// <summary>The ampacity there, before the terminations.</summary>
    public required ElectricCurrent Ampacity { get; init; }
}

/// <summary>The ampacity of a conductor where it lies.</summary>
public sealed record ConductorAmpacity
{
    /// <summary>The ampacity that may be used, all sets in parallel together.</summary>
    public required ElectricCurrent Ampacity { get; init; }

    /// <summary>The ampacity after correction, adjustment and the limit of the cable, before the terminations.</summary>
    public required ElectricCurrent CorrectedAmpacity { get; init; }

    /// <summary>The ampacity that the terminations allow.</summary>
    public required ElectricCurrent TerminationAmpacity { get; init; }

    /// <summary>The temperature column of the terminations.</summary>
    public required Temperature TerminationColumn { get; init; }

    /// <summary>What holds the ampacity down.</summary>
    public required AmpacityLimit Limit { get; init; }

    /// <summary>The stretches, in the order of the route.</summary>
    public required IReadOnlyList<SegmentAmpacityResult> Segments { get; init; }
}

/// <summary>The ampacity of a conductor where it lies: operation <c>conductor.ampacity</c>.</summary>
public static class Ampacity
{
    private static readonly StepDefinition CircuitRating = new(Rules.TerminalTemperature, "circuit-rating", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition Terminal = new(Rules.TerminalTemperature, "termination-ampacity", StepOperation.Table, QuantityUnit.Ampere, ConductorAmpacityTable.Index);
    private static readonly StepDefinition AllSets = new(Rules.TerminalTemperature, "termination-ampacity-of-all-sets", StepOperation.Product, QuantityUnit.Ampere);
    private static readonly StepDefinition Sets = new(Rules.TerminalTemperature, "sets", StepOperation.Given, QuantityUnit.Count);
    private static readonly StepDefinition Usable = new(Rules.TerminalTemperature, "usable-ampacity", StepOperation.Minimum, QuantityUnit.Ampere);

    /// <summary>The ampacity of a conductor where it lies.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A number of the request is out of its range, or a choice is not a defined one.</exception>
    public static Determination<ConductorAmpacity> Determine(RuleSet rules, AmpacityRequest request)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(request);
        request.Check(RequestCheck.Throwing);
        var d = new Deriving(rules.Resolver);
        var segments = new SegmentFactors[request.Run.Route.Count];
        bool resolved = Resolve(rules, ref d, request.Run, segments, "/run", "/run/wires");
        TerminalTemperature.Ask(ref d, request.Run, request.CircuitRating is not null, "/circuitRating");
        if (!resolved || d.IsStopped)
        {
            return d.Finish<ConductorAmpacity>(value: null);
        }

        Figure? rating = request.CircuitRating is { } amperes ? d.Given(CircuitRating, Canonical.Amperes(amperes)) : null;
        Figure terminals = TerminalTemperature.Derive(rules, ref d, request.Run, rating);
        var run = new ResolvedRun(rules, request.Run, segments);
        ParallelConductors.Check(rules, ref d, request.Run, request.Size);
        HasAmpacity(ref d, in run, request.Size, "/size");
        if (d.IsStopped)
        {
            return d.Finish<ConductorAmpacity>(value: null);
        }

        return d.Finish(Describe(ref d, in run, request.Size, terminals));
    }

    /// <summary>The ampacity of a size as the table lists it at a temperature, at 30 °C and up to three current-carrying conductors.</summary>
    /// <returns>Null when the table has none, or the edition is not covered.</returns>
    /// <exception cref="ArgumentException">A choice is not a defined one.</exception>
    public static ElectricCurrent? Listed(RuleSet rules, ConductorSize size, ConductorMaterial material, TerminationRating column)
    {
        ArgumentNullException.ThrowIfNull(rules);
        if (!Choices<ConductorSize>.IsDefined(size) || !Choices<ConductorMaterial>.IsDefined(material) || !Choices<TerminationRating>.IsDefined(column))
        {
            Refuse(size, material, column);
        }

        ReferenceTable table = rules.Table(ConductorAmpacityTable.Index);
        if (!table.IsPresent)
        {
            return null;
        }

        double amperes = table.At((int)size - 1, TemperatureColumn.InTable(material, (int)column - 1));
        return double.IsNaN(amperes) ? null : Canonical.Current(amperes);
    }

    private static void Refuse(ConductorSize size, ConductorMaterial material, TerminationRating column)
    {
        RequestCheck.Throwing.Defined<ConductorSize>(size, nameof(size));
        RequestCheck.Throwing.Defined<ConductorMaterial>(material, nameof(material));
        RequestCheck.Throwing.Defined<TerminationRating>(column, nameof(column));
    }

    /// <summary>Resolves all stretches.</summary>
    /// <returns>Whether all facts were there and everything is permitted.</returns>
    internal static bool Resolve(RuleSet rules, ref Deriving d, ConductorRun run, SegmentFactors[] segments, string pointer, string wiresPointer)
    {
        if (!SegmentAmpacity.Covered(rules, ref d) || !TerminalTemperature.Covered(rules, ref d))
        {
            return false;
        }

        Figure own = CurrentCarrying.Count(ref d, run.Wires, wiresPointer);
        for (int i = 0; i < segments.Length; i++)
        {
            segments[i] = SegmentAmpacity.Resolve(rules, ref d, run, i, own, pointer);
        }

        return !d.IsStopped;
    }

    /// <summary>The ampacity that the terminations allow, all sets together.</summary>
    internal static Figure TerminalAmpacity(ref Deriving d, in ResolvedRun run, ConductorSize size, Figure terminals)
    {
        int column = TemperatureColumn.InTable(run.Material, TemperatureColumn.Of(terminals.Value));
        ushort subject = StepSubject.Conductor((int)size, (int)run.Material);
        Figure terminal = run.RuleSet.Table(ConductorAmpacityTable.Index).Read(ref d, Terminal, (int)size - 1, column, terminals, subject);
        return run.ParallelSets > 1 ? d.Product(AllSets, terminal, d.Given(Sets, run.ParallelSets)) : terminal;
    }

    internal static Figure UsableAmpacity(ref Deriving d, Figure corrected, Figure terminal) => d.Minimum(Usable, corrected, terminal);

    private static void HasAmpacity(ref Deriving d, in ResolvedRun run, ConductorSize size, string at)
    {
        bool missing = double.IsNaN(run.Listed((int)size, 0));
        foreach (ref readonly SegmentFactors segment in run.Segments)
        {
            missing |= double.IsNaN(run.Listed((int)size, segment.Column));
        }

        if (missing)
        {
            d.NotCovered("no-ampacity-in-table", Rules.BaseAmpacity, at, string.Empty);
        }
    }

    private static ConductorAmpacity Describe(ref Deriving d, in ResolvedRun run, ConductorSize size, Figure terminals)
    {
        Span<double> perSegment = stackalloc double[run.Segments.Length];
        Figure corrected = run.Derive(ref d, (int)size, perSegment);
        Figure terminal = TerminalAmpacity(ref d, in run, size, terminals);
        Figure usable = UsableAmpacity(ref d, corrected, terminal);
        var segments = new SegmentAmpacityResult[perSegment.Length];
        for (int i = 0; i < segments.Length; i++)
        {
            segments[i] = new SegmentAmpacityResult
            {
                AmbientFactor = Canonical.Ratio(run.Segments[i].Ambient.Value),
                AdjustmentFactor = Canonical.Ratio(run.Segments[i].Adjustment.Value),
                Ampacity = Canonical.Current(perSegment[i]),
            };
        }

        return new ConductorAmpacity
        {
            Ampacity = Canonical.Current(usable.Value),
            CorrectedAmpacity = Canonical.Current(corrected.Value),
            TerminationAmpacity = Canonical.Current(terminal.Value),
            TerminationColumn = Canonical.Temperature(terminals.Value),
            Limit = LimitOf(in run, (int)size, corrected.Value, terminal.Value),
            Segments = segments,
        };
    }

    private static AmpacityLimit LimitOf(in ResolvedRun run, int size, double corrected, double terminal)
    {
        if (Internal.Limit.Below(terminal, corrected))
        {
            return AmpacityLimit.Terminations;
        }

        foreach (ref readonly SegmentFactors segment in run.Segments)
        {
            bool isHeld = segment.CapColumn >= 0 && size <= segment.CapLargestSize
                && Internal.Limit.Same(run.Listed(size, segment.CapColumn), corrected);
            if (isHeld)
            {
                return AmpacityLimit.Cable;
            }
        }

        return AmpacityLimit.Surroundings;
    }
}
