using UnitsNet;

namespace ElectroRules.Conductors;

/// <summary>A stretch of the circuit with the same surroundings. A fact that is not known is null, and is asked for when it matters.</summary>
public sealed record RouteSegment
{
    /// <summary>The length along the conductors, one way: more than 0.</summary>
    public required Length? Length { get; init; }

    /// <summary>The highest temperature around the conductors, from -60 °C to 200 °C; above a sunlit roof, the outdoor temperature.</summary>
    public required Temperature? Ambient { get; init; }

    /// <summary>How wet the place is.</summary>
    public required LocationKind? Location { get; init; }

    /// <summary>The current-carrying conductors of other circuits in the same raceway, or in cables together with this one; 0 or more. Equipment grounding conductors do not count.</summary>
    public required int? OtherCurrentCarryingConductors { get; init; }

    /// <summary>How a cable lies with others; asked for when a cable has other current-carrying conductors beside it. Not used for a raceway.</summary>
    public CableGrouping? Grouping { get; init; }

    /// <summary>The other cables that the other conductors are in; asked for with <see cref="CableGrouping.SealedOpening"/> and <see cref="CableGrouping.TouchingInInsulation"/>.</summary>
    public int? OtherCables { get; init; }

    /// <summary>Whether the cable is embedded in thermal insulation; asked for only of the kinds of cable that it matters for.</summary>
    public bool? InThermalInsulation { get; init; }

    /// <summary>The height above a roof in the sun, from 0; null when the stretch is not above a roof.</summary>
    public Length? HeightAboveRoof { get; init; }
}
