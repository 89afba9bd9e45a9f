namespace ElectroRules.Results;

/// <summary>The unit of a number in a derivation or a finding. One fixed unit is used for each kind of quantity.</summary>
public enum QuantityUnit
{
    /// <summary>A plain number: a factor, a ratio.</summary>
    One,

    /// <summary>A count of things.</summary>
    Count,

    /// <summary>Amperes, code "A".</summary>
    Ampere,

    /// <summary>Volts, code "V".</summary>
    Volt,

    /// <summary>Watts, code "W".</summary>
    Watt,

    /// <summary>Volt-amperes, code "VA".</summary>
    VoltAmpere,

    /// <summary>Degrees Celsius, code "Cel".</summary>
    Celsius,

    /// <summary>A temperature difference in kelvins, code "K".</summary>
    Kelvin,

    /// <summary>Feet, code "ft".</summary>
    Foot,

    /// <summary>Inches, code "in".</summary>
    Inch,

    /// <summary>Ohms, code "Ohm".</summary>
    Ohm,

    /// <summary>Ohms in 1000 feet, code "Ohm/kft".</summary>
    OhmPerThousandFeet,

    /// <summary>Circular mils, code "cmil".</summary>
    CircularMil,

    /// <summary>Ohms times circular mils in a foot, code "Ohm.cmil/ft".</summary>
    OhmCircularMilPerFoot,

    /// <summary>A conductor size; the number is its place in the list of sizes.</summary>
    ConductorSize,

    /// <summary>A yes (1) or no (0).</summary>
    YesNo,
}

/// <summary>The written code of each unit, as used in JSON.</summary>
public static class QuantityUnits
{
    /// <summary>The code of a unit, for example "A" or "Ohm/kft". Plain numbers have "1".</summary>
    /// <exception cref="ArgumentOutOfRangeException">The unit is not a defined one.</exception>
    public static string Code(this QuantityUnit unit) => unit switch
    {
        QuantityUnit.One or QuantityUnit.Count or QuantityUnit.ConductorSize or QuantityUnit.YesNo => "1",
        QuantityUnit.Ampere => "A",
        QuantityUnit.Volt => "V",
        QuantityUnit.Watt => "W",
        QuantityUnit.VoltAmpere => "VA",
        QuantityUnit.Celsius => "Cel",
        QuantityUnit.Kelvin => "K",
        QuantityUnit.Foot => "ft",
        QuantityUnit.Inch => "in",
        QuantityUnit.Ohm => "Ohm",
        QuantityUnit.OhmPerThousandFeet => "Ohm/kft",
        QuantityUnit.CircularMil => "cmil",
        QuantityUnit.OhmCircularMilPerFoot => "Ohm.cmil/ft",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not a defined unit."),
    };
}
