using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Grounding;

/// <summary>Asks for the equipment grounding conductor of a circuit.</summary>
public sealed record EquipmentGroundingRequest
{
    /// <summary>The rating of the overcurrent device ahead of the circuit, not the load: more than 0 A.</summary>
    public required ElectricCurrent? Device { get; init; }

    /// <summary>The metal of the equipment grounding conductor.</summary>
    public required ConductorMaterial Material { get; init; }

    /// <summary>The size of the ungrounded conductors that are installed.</summary>
    public required ConductorSize? InstalledSize { get; init; }

    /// <summary>The metal of the ungrounded conductors.</summary>
    public required ConductorMaterial InstalledMaterial { get; init; }

    /// <summary>The smallest ungrounded conductors whose ampacity, with correction and adjustment, is enough; null when not known.</summary>
    public ConductorSize? SmallestAfterCorrection { get; init; }

    /// <summary>The smallest ungrounded conductors whose ampacity, before correction and adjustment, is enough; null when not known.</summary>
    public ConductorSize? SmallestBeforeCorrection { get; init; }

    internal void Check(RequestCheck check)
    {
        check.MoreThanZero(Device is { } a ? Canonical.Amperes(a) : null, nameof(Device), QuantityUnit.Ampere);
        check.Defined<ConductorMaterial>(Material, nameof(Material));
        check.Defined<ConductorMaterial>(InstalledMaterial, nameof(InstalledMaterial));
        check.Defined(InstalledSize, nameof(InstalledSize));
        check.Defined(SmallestAfterCorrection, nameof(SmallestAfterCorrection));
        check.Defined(SmallestBeforeCorrection, nameof(SmallestBeforeCorrection));
        check.Require(
            SmallestAfterCorrection is null || InstalledSize is null || SmallestAfterCorrection <= InstalledSize,
            nameof(SmallestAfterCorrection),
            "must not be larger than InstalledSize.");
        check.Require(
            SmallestBeforeCorrection is null || InstalledSize is null || SmallestBeforeCorrection <= InstalledSize,
            nameof(SmallestBeforeCorrection),
            "must not be larger than InstalledSize.");
        check.Require(
            SmallestBeforeCorrection is null || SmallestAfterCorrection is null || SmallestBeforeCorrection <= SmallestAfterCorrection,
            nameof(SmallestBeforeCorrection),
            "must not be larger than SmallestAfterCorrection.");
    }
}

/// <summary>The equipment grounding conductor of a circuit.</summary>
public sealed record EquipmentGroundingResult
{
    /// <summary>The smallest size.</summary>
    public required ConductorSize Size { get; init; }

    /// <summary>The metal.</summary>
    public required ConductorMaterial Material { get; init; }

    /// <summary>The size by the table, before any increase.</summary>
    public required ConductorSize TableSize { get; init; }

    /// <summary>How much larger the circuit conductors are than they had to be, by area; 1 when they are not.</summary>
    public required Ratio Increase { get; init; }

    /// <summary>Whether it was held to the size of the circuit conductors.</summary>
    public required bool HeldToCircuitConductors { get; init; }
}
