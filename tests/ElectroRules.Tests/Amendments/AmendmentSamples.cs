using ElectroRules.Amendments;

namespace ElectroRules.Tests.Amendments;

internal static class AmendmentSamples
{
    internal const string Complete = """
        {
          "id": "springfield-2024",
          "title": "Springfield, local changes",
          "editions": ["2017", "2020", "2023"],
          "supersedes": ["springfield-2020"],
          "changes": [
            {"table": "conductor.minimum-size", "row": "copper", "column": "size", "expects": "14 AWG", "value": "12 AWG", "relaxes": false, "section": "Ord. 12-3"},
            {"table": "wiring.methods", "row": "nonmetallicSheathedCable", "column": "permitted", "expects": 1, "value": 0, "relaxes": false, "section": "Ord. 12-4"},
            {"table": "wiring.methods", "row": "metalCladCable", "column": "wet", "expects": null, "value": 1, "relaxes": true, "section": "Ord. 12-5"}
          ],
          "remarks": [
            {"rule": "ER1010", "code": "inspect-before-cover", "section": "Ord. 12-9"}
          ]
        }
        """;

    internal static Amendment Of(string id, params CellChange[] changes) => new()
    {
        Id = id,
        Title = "A test",
        Editions = [EditionId.Nec2023],
        Supersedes = [],
        Changes = changes,
        Remarks = [],
    };

    internal static CellChange Smallest(double value) => new()
    {
        Table = "conductor.minimum-size",
        Row = "copper",
        Column = "size",
        Expects = 3,
        Value = value,
        Relaxes = false,
        Section = "L 1",
    };

    internal static string[] Errors(Action act) =>
        [.. Assert.Throws<AmendmentException>(act).Errors.Select(e => $"{e.Code} {e.Amendment} {e.Pointer}")];

    internal static RuleSet Rules() => RuleSet.For(EditionId.Nec2023);
}
