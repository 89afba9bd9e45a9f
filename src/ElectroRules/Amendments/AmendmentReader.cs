using System.Globalization;
using System.Text.Json;
using ElectroRules.Results;
using ElectroRules.Tables;

namespace ElectroRules.Amendments;

/// <summary>Reads amendments from JSON.</summary>
/// <remarks>
/// Every property is required. Editions are written as texts ("2023"); a value in a table of conductor sizes is written as the
/// label of the size ("10 AWG"), every other value as a number in the unit of the table.
/// </remarks>
public static class AmendmentReader
{
    /// <summary>Reads one amendment.</summary>
    /// <param name="json">The document.</param>
    /// <exception cref="AmendmentException">The document is not a valid amendment; all errors are in it.</exception>
    public static Amendment Read(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var reader = new StrictJson();
        Amendment? amendment = null;
        try
        {
            using JsonDocument document = JsonDocument.Parse(json);
            amendment = Root(reader, document.RootElement);
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or ArgumentException)
        {
            // The last two come from half a surrogate pair, written as an escape or standing in the text.
            reader.Add(AmendmentErrorCode.NotJson, string.Empty, $"The text is not JSON: {e.Message}");
        }

        List<AmendmentError> errors = reader.Errors;
        if (amendment is not null)
        {
            // A part that could not be read was reported already; what stands in its place is not checked again.
            int read = errors.Count;
            foreach (AmendmentError error in AmendmentShape.Check(amendment))
            {
                if (!errors.Take(read).Any(e => Covers(e.Pointer, error.Pointer)))
                {
                    errors.Add(error);
                }
            }
        }

        return errors.Count == 0 && amendment is not null
            ? amendment
            : throw new AmendmentException([.. errors.Select(e => e with { Amendment = amendment?.Id ?? string.Empty })]);
    }

    private static bool Covers(string reported, string pointer) =>
        string.Equals(reported, pointer, StringComparison.Ordinal)
        || pointer.StartsWith(reported + "/", StringComparison.Ordinal)
        || reported.StartsWith(pointer + "/", StringComparison.Ordinal);

    private static Amendment? Root(StrictJson reader, JsonElement root)
    {
        if (reader.Object(root, string.Empty, ["id", "title", "editions", "supersedes", "changes", "remarks"]) is not { } found)
        {
            return null;
        }

        return new Amendment
        {
            Id = reader.String(found, "id", string.Empty),
            Title = reader.String(found, "title", string.Empty),
            Editions = reader.List(found, "editions", (item, at) => Edition(reader, item, at)),
            Supersedes = reader.List(found, "supersedes", reader.String),
            Changes = reader.List(found, "changes", (item, at) => Change(reader, item, at)),
            Remarks = reader.List(found, "remarks", (item, at) => Remark(reader, item, at)),
        };
    }

    private static EditionId Edition(StrictJson reader, JsonElement value, string at)
    {
        if (!reader.Is(value, JsonValueKind.String, at, "the year of an edition as a text"))
        {
            return default;
        }

        string text = value.GetString()!;
        foreach (EditionId known in Editions.All)
        {
            if (string.Equals(text, ((int)known).ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal))
            {
                return known;
            }
        }

        reader.Add(AmendmentErrorCode.BadEdition, at, $"Edition '{text}' is not one that the library knows.");
        return default;
    }

    private static CellChange Change(StrictJson reader, JsonElement item, string at)
    {
        Dictionary<string, JsonElement> found =
            reader.Object(item, at, ["table", "row", "column", "expects", "value", "relaxes", "section"]) ?? [];
        string key = reader.String(found, "table", at);
        TableDefinition? table = AmendmentShape.Table(key);
        return new CellChange
        {
            Table = key,
            Row = reader.String(found, "row", at),
            Column = reader.String(found, "column", at),
            Expects = found.TryGetValue("expects", out JsonElement expects) && expects.ValueKind != JsonValueKind.Null
                ? Number(reader, table, expects, at + "/expects")
                : null,
            Value = found.TryGetValue("value", out JsonElement value) ? Number(reader, table, value, at + "/value") : 0,
            Relaxes = reader.Boolean(found, "relaxes", at),
            Section = reader.String(found, "section", at),
        };
    }

    private static AmendmentRemark Remark(StrictJson reader, JsonElement item, string at)
    {
        Dictionary<string, JsonElement> found = reader.Object(item, at, ["rule", "code", "section"]) ?? [];
        return new AmendmentRemark
        {
            Rule = reader.String(found, "rule", at),
            Code = reader.String(found, "code", at),
            Section = reader.String(found, "section", at),
        };
    }

    private static double Number(StrictJson reader, TableDefinition? table, JsonElement value, string at)
    {
        if (table is null)
        {
            return 0; // The unknown table is reported; its unit is not known.
        }

        if (table.Unit != QuantityUnit.ConductorSize)
        {
            return reader.Is(value, JsonValueKind.Number, at, "a number") ? value.GetDouble() : 0;
        }

        if (!reader.Is(value, JsonValueKind.String, at, "the label of a size"))
        {
            return 0;
        }

        int ordinal = SizeLabels.Ordinal(value.GetString()!);
        if (ordinal == 0)
        {
            reader.Add(AmendmentErrorCode.BadValue, at, $"There is no size '{value.GetString()}'.");
        }

        return ordinal;
    }
}
