using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Operations;
using ElectroRules.Operations.Json;

namespace ElectroRules.Tests.Operations;

public class OperationCatalogTests
{
    public static TheoryData<string> Ids => [.. OperationCatalog.All.Select(o => o.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_example_is_determined(string id) =>
        Assert.Equal("determined", OperationDocuments.Status(OperationCatalog.Run(id, OperationCatalog.Find(id)!.ExampleRequest())));

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_rule_set_of_the_host_answers_as_the_document_does(string id)
    {
        JsonNode document = OperationDocuments.Example(id);
        string request = document["request"]!.ToJsonString();
        Assert.Equal(OperationCatalog.Run(id, document.ToJsonString()), OperationCatalog.Run(id, RuleSet.For(EditionId.Nec2023), request));
    }

    [Fact]
    public void The_answer_is_the_one_of_CSharp()
    {
        using JsonDocument answer = JsonDocument.Parse(OperationCatalog.Run("voltage-drop.compute", OperationCatalog.Find("voltage-drop.compute")!.ExampleRequest()));
        var determination = VoltageDrop.Compute(RuleSet.For(EditionId.Nec2023), OperationExamples.VoltageDrop());
        JsonElement root = answer.RootElement;
        Assert.Equal(Canonical.Volts(determination.Value.Drop), root.GetProperty("value").GetProperty("drop").GetProperty("value").GetDouble());
        Assert.Equal(determination.Value.SmallestSize!.Value.Label(), root.GetProperty("value").GetProperty("smallestSize").GetString());
        Assert.Equal(determination.Derivation.Count, root.GetProperty("derivation").GetArrayLength());
        Assert.Equal(determination.Derivation[^1].Value, root.GetProperty("derivation")[determination.Derivation.Count - 1].GetProperty("value").GetDouble());
        Assert.Equal("nec2023", root.GetProperty("stamp").GetProperty("edition").GetString());
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void The_culture_of_the_machine_changes_nothing(string culture)
    {
        string[] here = Everything();
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(here, Everything());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_default_that_is_not_written_is_the_one_of_CSharp()
    {
        string document = OperationDocuments.With("voltage-drop.compute", d =>
        {
            d["request"]!.AsObject().Remove("parallelSets");
            d["request"]!.AsObject().Remove("impedance");
        });
        Assert.Equal(OperationCatalog.Run("voltage-drop.compute", OperationCatalog.Find("voltage-drop.compute")!.ExampleRequest()), OperationCatalog.Run("voltage-drop.compute", document));
    }

    [Fact]
    public void A_fact_that_is_missing_or_null_is_not_known()
    {
        string missing = OperationDocuments.With("overcurrent.select", d => d["request"]!.AsObject().Remove("continuous"));
        string none = OperationDocuments.With("overcurrent.select", d => d["request"]!["continuous"] = null);
        string answer = OperationCatalog.Run("overcurrent.select", missing);
        Assert.Equal("needsInput", OperationDocuments.Status(answer));
        Assert.Equal(answer, OperationCatalog.Run("overcurrent.select", none));
    }

    [Theory]
    [InlineData("""{"value":1440,"unit":"in"}""")]
    [InlineData("""{"unit":"mm","value":36576}""")]
    [InlineData("""{"value":36.576,"unit":"m"}""")]
    public void A_length_is_read_in_every_unit(string length)
    {
        string document = OperationDocuments.With("voltage-drop.compute", d => d["request"]!["length"] = JsonNode.Parse(length));
        using JsonDocument answer = JsonDocument.Parse(OperationCatalog.Run("voltage-drop.compute", document));
        double longest = answer.RootElement.GetProperty("value").GetProperty("drop").GetProperty("value").GetDouble();
        var expected = VoltageDrop.Compute(RuleSet.For(EditionId.Nec2023), OperationExamples.VoltageDrop());
        Assert.Equal(Canonical.Volts(expected.Value.Drop), longest, 9);
    }

    [Fact]
    public void Two_editions_are_compared()
    {
        string document = OperationDocuments.With("edition.compare", d => d["request"]!["editions"] = new JsonArray("nec2023", "nec2026"));
        using JsonDocument answer = JsonDocument.Parse(OperationCatalog.Run("edition.compare", document));
        JsonElement value = answer.RootElement.GetProperty("value");
        string first = value.GetProperty("answers")[0].GetProperty("status").GetString()!;
        string second = value.GetProperty("answers")[1].GetProperty("status").GetString()!;
        bool listed = value.GetProperty("changes").EnumerateArray().Any(c => string.Equals(c.GetProperty("pointer").GetString(), "/status", StringComparison.Ordinal));
        Assert.Equal(!string.Equals(first, second, StringComparison.Ordinal), listed);
    }

    [Fact]
    public void Every_member_of_a_request_has_a_way_to_be_written_and_a_default_where_it_needs_one()
    {
        foreach (Operation operation in OperationCatalog.All.Where(o => o.RequestType != typeof(JsonElement)))
        {
            Visit(operation.RequestType);
        }
    }

    private static void Visit(Type type)
    {
        var info = OperationJson.Of(type);
        foreach (var property in info.Properties)
        {
            Type inner = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
            Assert.True(
                property.IsRequired || OperationJson.IsNullable(property) || OperationJson.Default(info, property) is not null,
                $"{type.Name}.{property.Name} has a default but no prototype");
            if (Vocabulary.Find(inner) is not null)
            {
                continue;
            }

            Assert.False(inner.IsEnum || inner.Namespace!.StartsWith("UnitsNet", StringComparison.Ordinal), $"{inner.Name} is not in the vocabulary");
            Type? element = OperationJson.Of(inner).ElementType;
            if ((element ?? inner).Namespace!.StartsWith("ElectroRules", StringComparison.Ordinal))
            {
                Visit(element ?? inner);
            }
        }
    }

    private static string[] Everything()
    {
        var texts = new List<string>();
        foreach (Operation operation in OperationCatalog.All)
        {
            texts.Add(operation.RequestSchema());
            texts.Add(operation.ExampleRequest());
            texts.Add(OperationCatalog.Run(operation.Id, operation.ExampleRequest()));
        }

        texts.Add(OperationCatalog.Run(
            "conductor.ampacity", OperationDocuments.With("conductor.ampacity", d => d["request"]!["circuitRating"]!["value"] = -1.5)));
        return [.. texts];
    }
}
