using System.Text.Json.Serialization;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Overcurrent;

namespace ElectroRules.Operations.Json;

/// <summary>What the serializer knows of the requests and results. Each operation has its two types here.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(BranchCircuitRequest))]
[JsonSerializable(typeof(BranchCircuitDesign))]
[JsonSerializable(typeof(ConductorLimitsRequest))]
[JsonSerializable(typeof(ConductorLimitsResult))]
[JsonSerializable(typeof(AmpacityRequest))]
[JsonSerializable(typeof(ConductorAmpacity))]
[JsonSerializable(typeof(SmallestConductorRequest))]
[JsonSerializable(typeof(SmallestConductorResult))]
[JsonSerializable(typeof(OvercurrentRequest))]
[JsonSerializable(typeof(OvercurrentSelection))]
[JsonSerializable(typeof(VoltageDropRequest))]
[JsonSerializable(typeof(VoltageDropResult))]
[JsonSerializable(typeof(EquipmentGroundingRequest))]
[JsonSerializable(typeof(EquipmentGroundingResult))]
internal sealed partial class OperationJsonContext : JsonSerializerContext;
