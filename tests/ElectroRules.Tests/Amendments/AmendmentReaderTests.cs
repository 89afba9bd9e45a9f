using ElectroRules.Amendments;

namespace ElectroRules.Tests.Amendments;

public class AmendmentReaderTests
{
    [Fact]
    public void A_complete_document_is_read_whole()
    {
        Amendment amendment = AmendmentReader.Read(AmendmentSamples.Complete);

        Assert.Equal("springfield-2024", amendment.Id);
        Assert.Equal("Springfield, local changes", amendment.Title);
        Assert.Equal([EditionId.Nec2017, EditionId.Nec2020, EditionId.Nec2023], amendment.Editions);
        Assert.Equal(["springfield-2020"], amendment.Supersedes);
        Assert.Equal(3, amendment.Changes.Count);
        Assert.Equal(CellChange.SmallestConductor("copper", "14 AWG", "12 AWG", "Ord. 12-3"), amendment.Changes[0]);
        Assert.Equal(3, amendment.Changes[0].Expects);
        Assert.Equal(4, amendment.Changes[0].Value);
        Assert.Equal(CellChange.ForbidMethod("nonmetallicSheathedCable", "Ord. 12-4"), amendment.Changes[1]);
        Assert.Null(amendment.Changes[2].Expects);
        Assert.True(amendment.Changes[2].Relaxes);
        Assert.Equal([new AmendmentRemark { Rule = "ER1010", Code = "inspect-before-cover", Section = "Ord. 12-9" }], amendment.Remarks);
    }

    [Theory]
    [InlineData("\"id\": \"springfield-2024\",", "", "ERD2004", "/id", "")]
    [InlineData("\"id\": \"springfield-2024\"", "\"id\": \"Spring field\"", "ERD2006", "/id", "Spring field")]
    [InlineData("\"id\": \"springfield-2024\"", "\"id\": 7", "ERD2005", "/id", "")]
    [InlineData("\"title\": \"Springfield, local changes\"", "\"title\": \" \"", "ERD2006", "/title")]
    [InlineData("\"title\": ", "\"a/b~\": 1, \"title\": ", "ERD2002", "/a~1b~0")]
    [InlineData("\"title\": ", "\"title\": \"x\", \"title\": ", "ERD2003", "/title")]
    [InlineData("\"2017\"", "\"2011\"", "ERD2007", "/editions/0")]
    [InlineData("\"2017\"", "2017", "ERD2005", "/editions/0")]
    [InlineData("\"2017\"", "\"2020\"", "ERD2007", "/editions/1")]
    [InlineData("[\"2017\", \"2020\", \"2023\"]", "[]", "ERD2007", "/editions")]
    [InlineData("[\"springfield-2020\"]", "[\"springfield-2024\"]", "ERD2019", "/supersedes/0")]
    [InlineData("[\"springfield-2020\"]", "[\"-\"]", "ERD2006", "/supersedes/0")]
    [InlineData("[\"springfield-2020\"]", "{}", "ERD2005", "/supersedes")]
    [InlineData("\"conductor.minimum-size\"", "\"conductor.minimum\"", "ERD2010", "/changes/0/table")]
    [InlineData("\"12 AWG\"", "\"13 AWG\"", "ERD2008", "/changes/0/value")]
    [InlineData("\"12 AWG\"", "4", "ERD2005", "/changes/0/value")]
    [InlineData("\"14 AWG\"", "3", "ERD2005", "/changes/0/expects")]
    [InlineData("\"expects\": \"14 AWG\", ", "", "ERD2004", "/changes/0/expects")]
    [InlineData("\"value\": 0", "\"value\": -1", "ERD2008", "/changes/1/value")]
    [InlineData("\"value\": 0", "\"value\": 1e999", "ERD2008", "/changes/1/value")]
    [InlineData("\"value\": 0", "\"value\": 0.5", "ERD2008", "/changes/1/value")]
    [InlineData("\"relaxes\": true", "\"relaxes\": \"yes\"", "ERD2005", "/changes/2/relaxes")]
    [InlineData("\"relaxes\": true, ", "", "ERD2004", "/changes/2/relaxes")]
    [InlineData("Ord. 12-5", "", "ERD2006", "/changes/2/section")]
    [InlineData("\"metalCladCable\", \"column\": \"wet\"", "\"nonmetallicSheathedCable\", \"column\": \"permitted\"", "ERD2009", "/changes/2")]
    [InlineData("ER1010", "ER0001", "ERD2020", "/remarks/0/rule")]
    [InlineData("inspect-before-cover", "Inspect", "ERD2006", "/remarks/0/code")]
    [InlineData("Ord. 12-9", "", "ERD2006", "/remarks/0/section")]
    public void One_fault_is_one_error(string replace, string with, string code, string pointer, string id = "springfield-2024")
    {
        Assert.Contains(replace, AmendmentSamples.Complete, StringComparison.Ordinal);
        string json = AmendmentSamples.Complete.Replace(replace, with, StringComparison.Ordinal);

        Assert.Equal([$"{code} {id} {pointer}"], AmendmentSamples.Errors(() => AmendmentReader.Read(json)));
    }

    [Theory]
    [InlineData("", "ERD2001")]
    [InlineData("{", "ERD2001")]
    [InlineData("[]", "ERD2005")]
    [InlineData("{} trailing", "ERD2001")]
    public void What_is_not_an_object_is_one_error(string json, string code) =>
        Assert.Equal([$"{code}  "], AmendmentSamples.Errors(() => AmendmentReader.Read(json)));

    [Fact]
    public void Half_a_character_is_not_JSON()
    {
        Assert.Equal(["ERD2001  "], AmendmentSamples.Errors(() => AmendmentReader.Read("{\"id\": \"" + (char)0xD800 + "\"}")));
        string escaped = AmendmentSamples.Complete.Replace("Springfield,", "\\ud800", StringComparison.Ordinal);
        Assert.Equal(["ERD2001  "], AmendmentSamples.Errors(() => AmendmentReader.Read(escaped)));
    }

    [Fact]
    public void All_errors_come_at_once()
    {
        const string Json = """
            {"id": "x", "title": 1, "editions": ["1999"], "supersedes": [], "changes": [{"tabel": "wiring.methods"}, 5], "remarks": [{"rule": "x", "code": "y", "section": ""}]}
            """;

        Assert.Equal(
            [
                "ERD2005 x /title", "ERD2007 x /editions/0", "ERD2002 x /changes/0/tabel", "ERD2004 x /changes/0/table", "ERD2004 x /changes/0/row",
                "ERD2004 x /changes/0/column", "ERD2004 x /changes/0/expects", "ERD2004 x /changes/0/value", "ERD2004 x /changes/0/relaxes",
                "ERD2004 x /changes/0/section", "ERD2005 x /changes/1", "ERD2020 x /remarks/0/rule", "ERD2006 x /remarks/0/section",
            ],
            AmendmentSamples.Errors(() => AmendmentReader.Read(Json)));
    }

    [Fact]
    public void A_size_that_does_not_exist_cannot_be_made_into_a_change() =>
        Assert.Throws<ArgumentException>("size", () => CellChange.SmallestConductor("copper", "14 AWG", "13 AWG", "L 1"));
}
