namespace ElectroRules.Conductors;

/// <summary>The cable or raceway that the conductors lie in.</summary>
public enum WiringMethod
{
    /// <summary>Nonmetallic-sheathed cable, type NM-B.</summary>
    NonmetallicSheathedCable = 1,

    /// <summary>Armored cable, type AC.</summary>
    ArmoredCable,

    /// <summary>Metal-clad cable, type MC.</summary>
    MetalCladCable,

    /// <summary>Underground feeder cable, type UF-B.</summary>
    UndergroundFeederCable,

    /// <summary>Service-entrance cable, type SER or SEU, used as interior wiring.</summary>
    ServiceEntranceCable,

    /// <summary>Electrical metallic tubing, EMT.</summary>
    ElectricalMetallicTubing,

    /// <summary>Intermediate metal conduit, IMC.</summary>
    IntermediateMetalConduit,

    /// <summary>Rigid metal conduit of steel, RMC.</summary>
    RigidMetalConduit,

    /// <summary>Rigid PVC conduit.</summary>
    RigidPvcConduit,

    /// <summary>Electrical nonmetallic tubing, ENT.</summary>
    ElectricalNonmetallicTubing,

    /// <summary>Flexible metal conduit, FMC.</summary>
    FlexibleMetalConduit,

    /// <summary>Liquidtight flexible metal conduit, LFMC.</summary>
    LiquidtightFlexibleMetalConduit,

    /// <summary>Liquidtight flexible nonmetallic conduit, LFNC.</summary>
    LiquidtightFlexibleNonmetallicConduit,
}
