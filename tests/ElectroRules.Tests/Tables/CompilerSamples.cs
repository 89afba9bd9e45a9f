using System.Text;
using ElectroRules.TableCompiler;

namespace ElectroRules.Tests.Tables;

/// <summary>Small correct data files, and changed copies of them, for the tests of the table compiler.</summary>
internal static class CompilerSamples
{
    internal const string TableFile = "sample.table.json";

    /// <summary>A table found by key, line for line: the tests name its lines.</summary>
    internal const string Table = """
        {
          "key": "sample.table",
          "title": "a sample",
          "unit": "A",
          "stricter": "down",
          "rows": { "name": "kind", "lookup": "exact" },
          "columns": { "name": "material", "keys": ["cu", "al"] },
          "monotone": { "cu": "up" },
          "blocks": [
            {
              "id": "a",
              "editions": { "2014": "1.1", "2017": "1.1", "2020": "1.1" },
              "rows": [
                ["first", ["1", "2"], "to"],
                ["second", ["3", null], "t-"]
              ],
              "sources": ["s1"]
            }
          ],
          "absent": { "2023": "not verified", "2026": "not verified" },
          "sources": {
            "s1": { "kind": "maker", "title": "a chart", "address": "https://example.org/chart" }
          }
        }
        """;

    /// <summary>A list of rules, line for line.</summary>
    internal const string Rules = """
        {
          "rules": [
            { "code": "ER9010", "slug": "sample.first-rule", "name": "FirstRule", "kind": "code", "confidence": "one-source",
              "sections": { "2014": "1.1", "2017": "1.1", "2020": "1.1", "2023": "1.1" },
              "absent": { "2026": "not verified" } },
            { "code": "ER9020", "slug": "sample.second-rule", "name": "SecondRule", "kind": "practice", "confidence": "practice" }
          ]
        }
        """;

    private static readonly string[] Sizes =
        ("18 16 14 12 10 8 6 4 3 2 1 1/0 2/0 3/0 4/0 250 300 350 400 500 600 700 750 800 900 1000 1250 1500 1750 2000").Split(' ');

    /// <summary>A table found by number; its rows stand on lines 14 and 15.</summary>
    internal static string TableByNumber { get; } = Change(
        Table, ("\"exact\"", "\"next-up\""), ("\"first\"", "\"15\""), ("\"second\"", "\"inf\""));

    /// <summary>A table of all the sizes; its rows stand on lines 14 to 43, in the unit "size".</summary>
    internal static string TableBySize { get; } = Change(
        Table,
        ("\"A\"", "\"size\""),
        ("\"name\": \"kind\"", "\"name\": \"size\""),
        ("        [\"first\", [\"1\", \"2\"], \"to\"],\n        [\"second\", [\"3\", null], \"t-\"]\n",
            string.Join(",\n", Sizes.Select(SizeRow)) + "\n"));

    /// <summary>A copy with each old text, which must be there, replaced.</summary>
    internal static string Change(string text, params (string Old, string New)[] changes)
    {
        foreach ((string old, string replacement) in changes)
        {
            Assert.Contains(old, text, StringComparison.Ordinal);
            text = text.Replace(old, replacement, StringComparison.Ordinal);
        }

        return text;
    }

    internal static DataFolder Read(params (string Name, string Text)[] files) =>
        DataFolder.Read(files.ToDictionary(file => file.Name, file => Encoding.UTF8.GetBytes(file.Text), StringComparer.Ordinal));

    /// <summary>The codes and lines of all errors, as "ERD1001:5 ERD1002:7".</summary>
    internal static string ErrorsOf(string name, string text) =>
        string.Join(' ', Read((name, text)).Errors.Select(error => FormattableString.Invariant($"{error.Code}:{error.Line}")));

    private static string SizeRow(string size)
    {
        bool isKcmil = !size.Contains('/', StringComparison.Ordinal) && size.Length > 2;
        string label = size + (isKcmil ? " kcmil" : " AWG");
        return $"        [\"{label}\", [\"{label}\", null], \"t-\"]";
    }
}
