using ElectroRules.Internal;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Conductors;

/// <summary>Asks for the voltage drop of a run, the longest run and the smallest conductor for a limit.</summary>
public sealed record VoltageDropRequest
{
    /// <summary>The size of the conductors.</summary>
    public required ConductorSize Size { get; init; }

    /// <summary>The metal.</summary>
    public required ConductorMaterial Material { get; init; }

    /// <summary>The wiring method; decides the reactance.</summary>
    public required WiringMethod Method { get; init; }

    /// <summary>Between what the load is connected; three-phase loads are taken as balanced.</summary>
    public required CircuitConnection Connection { get; init; }

    /// <summary>The current of the load: more than 0 A.</summary>
    public required ElectricCurrent? Current { get; init; }

    /// <summary>The voltage at the supply end, between the conductors that the load is connected to: more than 0 V.</summary>
    public required ElectricPotential? SourceVoltage { get; init; }

    /// <summary>The length one way: more than 0.</summary>
    public required Length? Length { get; init; }

    /// <summary>How the impedance is taken.</summary>
    public ImpedanceMethod Impedance { get; init; } = ImpedanceMethod.AcImpedance;

    /// <summary>The power factor of the load, more than 0 and at most 1; asked for with <see cref="ImpedanceMethod.AcImpedance"/>.</summary>
    public Ratio? PowerFactor { get; init; }

    /// <summary>The number of conductors in parallel in each leg.</summary>
    public int ParallelSets { get; init; } = 1;

    /// <summary>The most drop wanted, as a share of the source voltage, more than 0 and at most 1; null takes the recommendation for a branch circuit.</summary>
    public Ratio? LimitShare { get; init; }

    /// <summary>The measured or published impedance of 1000 ft of the conductor, in place of the tables: more than 0 Ω.</summary>
    public ElectricResistance? ImpedanceOf1000Feet { get; init; }

    /// <summary>The resistance of 1 ft of a conductor of 1 circular mil, in place of the tables: more than 0 Ω.</summary>
    public ElectricResistance? ResistanceOfCircularMilFoot { get; init; }

    internal void Check(RequestCheck check)
    {
        check.Defined<ConductorSize>(Size, nameof(Size));
        check.Defined<ConductorMaterial>(Material, nameof(Material));
        check.Defined<WiringMethod>(Method, nameof(Method));
        check.Defined<CircuitConnection>(Connection, nameof(Connection));
        check.Defined<ImpedanceMethod>(Impedance, nameof(Impedance));
        check.MoreThanZero(Current is { } i ? Canonical.Amperes(i) : null, nameof(Current), QuantityUnit.Ampere);
        check.MoreThanZero(SourceVoltage is { } v ? Canonical.Volts(v) : null, nameof(SourceVoltage), QuantityUnit.Volt);
        check.MoreThanZero(Length is { } l ? Canonical.Feet(l) : null, nameof(Length), QuantityUnit.Foot);
        check.Share(PowerFactor is { } p ? Canonical.Fraction(p) : null, nameof(PowerFactor));
        check.Within(ParallelSets, 1, 12, nameof(ParallelSets), QuantityUnit.Count);
        check.Share(LimitShare is { } s ? Canonical.Fraction(s) : null, nameof(LimitShare));
        check.MoreThanZero(ImpedanceOf1000Feet is { } z ? Canonical.Ohms(z) : null, nameof(ImpedanceOf1000Feet), QuantityUnit.Ohm);
        check.MoreThanZero(ResistanceOfCircularMilFoot is { } k ? Canonical.Ohms(k) : null, nameof(ResistanceOfCircularMilFoot), QuantityUnit.Ohm);
        check.Require(
            ImpedanceOf1000Feet is null || ResistanceOfCircularMilFoot is null,
            nameof(ImpedanceOf1000Feet),
            "and ResistanceOfCircularMilFoot must not both be given.");
    }
}

/// <summary>The voltage drop of a run.</summary>
public sealed record VoltageDropResult
{
    /// <summary>The drop, from the supply to the load and back.</summary>
    public required ElectricPotential Drop { get; init; }

    /// <summary>The drop as a share of the source voltage.</summary>
    public required Ratio Share { get; init; }

    /// <summary>The voltage at the load.</summary>
    public required ElectricPotential VoltageAtLoad { get; init; }

    /// <summary>The limit that the longest run and the smallest size are for.</summary>
    public required Ratio LimitShare { get; init; }

    /// <summary>The longest run, one way, that keeps this conductor within the limit.</summary>
    public required Length LongestRun { get; init; }

    /// <summary>The smallest size that keeps this run within the limit, for the drop alone; null when none does or the impedance was given.</summary>
    public required ConductorSize? SmallestSize { get; init; }
}
