using System.Globalization;
using System.Text.Json;
using ElectroRules.Conductors;
using ElectroRules.Tests.Tables;

namespace ElectroRules.Tests.Circuits;

/// <summary>The data files read as plainly as possible, without the tables of the library.</summary>
internal sealed class PlainTable
{
    private static readonly Dictionary<(string Key, EditionId Edition), PlainTable> Known = [];
    private readonly List<(string Key, string?[] Cells)> _rows = [];
    private readonly List<string> _columns = [];

    private PlainTable(string key, EditionId edition)
    {
        using var file = JsonDocument.Parse(File.ReadAllText(Path.Combine(RepositoryFiles.Data, key + ".json")));
        JsonElement root = file.RootElement;
        _columns.AddRange(root.GetProperty("columns").GetProperty("keys").EnumerateArray().Select(c => c.GetString()!));
        string year = ((int)edition).ToString(CultureInfo.InvariantCulture);
        foreach (JsonElement block in root.GetProperty("blocks").EnumerateArray())
        {
            if (!block.GetProperty("editions").TryGetProperty(year, out _))
            {
                continue;
            }

            foreach (JsonElement row in block.GetProperty("rows").EnumerateArray())
            {
                _rows.Add((row[0].GetString()!, [.. row[1].EnumerateArray().Select(c => c.GetString())]));
            }
        }
    }

    internal static PlainTable Of(string key, EditionId edition)
    {
        lock (Known)
        {
            if (!Known.TryGetValue((key, edition), out PlainTable? table))
            {
                table = new PlainTable(key, edition);
                Known.Add((key, edition), table);
            }

            return table;
        }
    }

    internal static int SizeOf(string label) => ConductorSizes.TryParse(label, out ConductorSize size) ? (int)size : throw new FormatException(label);

    internal static double Number(string? text) => text switch
    {
        null => double.NaN,
        "inf" => double.PositiveInfinity,
        _ when ConductorSizes.TryParse(text, out ConductorSize size) => (int)size,
        _ => double.Parse(text, CultureInfo.InvariantCulture),
    };

    internal double At(string row, string column) => Number(_rows.Single(r => r.Key == row).Cells[_columns.IndexOf(column)]);

    /// <summary>The cells of a column with the numbers of their rows, blanks left out.</summary>
    internal IEnumerable<(double Row, double Value)> Column(string column) => _rows
        .Select(r => (Number(r.Key), Number(r.Cells[_columns.IndexOf(column)])))
        .Where(c => !double.IsNaN(c.Item2));

    /// <summary>The cell of the first row that is not below a number; NaN when it is blank or there is none.</summary>
    internal double Up(double key, string column)
    {
        foreach ((string row, string?[] cells) in _rows)
        {
            if (Number(row) >= key * (1 - 1e-9))
            {
                return Number(cells[_columns.IndexOf(column)]);
            }
        }

        return double.NaN;
    }
}
