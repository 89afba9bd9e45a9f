using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Overcurrent;

namespace ElectroRules.Operations.Json;

/// <summary>
/// One object of each type that has members with a default of their own. Only what C# requires is set, so that the defaults can be read
/// off: generated serializers do not know them.
/// </summary>
internal static class Prototypes
{
    internal static readonly object[] All =
    [
        new DesignPreferences(),
        new BranchCircuitRequest { Load = null!, System = default, Material = default, Method = default, Route = null! },
        new ConductorLimitsRequest { Size = default, Run = null!, SeveralReceptacles = null, PowerFactor = null },
        new ConductorRun { Material = default, Method = default, Wires = null!, Route = null! },
        new SmallestConductorRequest { Run = null!, Continuous = null, Noncontinuous = null },
        new OvercurrentRequest { Continuous = null, Noncontinuous = null, Connection = default },
        new VoltageDropRequest
        {
            Size = default, Material = default, Method = default, Connection = default, Current = null, SourceVoltage = null, Length = null,
        },
    ];

    internal static object? Find(Type type) => Array.Find(All, p => p.GetType() == type);
}
