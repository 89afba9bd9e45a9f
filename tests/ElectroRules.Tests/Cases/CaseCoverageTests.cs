using System.Text.Json;

namespace ElectroRules.Tests.Cases;

public class CaseCoverageTests
{
    /// <summary>The runners of this assembly. Cases that wait for the design of whole circuits are listed in CasesForDesign.json.</summary>
    private static readonly CaseRunners[] All =
    [
        ConductorAmpacityCases.Runners,
        ApplianceCases.Runners,
        VoltageDropCases.Runners,
        EquipmentGroundingCases.Runners,
        BundlingRooftopCases.Runners,
    ];

    [Fact]
    public void Every_case_has_a_runner_and_every_runner_a_case()
    {
        foreach (CaseRunners runners in All)
        {
            Assert.Equal(PublishedCase.Read(runners.Topic).Select(c => c.Id).Order(StringComparer.Ordinal), runners.Ids.Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Every_topic_of_conductors_devices_and_grounding_has_its_runners()
    {
        string[] topics = ["appliances", "bundling-rooftop", "conductor-ampacity", "equipment-grounding", "voltage-drop"];
        Assert.All(topics, topic => Assert.True(File.Exists(Path.Combine(PublishedCase.Folder, topic + ".json")), topic));
        Assert.Equal(topics, All.Select(r => r.Topic).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_case_names_its_source()
    {
        Assert.All(All.SelectMany(r => PublishedCase.Read(r.Topic)), c =>
        {
            Assert.NotEmpty(c.SourceTitle);
            Assert.StartsWith("http", c.SourceAddress, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Every_case_that_waits_for_design_is_a_case()
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(Path.Combine(PublishedCase.Folder, "CasesForDesign.json")));
        string[] ids = [.. All.SelectMany(r => r.Ids)];
        Assert.All(document.RootElement.EnumerateArray(), e => Assert.Contains(e.GetProperty("id").GetString(), ids));
    }
}
