using System.Globalization;
using System.Text.Json;
using ElectroRules.Results;

namespace ElectroRules.Tests.Tables;

/// <summary>What one edition has of a table, as its data file says it. A second reader: it shares no code with the table compiler.</summary>
internal sealed class DataFileEdition
{
    internal string? AbsentReason { get; private init; }

    internal string Section { get; private init; } = string.Empty;

    internal List<string> Rows { get; } = [];

    /// <summary>The values, row after row; null for none.</summary>
    internal List<double?> Values { get; } = [];

    /// <summary>How each value was confirmed; null where there is none.</summary>
    internal List<Confidence?> Confidences { get; } = [];

    internal static DataFileEdition Read(JsonElement table, string year)
    {
        DataFileEdition? found = null;
        foreach (JsonElement block in table.GetProperty("blocks").EnumerateArray())
        {
            if (block.GetProperty("editions").TryGetProperty(year, out JsonElement section))
            {
                Assert.Null(found);
                found = new DataFileEdition { Section = section.GetString()! };
                found.ReadRows(block.GetProperty("rows"), table.GetProperty("unit").GetString()!);
            }
        }

        if (table.GetProperty("absent").TryGetProperty(year, out JsonElement reason))
        {
            Assert.Null(found);
            found = new DataFileEdition { AbsentReason = reason.GetString() };
        }

        return found ?? throw new InvalidOperationException($"{table.GetProperty("key")} says nothing of {year}.");
    }

    private void ReadRows(JsonElement rows, string unit)
    {
        foreach (JsonElement row in rows.EnumerateArray())
        {
            Rows.Add(row[0].GetString()!);
            string letters = row[2].GetString()!;
            Assert.Equal(row[1].GetArrayLength(), letters.Length);
            for (int i = 0; i < letters.Length; i++)
            {
                string? printed = row[1][i].GetString();
                Values.Add(printed is null ? null : ReadValue(printed, unit));
                Confidences.Add(ReadLetter(letters[i]));
            }
        }
    }

    private static double ReadValue(string printed, string unit) =>
        unit == "size" ? ReadSize(printed) : (double)decimal.Parse(printed, CultureInfo.InvariantCulture);

    /// <summary>The place of a size, counted along the gauges down from 18 and then along the thousands of circular mils.</summary>
    private static double ReadSize(string label)
    {
        string[] parts = label.Split(' ');
        int[] gauges = [18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1];
        int[] kcmils = [250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000, 1250, 1500, 1750, 2000];
        bool isAught = parts[0].EndsWith("/0", StringComparison.Ordinal);
        int number = int.Parse(isAught ? parts[0][..^2] : parts[0], CultureInfo.InvariantCulture);
        if (isAught)
        {
            return gauges.Length + number;
        }

        return parts[1] == "AWG" ? Array.IndexOf(gauges, number) + 1 : gauges.Length + 4 + Array.IndexOf(kcmils, number) + 1;
    }

    private static Confidence? ReadLetter(char letter) => letter switch
    {
        't' => Confidence.TwoSources,
        'o' => Confidence.OneSource,
        'f' => Confidence.Formula,
        'd' => Confidence.OlderEdition,
        'm' => Confidence.Memory,
        'p' => Confidence.Practice,
        '-' => null,
        _ => throw new InvalidOperationException($"'{letter}' is not a letter of confirmation."),
    };
}
