using System.Globalization;
using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;

namespace ElectroRules.Wording;

/// <summary>Numbers for reading: rounded, but never so that a number seems to be one that it is not.</summary>
internal static class NumberWording
{
    private const int MostDecimals = 12;
    private const int SmallNumberDigits = 4;

    /// <summary>A number with its unit.</summary>
    internal static string Write(WordingSet words, double value, QuantityUnit unit, bool percent = false) =>
        Write(words, value, unit, percent, DecimalsFor(percent ? value * 100 : value, unit, percent));

    /// <summary>Two numbers that are compared: with as many decimals as it takes to tell them apart.</summary>
    internal static (string Value, string Other) Compared(WordingSet words, double value, double other, QuantityUnit unit, bool percent = false)
    {
        string a = Write(words, value, unit, percent);
        string b = Write(words, other, unit, percent);
        double scale = percent ? 100 : 1;
        int decimals = Math.Max(DecimalsFor(value * scale, unit, percent), DecimalsFor(other * scale, unit, percent));
        while (string.Equals(a, b, StringComparison.Ordinal) && !Limit.Same(value, other) && decimals < MostDecimals)
        {
            decimals++;
            a = Write(words, value, unit, percent, decimals);
            b = Write(words, other, unit, percent, decimals);
        }

        return (a, b);
    }

    private static string Write(WordingSet words, double value, QuantityUnit unit, bool percent, int decimals)
    {
        if (unit == QuantityUnit.ConductorSize)
        {
            return ((ConductorSize)(int)value).Label();
        }

        if (unit == QuantityUnit.YesNo)
        {
            return words.Text(value > 0 ? "word.yes" : "word.no");
        }

        string number = Digits(percent ? value * 100 : value, decimals);
        return words.Fill(percent ? "unit.percent" : UnitKey(unit), ("number", number));
    }

    internal static string UnitKey(QuantityUnit unit) => "unit." + unit.ToString();

    internal static string Digits(double value, int decimals)
    {
        string text = Math.Round(value, Math.Min(decimals, 15), MidpointRounding.AwayFromZero).ToString("0.###############", CultureInfo.InvariantCulture);
        return string.Equals(text, "-0", StringComparison.Ordinal) ? "0" : text;
    }

    /// <summary>The decimals to show: more than usual when the usual ones would end in a zero that the number does not have.</summary>
    private static int DecimalsFor(double value, QuantityUnit unit, bool percent)
    {
        int decimals = Usual(value, unit, percent);
        while (decimals < MostDecimals && SeemsExact(value, decimals))
        {
            decimals++;
        }

        return decimals;
    }

    private static bool SeemsExact(double value, int decimals)
    {
        double shown = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        if (Limit.Same(value, shown))
        {
            return false;
        }

        return decimals == 0 || Limit.Same(shown, Math.Round(value, decimals - 1, MidpointRounding.AwayFromZero));
    }

    private static int Usual(double value, QuantityUnit unit, bool percent)
    {
        int decimals = unit switch
        {
            _ when percent => 2,
            QuantityUnit.One or QuantityUnit.Ohm or QuantityUnit.OhmPerThousandFeet => 4,
            QuantityUnit.CircularMil => 1,
            _ => 2,
        };
        double size = Math.Abs(value);
        return size is > 0 and < 0.1
            ? Math.Min(MostDecimals, Math.Max(decimals, SmallNumberDigits - 1 - (int)Math.Floor(Math.Log10(size))))
            : decimals;
    }
}
