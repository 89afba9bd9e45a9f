using System.Globalization;

namespace ElectroRules.TableCompiler.Reading;

/// <summary>Reads numbers as the tables print them: digits, at most one point, perhaps a minus sign.</summary>
internal static class Numbers
{
    internal static bool TryRead(string text, out double number)
    {
        number = double.NaN;
        return text.All(c => char.IsAsciiDigit(c) || c is '.' or '-')
            && double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number)
            && double.IsFinite(number);
    }

    /// <summary>Reads a value in the unit of its table; a size becomes its ordinal. Reports what cannot be read.</summary>
    internal static double ReadValue(string text, string unit, int line, FileErrors errors)
    {
        if (string.Equals(unit, Vocabulary.MemberOf(Vocabulary.Units, Vocabulary.SizeUnit), StringComparison.Ordinal))
        {
            int ordinal = Vocabulary.OrdinalOf(text);
            if (ordinal > 0)
            {
                return ordinal;
            }

            errors.Add(DataErrorCode.UnknownSize, line, $"'{text}' is not a conductor size");
            return double.NaN;
        }

        bool yesNo = string.Equals(unit, Vocabulary.MemberOf(Vocabulary.Units, Vocabulary.YesNoUnit), StringComparison.Ordinal);
        if (!TryRead(text, out double number) || (yesNo && number is not (0 or 1)))
        {
            errors.Add(DataErrorCode.NotANumber, line, yesNo ? $"'{text}' is neither 1 (yes) nor 0 (no)" : $"'{text}' is not a number");
        }

        return number;
    }
}
