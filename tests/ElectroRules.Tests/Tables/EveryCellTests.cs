using System.Globalization;
using System.Text.Json;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Tests.Tables;

/// <summary>Every cell, section, reason and letter of every data file is what the library answers, read a second way.</summary>
public class EveryCellTests
{
    private const string RulesFile = "rules";

    private static readonly string[] Files =
    [
        .. Directory.GetFiles(RepositoryFiles.Data, "*.json")
            .Select(file => Path.GetFileNameWithoutExtension(file))
            .Where(key => key != RulesFile)
            .Order(StringComparer.Ordinal),
    ];

    public static TheoryData<string> Keys => [.. Files];

    [Fact]
    public void The_tables_are_those_of_the_files()
    {
        foreach (EditionId edition in Editions.All)
        {
            Assert.Equal(Files, RuleSet.For(edition).Tables.Select(table => table.Key));
        }
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_table_says_what_its_file_says(string key)
    {
        using JsonDocument file = Open(key);
        foreach (EditionId edition in Editions.All)
        {
            ReferenceTable table = RuleSet.For(edition).Table(key);
            Heading(file.RootElement, table);
            DataFileEdition expected = DataFileEdition.Read(file.RootElement, Year(edition));
            Assert.Equal(expected.AbsentReason, table.AbsentReason);
            Assert.Equal(expected.AbsentReason is null, table.IsPresent);
            Assert.Equal(expected.Section, table.Section);
            Assert.Equal(expected.Rows, table.Rows);
            Cells(expected, table);
        }
    }

    [Fact]
    public void A_rule_says_what_the_file_of_rules_says()
    {
        using JsonDocument file = Open(RulesFile);
        JsonElement[] rules =
        [
            .. file.RootElement.GetProperty("rules").EnumerateArray()
                .OrderBy(rule => rule.GetProperty("code").GetString(), StringComparer.Ordinal),
        ];
        Assert.Equal(rules.Length, Rules.Definitions.Length);
        for (int i = 0; i < rules.Length; i++)
        {
            RuleDefinition definition = Rules.Definitions[i];
            Assert.Equal(i, definition.Id.Index);
            Assert.Equal(rules[i].GetProperty("code").GetString(), definition.Id.Code);
            Assert.Equal(rules[i].GetProperty("slug").GetString(), definition.Id.Slug);
            Assert.Equal(rules[i].GetProperty("confidence").GetString(), Hyphened(definition.Confidence.ToString()));
            string kind = definition.Kind == CitationKind.CommonPractice ? "practice" : Hyphened(definition.Kind.ToString());
            Assert.Equal(rules[i].GetProperty("kind").GetString(), kind);
            foreach (EditionId edition in Editions.All)
            {
                Assert.Equal(TextOf(rules[i], "sections", edition), definition.Sections.FirstOrDefault(s => s.Edition == edition).Section);
                Assert.Equal(TextOf(rules[i], "absent", edition), definition.Absent.FirstOrDefault(a => a.Edition == edition).Reason);
            }
        }
    }

    private static void Heading(JsonElement file, ReferenceTable table)
    {
        Assert.Equal(file.GetProperty("title").GetString(), table.Title);
        Assert.Equal(file.GetProperty("stricter").GetString(), Hyphened(table.Definition.Stricter.ToString()));
        Assert.Equal(file.GetProperty("rows").GetProperty("name").GetString(), table.Definition.RowName);
        Assert.Equal(file.GetProperty("rows").GetProperty("lookup").GetString(), Hyphened(table.Lookup.ToString()));
        Assert.Equal(file.GetProperty("columns").GetProperty("name").GetString(), table.Definition.ColumnName);
        Assert.Equal(file.GetProperty("columns").GetProperty("keys").EnumerateArray().Select(key => key.GetString()), table.Columns);
        string unit = file.GetProperty("unit").GetString()!;
        QuantityUnit? ownUnit = unit switch
        {
            "count" => QuantityUnit.Count,
            "size" => QuantityUnit.ConductorSize,
            "yes-no" => QuantityUnit.YesNo,
            "1" => QuantityUnit.One,
            _ => null,
        };
        Assert.Equal(ownUnit?.ToString() ?? unit, ownUnit is null ? table.Unit.Code() : table.Unit.ToString());
        Assert.Equal(
            file.GetProperty("sources").EnumerateObject().Select(source => new TableSource(
                source.Name,
                source.Value.GetProperty("kind").GetString()!,
                source.Value.GetProperty("title").GetString()!,
                source.Value.GetProperty("address").GetString()!)),
            table.Sources);
    }

    private static void Cells(DataFileEdition expected, ReferenceTable table)
    {
        int cell = 0;
        foreach (string row in table.Rows)
        {
            foreach (string column in table.Columns)
            {
                Assert.Equal(expected.Values[cell], table.Value(row, column));
                if (expected.Confidences[cell] is { } confidence)
                {
                    Assert.Equal(confidence, table.ConfidenceOf(row, column));
                }

                cell++;
            }

            double number = row == "inf" ? double.PositiveInfinity : double.NaN;
            if (table.Lookup != RowLookup.Exact)
            {
                number = double.IsNaN(number) ? double.Parse(row, CultureInfo.InvariantCulture) : number;
                Assert.Equal(number, table.Edges[table.RowOf(row)]);
            }
        }

        Assert.Equal(expected.Values.Count, cell);
    }

    private static JsonDocument Open(string key) =>
        JsonDocument.Parse(File.ReadAllBytes(Path.Combine(RepositoryFiles.Data, key + ".json")));

    private static string Year(EditionId edition) => ((int)edition).ToString(CultureInfo.InvariantCulture);

    private static string? TextOf(JsonElement rule, string map, EditionId edition) =>
        rule.TryGetProperty(map, out JsonElement editions) && editions.TryGetProperty(Year(edition), out JsonElement text)
            ? text.GetString()
            : null;

    /// <summary>"TwoSources" as "two-sources".</summary>
    private static string Hyphened(string name) =>
        string.Concat(name.Select((c, i) => (i > 0 && char.IsUpper(c) ? "-" : string.Empty) + char.ToLowerInvariant(c)));
}
