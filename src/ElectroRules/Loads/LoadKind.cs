namespace ElectroRules.Loads;

/// <summary>The kind of a load, as far as the rules treat it apart.</summary>
public enum LoadKind
{
    /// <summary>An appliance with resistance elements and no motor, fixed in place, that has no kind of its own here.</summary>
    FixedResistiveAppliance = 1,

    /// <summary>A storage water heater.</summary>
    StorageWaterHeater,

    /// <summary>A tankless water heater.</summary>
    TanklessWaterHeater,

    /// <summary>Fixed electric space heating.</summary>
    SpaceHeater,

    /// <summary>A pottery kiln.</summary>
    Kiln,

    /// <summary>A household range, cooktop or oven.</summary>
    Range,

    /// <summary>A household clothes dryer.</summary>
    ClothesDryer,

    /// <summary>Charging equipment for vehicles.</summary>
    VehicleCharging,

    /// <summary>An air conditioner or heat pump with its circuit values on the nameplate.</summary>
    AirConditioning,

    /// <summary>Lighting.</summary>
    Lighting,

    /// <summary>Several receptacles for cord-and-plug loads.</summary>
    Receptacles,

    /// <summary>A load of another kind: the general rules are used.</summary>
    Other,
}

/// <summary>Whether a load runs for three hours or more.</summary>
public enum LoadDuty
{
    /// <summary>It does.</summary>
    Continuous = 1,

    /// <summary>It does not.</summary>
    Noncontinuous,

    /// <summary>As is usual for its kind; asked for when the kind does not tell.</summary>
    ByKind,
}
