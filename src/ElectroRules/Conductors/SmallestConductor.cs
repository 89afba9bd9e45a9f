using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables.Generated;
using UnitsNet;

namespace ElectroRules.Conductors;

/// <summary>How the 125 percent of the continuous load is tested against the terminations.</summary>
public enum TerminalTest
{
    /// <summary>The whole need against the lower marking of both ends: the plain reading, and the safe side.</summary>
    LowerEnd = 1,

    /// <summary>The need with the continuous factor against the supply end, the bare load against the load end: the published three-sizes method.</summary>
    EachEnd,
}

/// <summary>Asks for the smallest conductor for a load.</summary>
public sealed record SmallestConductorRequest
{
    /// <summary>Where and how it is to lie.</summary>
    public required ConductorRun Run { get; init; }

    /// <summary>The part of the load that runs for three hours or more: 0 A or more.</summary>
    public required ElectricCurrent? Continuous { get; init; }

    /// <summary>The rest of the load: 0 A or more.</summary>
    public required ElectricCurrent? Noncontinuous { get; init; }

    /// <summary>Whether the overcurrent device and its assembly are listed for continuous operation at 100 percent of their rating. Null counts as no.</summary>
    public bool? HundredPercentRated { get; init; }

    /// <summary>The rating of the circuit; asked for when a termination is not marked. More than 0 A.</summary>
    public ElectricCurrent? CircuitRating { get; init; }

    /// <summary>How the terminations are tested.</summary>
    public TerminalTest TerminalTest { get; init; } = TerminalTest.LowerEnd;

    internal void Check(RequestCheck check)
    {
        ContinuousNeed.Check(check, Continuous, Noncontinuous);
        check.MoreThanZero(CircuitRating is { } a ? Canonical.Amperes(a) : null, nameof(CircuitRating), QuantityUnit.Ampere);
        check.Defined<TerminalTest>(TerminalTest, nameof(TerminalTest));
        check.NotNull(Run, nameof(Run));
        Run?.Check(check.In(nameof(Run)));
    }
}

/// <summary>The smallest conductor for a load.</summary>
public sealed record SmallestConductorResult
{
    /// <summary>The size.</summary>
    public required ConductorSize Size { get; init; }

    /// <summary>Its ampacity where it lies.</summary>
    public required ElectricCurrent Ampacity { get; init; }

    /// <summary>The need that its ampacity before correction meets: 125 percent of the continuous part and the rest.</summary>
    public required ElectricCurrent RequiredAtTerminations { get; init; }

    /// <summary>The load that its ampacity after correction meets.</summary>
    public required ElectricCurrent RequiredAfterCorrection { get; init; }
}

/// <summary>The smallest conductor for a load: operation <c>conductor.smallest</c>.</summary>
public static class SmallestConductor
{
    private static readonly StepDefinition CircuitRating = new(Rules.TerminalTemperature, "circuit-rating", StepOperation.Given, QuantityUnit.Ampere);

    /// <summary>The smallest conductor for a load.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A number of the request is out of its range, or a choice is not a defined one.</exception>
    public static Determination<SmallestConductorResult> Determine(RuleSet rules, SmallestConductorRequest request)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(request);
        request.Check(RequestCheck.Throwing);
        var d = new Deriving(rules.Resolver);
        ContinuousNeed need = ContinuousNeed.Derive(rules, ref d, request.Continuous, request.Noncontinuous, request.HundredPercentRated, string.Empty);
        var segments = new SegmentFactors[request.Run.Route.Count];
        bool resolved = Ampacity.Resolve(rules, ref d, request.Run, segments, "/run", "/run/wires");
        TerminalTemperature.Ask(ref d, request.Run, request.CircuitRating is not null, "/circuitRating");
        Figure? rating = request.CircuitRating is { } amperes ? d.Given(CircuitRating, Canonical.Amperes(amperes)) : null;
        if (!resolved || d.IsStopped)
        {
            return d.Finish<SmallestConductorResult>(value: null);
        }

        TerminalNeeds terminals = TerminalNeeds.Derive(rules, ref d, request.Run, rating, request.TerminalTest);

        var run = new ResolvedRun(rules, request.Run, segments);
        int size = ConductorNeeds.Smallest(in run, in need, in terminals, ConductorNeeds.First(rules, request.Run));
        if (size == 0)
        {
            d.NotCovered("no-size-large-enough", Rules.MinimumForLoad, "/run", string.Empty);
            return d.Finish<SmallestConductorResult>(value: null);
        }

        Figure usable = ConductorNeeds.Explain(ref d, in run, size, in need, in terminals, ConductorNeeds.First(rules, request.Run));
        return d.Finish(new SmallestConductorResult
        {
            Size = (ConductorSize)size,
            Ampacity = Canonical.Current(usable.Value),
            RequiredAtTerminations = Canonical.Current(need.AtTerminations.Value),
            RequiredAfterCorrection = Canonical.Current(need.Load.Value),
        });
    }
}
