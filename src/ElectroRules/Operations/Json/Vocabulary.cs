using System.Collections.Frozen;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using UnitsNet;

namespace ElectroRules.Operations.Json;

/// <summary>How each quantity and each choice of the requests and results is written.</summary>
internal static class Vocabulary
{
    internal static readonly ChoiceConverter<EditionId> Editions = new(ChoiceNames.Of, OperationErrorCode.UnknownEdition);

    internal static readonly IValueShape[] All =
    [
        new QuantityConverter<ElectricCurrent>(Canonical.Amperes, ("A", Canonical.Current)),
        new QuantityConverter<ElectricPotential>(Canonical.Volts, ("V", Canonical.Potential)),
        new QuantityConverter<Power>(Canonical.Watts, ("W", Canonical.RealPower), ("kW", Canonical.RealPowerOfKilowatts)),
        new QuantityConverter<ElectricApparentPower>(
            Canonical.VoltAmperes, ("VA", Canonical.ApparentPower), ("kVA", Canonical.ApparentPowerOfKilovoltAmperes)),
        new QuantityConverter<Temperature>(Canonical.Celsius, ("Cel", Canonical.Temperature), ("degF", Canonical.TemperatureOfFahrenheit)),
        new QuantityConverter<Length>(
            Canonical.Feet,
            ("ft", Canonical.Length),
            ("in", Canonical.LengthOfInches),
            ("m", Canonical.LengthOfMeters),
            ("mm", Canonical.LengthOfMillimeters)),
        new QuantityConverter<ElectricResistance>(Canonical.Ohms, ("Ohm", Canonical.Resistance), ("mOhm", Canonical.ResistanceOfMilliohms)),
        new QuantityConverter<Ratio>(Canonical.Fraction, ("1", Canonical.Ratio), ("%", Canonical.RatioOfPercent)),
        new ChoiceConverter<ConductorSize>(ConductorSizes.Label, OperationErrorCode.UnknownSize),
        Editions,
        new ChoiceConverter<ConductorMaterial>(),
        new ChoiceConverter<WiringMethod>(),
        new ChoiceConverter<InsulationType>(),
        new ChoiceConverter<SupplySystem>(),
        new ChoiceConverter<CircuitConnection>(),
        new ChoiceConverter<TerminationRating>(),
        new ChoiceConverter<LocationKind>(),
        new ChoiceConverter<CableGrouping>(),
        new ChoiceConverter<AmpacityLimit>(),
        new ChoiceConverter<TerminalTest>(),
        new ChoiceConverter<ImpedanceMethod>(),
        new ChoiceConverter<OvercurrentDeviceKind>(),
        new ChoiceConverter<LoadKind>(),
        new ChoiceConverter<LoadDuty>(),
        new ChoiceConverter<DesignLimit>(),
    ];

    private static readonly FrozenDictionary<Type, IValueShape> ByType = All.ToFrozenDictionary(s => s.Type);

    /// <summary>The shape of a type, or of the type that it makes nullable; null when it is read by its members.</summary>
    internal static IValueShape? Find(Type type) => ByType.GetValueOrDefault(Nullable.GetUnderlyingType(type) ?? type);
}
