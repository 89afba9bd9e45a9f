using ElectroRules.Internal;
using ElectroRules.Results;

namespace ElectroRules.Conductors;

/// <summary>Conductors where they lie: metal, insulation, wiring method, route and terminations. A fact that is not known is null.</summary>
public sealed record ConductorRun
{
    /// <summary>The metal of the conductors.</summary>
    public required ConductorMaterial Material { get; init; }

    /// <summary>The wiring method.</summary>
    public required WiringMethod Method { get; init; }

    /// <summary>The insulation. Asked for in a raceway; in a cable, null takes what the kind of cable is known to have.</summary>
    public InsulationType? Insulation { get; init; }

    /// <summary>The wires of the circuit.</summary>
    public required CircuitWires Wires { get; init; }

    /// <summary>The stretches of the route, from the supply to the load: at least one and at most 64.</summary>
    public required IReadOnlyList<RouteSegment> Route { get; init; }

    /// <summary>The marking of the termination at the supply end; null when not known.</summary>
    public TerminationRating? SupplyTermination { get; init; }

    /// <summary>The marking of the termination at the load end; null when not known.</summary>
    public TerminationRating? LoadTermination { get; init; }

    /// <summary>The number of conductors in parallel in each leg: 1 unless run in parallel.</summary>
    public int ParallelSets { get; init; } = 1;

    internal void Check(RequestCheck check)
    {
        check.Defined<ConductorMaterial>(Material, nameof(Material));
        check.Defined<WiringMethod>(Method, nameof(Method));
        check.Defined(Insulation, nameof(Insulation));
        check.Defined(SupplyTermination, nameof(SupplyTermination));
        check.Defined(LoadTermination, nameof(LoadTermination));
        check.Within(ParallelSets, 1, 12, nameof(ParallelSets), QuantityUnit.Count);
        check.NotNull(Wires, nameof(Wires));
        if (Wires is { } wires)
        {
            RequestCheck inner = check.In(nameof(Wires));
            inner.Defined<SupplySystem>(wires.System, nameof(wires.System));
            inner.Defined<CircuitConnection>(wires.Connection, nameof(wires.Connection));
            inner.Require(
                wires.System != SupplySystem.SplitPhase120V240V || wires.Connection != CircuitConnection.ThreePhase,
                nameof(wires.Connection),
                "cannot be ThreePhase on a single-phase system.");
        }

        check.NotNull(Route, nameof(Route));
        RouteChecks.Check(Route, check);
    }
}

/// <summary>Checks the numbers of a route.</summary>
internal static class RouteChecks
{
    internal const int MostSegments = 64;
    internal const double LeastCelsius = -60;
    internal const double MostCelsius = 200;

    internal static void Check(IReadOnlyList<RouteSegment>? route, RequestCheck check)
    {
        if (route is null)
        {
            return;
        }

        check.Within(route.Count, 1, MostSegments, "Route.Count", QuantityUnit.Count);
        for (int i = 0; i < route.Count; i++)
        {
            if (route[i] is not { } segment)
            {
                check.In(nameof(ConductorRun.Route), i).NotNull(value: null, "Item");
                continue;
            }

            Check(segment, check.In(nameof(ConductorRun.Route), i));
        }
    }

    private static void Check(RouteSegment segment, RequestCheck check)
    {
        check.MoreThanZero(segment.Length is { } l ? Canonical.Feet(l) : null, nameof(segment.Length), QuantityUnit.Foot);
        check.Within(segment.Ambient is { } t ? Canonical.Celsius(t) : null, LeastCelsius, MostCelsius, nameof(segment.Ambient), QuantityUnit.Celsius);
        check.Defined(segment.Location, nameof(segment.Location));
        check.ZeroOrMore(segment.OtherCurrentCarryingConductors, nameof(segment.OtherCurrentCarryingConductors), QuantityUnit.Count);
        check.Defined(segment.Grouping, nameof(segment.Grouping));
        check.ZeroOrMore(segment.OtherCables, nameof(segment.OtherCables), QuantityUnit.Count);
        check.ZeroOrMore(segment.HeightAboveRoof is { } h ? Canonical.Inches(h) : null, nameof(segment.HeightAboveRoof), QuantityUnit.Inch);
    }
}
