using System.Text.Json.Nodes;
using ElectroRules.Operations;

namespace ElectroRules.Tests.Operations;

public class RequestErrorTests
{
    private const string Ampacity = "conductor.ampacity";

    [Theory]
    [InlineData("run/route/0/length/unit", "\"yd\"", "/request/run/route/0/length/unit unknown-unit")]
    [InlineData("run/route/0/length/value", "\"12\"", "/request/run/route/0/length/value wrong-kind")]
    [InlineData("run/route/0/length/value", "-3", "/request/run/route/0/length out-of-range")]
    [InlineData("run/route/0/length/value", "1e300", "/request/run/route/0/length/value number-out-of-bounds")]
    [InlineData("run/route/0/length/value", "1e999", "/request/run/route/0/length/value number-out-of-bounds")]
    [InlineData("run/route/0/length", "12", "/request/run/route/0/length wrong-kind")]
    [InlineData("run/route/0/otherCurrentCarryingConductors", "1.5", "/request/run/route/0/otherCurrentCarryingConductors wrong-kind")]
    [InlineData("run/route/0/inThermalInsulation", "1", "/request/run/route/0/inThermalInsulation wrong-kind")]
    [InlineData("run/route/0/surprise", "1", "/request/run/route/0/surprise unknown-property")]
    [InlineData("run/route/0", "null", "/request/run/route/0 wrong-kind")]
    [InlineData("run/route", "[]", "/request/run/route out-of-range")]
    [InlineData("run/route", "{}", "/request/run/route wrong-kind")]
    [InlineData("run/parallelSets", "99", "/request/run/parallelSets out-of-range")]
    [InlineData("run/material", "\"gold\"", "/request/run/material unknown-choice")]
    [InlineData("run/material", "1", "/request/run/material wrong-kind")]
    [InlineData("run/material", "null", "/request/run/material wrong-kind")]
    [InlineData("run/wires", "null", "/request/run/wires wrong-kind")]
    [InlineData("run/wires/connection", "\"threePhase\"", "/request/run/wires/connection out-of-range")]
    [InlineData("size", "\"5 AWG\"", "/request/size unknown-size")]
    public void One_bad_value_is_one_error(string place, string value, string expected)
    {
        string document = OperationDocuments.With(Ampacity, d =>
        {
            JsonNode owner = d["request"]!;
            string[] parts = place.Split('/');
            foreach (string part in parts[..^1])
            {
                owner = owner is JsonArray list ? list[part[0] - '0']! : owner[part]!;
            }

            if (owner is JsonArray items)
            {
                items[parts[^1][0] - '0'] = JsonNode.Parse(value);
            }
            else
            {
                owner[parts[^1]] = JsonNode.Parse(value);
            }
        });
        Assert.Equal([expected], OperationDocuments.Errors(Ampacity, document));
    }

    [Theory]
    [InlineData("", " not-json")]
    [InlineData("{", " not-json")]
    [InlineData("[]", " wrong-kind")]
    [InlineData("""{"a":"\ud800"}""", " not-json")]
    [InlineData("""{"edition":"nec2023","edition":"nec2023","request":{},"x":1}""", "/edition duplicate-property")]
    public void A_bad_document_is_told(string document, string expected) =>
        Assert.Equal(expected, OperationDocuments.Errors(Ampacity, document)[0]);

    [Fact]
    public void Deep_nesting_is_refused() =>
        Assert.Equal([" not-json"], OperationDocuments.Errors(Ampacity, new string('[', 40) + new string(']', 40)));

    [Fact]
    public void Where_the_text_stops_being_JSON_is_told() =>
        Assert.Contains("line 2, byte 3", OperationCatalog.Run(Ampacity, "{\n  ?"), StringComparison.Ordinal);

    [Fact]
    public void Everything_wrong_is_told_at_once()
    {
        string document = OperationDocuments.With(Ampacity, d =>
        {
            d["edition"] = "nec1999";
            d["amendments"] = new JsonArray(new JsonObject { ["id"] = 1 });
            d["request"]!["size"] = "5 AWG";
            d["request"]!.AsObject().Remove("run");
            d["request"]!["circuitRating"]!["value"] = 0;
        });
        string[] errors = OperationDocuments.Errors(Ampacity, document);
        Assert.Contains("/edition unknown-edition", errors);
        Assert.Contains("/amendments/0/title ERD2004", errors);
        Assert.Contains("/amendments/0/id ERD2005", errors);
        Assert.Contains("/request/size unknown-size", errors);
        Assert.Contains("/request/run missing-property", errors);
        Assert.Contains("/request/circuitRating out-of-range", errors);
    }

    [Fact]
    public void A_stand_in_for_a_bad_value_causes_no_error_of_its_own()
    {
        string document = OperationDocuments.With(Ampacity, d =>
        {
            d["request"]!["run"]!["wires"]!["system"] = "dc";
            d["request"]!["run"]!["wires"]!["connection"] = "threePhase";
        });
        Assert.Equal(["/request/run/wires/system unknown-choice"], OperationDocuments.Errors(Ampacity, document));
    }

    [Fact]
    public void An_unknown_operation_is_an_error() =>
        Assert.Equal([" unknown-operation"], OperationDocuments.Errors("conductor.color", "{}"));

    [Fact]
    public void Without_an_edition_around_it_pointers_begin_at_the_request() =>
        Assert.Contains("\"/size\"", OperationCatalog.Run(Ampacity, RuleSet.For(EditionId.Nec2023), "{}"), StringComparison.Ordinal);

    [Fact]
    public void A_comparison_names_what_is_wrong_within()
    {
        string document = OperationDocuments.With("edition.compare", d =>
        {
            d["request"]!["editions"] = new JsonArray("nec2023", "nec2024");
            d["request"]!["request"]!["size"] = "5 AWG";
        });
        Assert.Equal(
            ["/request/editions/1 unknown-edition", "/request/request/size unknown-size"], OperationDocuments.Errors("edition.compare", document));
    }
}
