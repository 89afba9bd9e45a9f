using UnitsNet;

namespace ElectroRules.Internal;

/// <summary>The only file that touches the members of UnitsNet: quantities become doubles in one fixed unit, and back.</summary>
internal static class Canonical
{
    internal static double Amperes(ElectricCurrent value) => value.Amperes;

    internal static double Volts(ElectricPotential value) => value.Volts;

    internal static double Watts(Power value) => (double)value.Watts;

    internal static double VoltAmperes(ElectricApparentPower value) => value.Voltamperes;

    internal static double Celsius(Temperature value) => value.DegreesCelsius;

    internal static double Feet(Length value) => value.Feet;

    internal static double Inches(Length value) => value.Inches;

    internal static double Ohms(ElectricResistance value) => value.Ohms;

    internal static double Fraction(Ratio value) => value.DecimalFractions;

    internal static ElectricCurrent Current(double amperes) => ElectricCurrent.FromAmperes(amperes);

    internal static ElectricPotential Potential(double volts) => ElectricPotential.FromVolts(volts);

    internal static ElectricApparentPower ApparentPower(double voltAmperes) => ElectricApparentPower.FromVoltamperes(voltAmperes);

    internal static Power RealPower(double watts) => Power.FromWatts(watts);

    internal static Temperature Temperature(double celsius) => UnitsNet.Temperature.FromDegreesCelsius(celsius);

    internal static Length Length(double feet) => UnitsNet.Length.FromFeet(feet);

    internal static ElectricResistance Resistance(double ohms) => ElectricResistance.FromOhms(ohms);

    internal static Ratio Ratio(double fraction) => UnitsNet.Ratio.FromDecimalFractions(fraction);

    internal static Power RealPowerOfKilowatts(double kilowatts) => Power.FromKilowatts(kilowatts);

    internal static ElectricApparentPower ApparentPowerOfKilovoltAmperes(double value) => ElectricApparentPower.FromKilovoltamperes(value);

    internal static Temperature TemperatureOfFahrenheit(double fahrenheit) => UnitsNet.Temperature.FromDegreesFahrenheit(fahrenheit);

    internal static Length LengthOfInches(double inches) => UnitsNet.Length.FromInches(inches);

    internal static Length LengthOfMeters(double meters) => UnitsNet.Length.FromMeters(meters);

    internal static Length LengthOfMillimeters(double millimeters) => UnitsNet.Length.FromMillimeters(millimeters);

    internal static ElectricResistance ResistanceOfMilliohms(double milliohms) => ElectricResistance.FromMilliohms(milliohms);

    internal static Ratio RatioOfPercent(double percent) => UnitsNet.Ratio.FromPercent(percent);
}
