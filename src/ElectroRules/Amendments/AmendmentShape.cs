using System.Globalization;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Amendments;

/// <summary>What can be checked of an amendment by itself, whatever it will be laid over.</summary>
internal sealed class AmendmentShape
{
    private static readonly TableDefinition[] Tables = GeneratedTables.All();
    private readonly Amendment _amendment;
    private readonly List<AmendmentError> _errors = [];

    private AmendmentShape(Amendment amendment) => _amendment = amendment;

    internal static List<AmendmentError> Check(Amendment amendment)
    {
        var check = new AmendmentShape(amendment);
        check.Heads();
        check.Editions();
        check.Changes();
        check.Remarks();
        return check._errors;
    }

    internal static TableDefinition? Table(string key) =>
        Array.Find(Tables, t => string.Equals(t.Key, key, StringComparison.Ordinal));

    /// <summary>Whether a text is lower-case letters and digits with single hyphens (and dots, where allowed) between them.</summary>
    internal static bool IsName(string text, bool dots)
    {
        bool inWord = false;
        foreach (char c in text)
        {
            bool letter = char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c);
            if (!letter && (!inWord || (c != '-' && !(dots && c == '.'))))
            {
                return false;
            }

            inWord = letter;
        }

        return inWord;
    }

    private void Heads()
    {
        if (!IsName(_amendment.Id, dots: true))
        {
            Add(AmendmentErrorCode.BadText, "/id", $"'{_amendment.Id}' is not an id: lower-case letters, digits, hyphens and dots are.");
        }

        NotEmpty(_amendment.Title, "/title");
        for (int i = 0; i < _amendment.Supersedes.Count; i++)
        {
            string other = _amendment.Supersedes[i];
            if (!IsName(other, dots: true))
            {
                Add(AmendmentErrorCode.BadText, At("supersedes", i), $"'{other}' is not an id.");
            }
            else if (string.Equals(other, _amendment.Id, StringComparison.Ordinal))
            {
                Add(AmendmentErrorCode.SupersedesCircle, At("supersedes", i), "An amendment cannot supersede itself.");
            }
        }
    }

    private void Editions()
    {
        if (_amendment.Editions.Count == 0)
        {
            Add(AmendmentErrorCode.BadEdition, "/editions", "At least one edition must be named.");
        }

        for (int i = 0; i < _amendment.Editions.Count; i++)
        {
            EditionId edition = _amendment.Editions[i];
            if (!ElectroRules.Editions.IsKnown(edition))
            {
                Add(AmendmentErrorCode.BadEdition, At("editions", i), $"Edition {Text((int)edition)} is not one that the library knows.");
            }
            else if (_amendment.Editions.Take(i).Contains(edition))
            {
                Add(AmendmentErrorCode.BadEdition, At("editions", i), $"Edition {Text((int)edition)} is named twice.");
            }
        }
    }

    private void Changes()
    {
        var seen = new HashSet<TableCell>();
        for (int i = 0; i < _amendment.Changes.Count; i++)
        {
            CellChange change = _amendment.Changes[i];
            string at = At("changes", i);
            if (Table(change.Table) is not { } table)
            {
                Add(AmendmentErrorCode.UnknownTable, at + "/table", $"There is no table '{change.Table}'.");
            }
            else
            {
                if (change.Expects is { } expects)
                {
                    Allowed(table, expects, at + "/expects");
                }

                Allowed(table, change.Value, at + "/value");
            }

            NotEmpty(change.Section, at + "/section");
            if (!seen.Add(new TableCell(change.Table, change.Row, change.Column)))
            {
                Add(AmendmentErrorCode.Repeated, at, $"The cell {change.Table} [{change.Row}, {change.Column}] is changed twice.");
            }
        }
    }

    private void Remarks()
    {
        var seen = new HashSet<(string Rule, string Code)>();
        for (int i = 0; i < _amendment.Remarks.Count; i++)
        {
            AmendmentRemark remark = _amendment.Remarks[i];
            string at = At("remarks", i);
            if (!Array.Exists(Rules.Definitions, r => string.Equals(r.Id.Code, remark.Rule, StringComparison.Ordinal)))
            {
                Add(AmendmentErrorCode.UnknownRule, at + "/rule", $"There is no rule '{remark.Rule}'; a code such as ER2010 is wanted.");
            }

            if (!IsName(remark.Code, dots: false))
            {
                Add(AmendmentErrorCode.BadText, at + "/code", $"'{remark.Code}' is not a code: lower-case words with hyphens are.");
            }

            NotEmpty(remark.Section, at + "/section");
            if (!seen.Add((remark.Rule, remark.Code)))
            {
                Add(AmendmentErrorCode.Repeated, at, $"The remark {remark.Rule} {remark.Code} is made twice.");
            }
        }
    }

    private void Allowed(TableDefinition table, double value, string pointer)
    {
        string? wanted = !double.IsFinite(value) || value < 0
            ? "a finite number that is not negative"
            : table.Unit switch
            {
                QuantityUnit.YesNo when value is not (0 or 1) => "0 or 1",
                QuantityUnit.Count when !double.IsInteger(value) => "a whole number",
                QuantityUnit.ConductorSize when !double.IsInteger(value) || value < 1 || value > SizeLabels.Count =>
                    $"the place of a size, from 1 to {Text(SizeLabels.Count)}",
                _ => null,
            };
        if (wanted is not null)
        {
            Add(AmendmentErrorCode.BadValue, pointer, $"{value.ToString("R", CultureInfo.InvariantCulture)} is not allowed in table {table.Key}; wanted: {wanted}.");
        }
    }

    private void NotEmpty(string text, string pointer)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            Add(AmendmentErrorCode.BadText, pointer, "The text must not be empty.");
        }
    }

    private void Add(string code, string pointer, string message) => _errors.Add(new AmendmentError(code, _amendment.Id, pointer, message));

    private static string At(string list, int index) => $"/{list}/{Text(index)}";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
