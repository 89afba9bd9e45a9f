using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Overcurrent;

/// <summary>Asks for the overcurrent device of a load, and of the conductor that it protects when that is known.</summary>
public sealed record OvercurrentRequest
{
    /// <summary>The part of the load that runs for three hours or more: 0 A or more.</summary>
    public required ElectricCurrent? Continuous { get; init; }

    /// <summary>The rest of the load: 0 A or more.</summary>
    public required ElectricCurrent? Noncontinuous { get; init; }

    /// <summary>Between what the circuit is connected; decides the poles.</summary>
    public required CircuitConnection Connection { get; init; }

    /// <summary>A circuit breaker or a fuse.</summary>
    public OvercurrentDeviceKind Kind { get; init; } = OvercurrentDeviceKind.CircuitBreaker;

    /// <summary>Whether the device and its assembly are listed for continuous operation at 100 percent of their rating. Null counts as no.</summary>
    public bool? HundredPercentRated { get; init; }

    /// <summary>The conductor's ampacity where it lies; null to leave the conductor out. More than 0 A.</summary>
    public ElectricCurrent? ConductorAmpacity { get; init; }

    /// <summary>The conductor's size; asked for with an ampacity, because small conductors have a limit of their own.</summary>
    public ConductorSize? ConductorSize { get; init; }

    /// <summary>The conductor's metal; asked for with an ampacity.</summary>
    public ConductorMaterial? ConductorMaterial { get; init; }

    /// <summary>Whether the circuit supplies more than one receptacle for portable cord-and-plug loads; then no next size up. Asked for with an ampacity.</summary>
    public bool? SeveralReceptacles { get; init; }

    /// <summary>Whether the load is one whose own article sets the device, such as air conditioning with a marked maximum. Null counts as no.</summary>
    public bool? SpecificApplication { get; init; }

    /// <summary>Whether the load is a single appliance without a motor. Null counts as no.</summary>
    public bool? SingleNonmotorAppliance { get; init; }

    /// <summary>The largest device marked on the nameplate; null when none is marked. More than 0 A.</summary>
    public ElectricCurrent? MarkedMaximum { get; init; }

    /// <summary>Whether the caller does without the next size up.</summary>
    public bool NoNextSizeUp { get; init; }

    internal void Check(RequestCheck check)
    {
        ContinuousNeed.Check(check, Continuous, Noncontinuous);
        check.Defined<CircuitConnection>(Connection, nameof(Connection));
        check.Defined<OvercurrentDeviceKind>(Kind, nameof(Kind));
        check.MoreThanZero(ConductorAmpacity is { } a ? Canonical.Amperes(a) : null, nameof(ConductorAmpacity), QuantityUnit.Ampere);
        check.Defined(ConductorSize, nameof(ConductorSize));
        check.Defined(ConductorMaterial, nameof(ConductorMaterial));
        check.MoreThanZero(MarkedMaximum is { } m ? Canonical.Amperes(m) : null, nameof(MarkedMaximum), QuantityUnit.Ampere);
    }
}

/// <summary>An overcurrent device.</summary>
public sealed record OvercurrentDeviceChoice
{
    /// <summary>The rating. The poles do not add up: a two-pole 20 A device is 20 A.</summary>
    public required ElectricCurrent Rating { get; init; }

    /// <summary>The poles, all tripping together.</summary>
    public required int Poles { get; init; }

    /// <summary>A circuit breaker or a fuse.</summary>
    public required OvercurrentDeviceKind Kind { get; init; }
}

/// <summary>The overcurrent device of a load.</summary>
public sealed record OvercurrentSelection
{
    /// <summary>The smallest standard device that carries the load.</summary>
    public required OvercurrentDeviceChoice Device { get; init; }

    /// <summary>What the device must carry at least: 125 percent of the continuous part and the rest.</summary>
    public required ElectricCurrent Required { get; init; }

    /// <summary>The largest device that is allowed; null when nothing given limits it.</summary>
    public required ElectricCurrent? Largest { get; init; }

    /// <summary>All standard ratings that are allowed, from the smallest; only the smallest when nothing given limits them.</summary>
    public required IReadOnlyList<ElectricCurrent> Allowed { get; init; }
}
