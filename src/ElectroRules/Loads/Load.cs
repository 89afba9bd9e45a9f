using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Loads;

/// <summary>A load as its nameplate gives it. A fact that is not known is null.</summary>
public sealed record Load
{
    /// <summary>The kind.</summary>
    public required LoadKind Kind { get; init; }

    /// <summary>Between what it is connected.</summary>
    public required CircuitConnection Connection { get; init; }

    /// <summary>The marked current: more than 0 A. One of current, power and apparent power is given.</summary>
    public ElectricCurrent? Current { get; init; }

    /// <summary>The marked power: more than 0 W.</summary>
    public Power? Power { get; init; }

    /// <summary>The marked apparent power: more than 0 VA.</summary>
    public ElectricApparentPower? ApparentPower { get; init; }

    /// <summary>The voltage that the marking is for: more than 0 V. Asked for with a power; with a current, null takes the voltage of the supply.</summary>
    public ElectricPotential? RatedVoltage { get; init; }

    /// <summary>The power factor, more than 0 and at most 1. Loads of resistance elements have 1; others are asked.</summary>
    public Ratio? PowerFactor { get; init; }

    /// <summary>Whether it runs for three hours or more; null when not known.</summary>
    public LoadDuty? Duty { get; init; }

    /// <summary>Whether it needs a neutral beside its ungrounded conductors; null takes what is usual for its kind, or asks.</summary>
    public bool? NeedsNeutral { get; init; }

    /// <summary>Whether most of the load is nonlinear; asked for of three phases of a wye with a neutral. Null when not known.</summary>
    public bool? MostlyNonlinear { get; init; }

    /// <summary>The minimum circuit ampacity marked on the nameplate: more than 0 A. Asked for of air conditioning.</summary>
    public ElectricCurrent? MinimumCircuitAmpacity { get; init; }

    /// <summary>The largest overcurrent device marked on the nameplate: more than 0 A. Asked for of air conditioning.</summary>
    public ElectricCurrent? MaximumDevice { get; init; }

    internal void Check(RequestCheck check)
    {
        check.Defined<LoadKind>(Kind, nameof(Kind));
        check.Defined<CircuitConnection>(Connection, nameof(Connection));
        check.Defined(Duty, nameof(Duty));
        check.MoreThanZero(Current is { } i ? Canonical.Amperes(i) : null, nameof(Current), QuantityUnit.Ampere);
        check.MoreThanZero(Power is { } w ? Canonical.Watts(w) : null, nameof(Power), QuantityUnit.Watt);
        check.MoreThanZero(ApparentPower is { } va ? Canonical.VoltAmperes(va) : null, nameof(ApparentPower), QuantityUnit.VoltAmpere);
        check.MoreThanZero(RatedVoltage is { } v ? Canonical.Volts(v) : null, nameof(RatedVoltage), QuantityUnit.Volt);
        check.Share(PowerFactor is { } p ? Canonical.Fraction(p) : null, nameof(PowerFactor));
        check.MoreThanZero(MinimumCircuitAmpacity is { } m ? Canonical.Amperes(m) : null, nameof(MinimumCircuitAmpacity), QuantityUnit.Ampere);
        check.MoreThanZero(MaximumDevice is { } x ? Canonical.Amperes(x) : null, nameof(MaximumDevice), QuantityUnit.Ampere);
        int given = (Current is null ? 0 : 1) + (Power is null ? 0 : 1) + (ApparentPower is null ? 0 : 1);
        check.Require(given <= 1, nameof(Current), "Power and ApparentPower: only one of them may be given.");
    }
}
