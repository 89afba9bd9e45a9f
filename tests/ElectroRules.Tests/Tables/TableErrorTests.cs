using ElectroRules.TableCompiler;

namespace ElectroRules.Tests.Tables;

/// <summary>Every kind of error in a table file is found, with its code and its line.</summary>
public class TableErrorTests
{
    [Fact]
    public void The_samples_are_correct()
    {
        Assert.Equal(string.Empty, CompilerSamples.ErrorsOf(CompilerSamples.TableFile, CompilerSamples.Table));
        Assert.Equal(string.Empty, CompilerSamples.ErrorsOf(CompilerSamples.TableFile, CompilerSamples.TableByNumber));
        Assert.Equal(string.Empty, CompilerSamples.ErrorsOf(CompilerSamples.TableFile, CompilerSamples.TableBySize));
    }

    [Theory]
    [InlineData("ERD1001:6", "\"down\",", "\"down\"")]
    [InlineData("ERD1001:24", "\"stricter\"", "\"stricter\"", "\n}", "\n},\n{}")]
    [InlineData("ERD1002:3", "\"a sample\",", "\"a sample\", \"title\": \"again\",")]
    [InlineData("ERD1002:22", "\"kind\": \"maker\",", "\"kind\": \"maker\", \"kind\": \"shop\",")]
    [InlineData("ERD1003:3", "\"a sample\",", "\"a sample\", \"remark\": \"x\",")]
    [InlineData("ERD1003:17", "[\"s1\"]", "[\"s1\"], \"remark\": \"x\"")]
    [InlineData("ERD1003:22", "\"kind\": \"maker\",", "\"kind\": \"maker\", \"year\": \"2017\",")]
    [InlineData("ERD1004:1", "  \"stricter\": \"down\",\n", "")]
    [InlineData("ERD1004:10", "      \"id\": \"a\",\n", "")]
    [InlineData("ERD1004:6", "\"name\": \"kind\", ", "")]
    [InlineData("ERD1005:4", "\"A\"", "7")]
    [InlineData("ERD1005:14", "[\"1\", \"2\"]", "[1, \"2\"]")]
    [InlineData("ERD1005:15", ", \"t-\"]", "]")]
    [InlineData("ERD1005:20", "\"2026\": \"not verified\"", "\"2026\": null")]
    [InlineData("ERD1006:3", "\"a sample\"", "\" \"")]
    [InlineData("ERD1006:12", "\"2014\": \"1.1\"", "\"2014\": \"\"")]
    [InlineData("ERD1006:22", "\"a chart\"", "\"\"")]
    [InlineData("ERD1008:2", "\"sample.table\"", "\"other.table\"")]
    [InlineData("ERD1009:11", "\"a\"", "\"A b\"")]
    [InlineData("ERD1010:7", "\"al\"", "\"cu\"")]
    [InlineData("ERD1010:15", "\"second\"", "\"first\"")]
    [InlineData("ERD1010:17", "[\"s1\"]", "[\"s1\", \"s1\"]")]
    [InlineData("ERD1011:7", "\"al\"", "\"-cu\"")]
    [InlineData("ERD1011:10", "\"second\"", "\"First\"")]
    [InlineData("ERD1020:12", "\"2014\": \"1.1\"", "\"2014\": \"1.1\", \"2011\": \"1.1\"")]
    [InlineData("ERD1021:20", "{ \"2023\"", "{ \"2020\": \"gone\", \"2023\"")]
    [InlineData("ERD1022:1", ", \"2026\": \"not verified\"", "")]
    [InlineData("ERD1023:4", "\"A\"", "\"amp\"")]
    [InlineData("ERD1024:6", "\"exact\"", "\"nearest\"")]
    [InlineData("ERD1025:5", "\"down\"", "\"less\"")]
    [InlineData("ERD1025:8", "{ \"cu\": \"up\" }", "{ \"cu\": \"neither\" }")]
    [InlineData("ERD1026:14", "\"to\"", "\"tx\"")]
    [InlineData("ERD1028:8", "{ \"cu\": \"up\" }", "{ \"ag\": \"up\" }")]
    [InlineData("ERD1042:15", "[\"3\", null]", "[\"0.5\", null]")]
    [InlineData("ERD1043:14", "[\"1\", \"2\"]", "[\"1\", \"2\", \"3\"]")]
    [InlineData("ERD1044:14", "\"to\"", "\"too\"")]
    [InlineData("ERD1045:14", "\"to\"", "\"t-\"")]
    [InlineData("ERD1045:15", "\"t-\"", "\"to\"")]
    [InlineData("ERD1046:14", "\"2\"]", "\"2,5\"]")]
    [InlineData("ERD1046:14", "\"2\"]", "\"1e3\"]")]
    [InlineData("ERD1046:14", "\"2\"]", "\"NaN\"]")]
    [InlineData("ERD1046:15", "\"A\"", "\"yes-no\"", "\"2\"]", "\"0\"]")]
    [InlineData("ERD1060:17", "[\"s1\"]", "[\"s1\", \"s2\"]")]
    [InlineData("ERD1061:21", "\"sources\": {", "\"sources\": { \"s2\": { \"kind\": \"k\", \"title\": \"t\", \"address\": \"\" },")]
    [InlineData("ERD1062:17 ERD1061:22", "[\"s1\"]", "[]")]
    [InlineData("ERD1063:22", "https://example.org/chart", "ftp://example.org/chart")]
    [InlineData("ERD1063:22", "https://example.org/chart", "example.org")]
    public void An_error_is_found_with_its_line(string expected, string old, string replacement, string old2 = "", string replacement2 = "")
    {
        string text = CompilerSamples.Change(CompilerSamples.Table, (old, replacement));
        text = old2.Length == 0 ? text : CompilerSamples.Change(text, (old2, replacement2));
        Assert.Equal(expected, CompilerSamples.ErrorsOf(CompilerSamples.TableFile, text));
    }

    [Theory]
    [InlineData("ERD1041:15", "\"inf\"", "\"15\"", true)]
    [InlineData("ERD1041:15", "\"inf\"", "\"14.5\"", false)]
    [InlineData("ERD1041:15", "\"15\"", "\"inf\"", true)]
    [InlineData("ERD1046:14", "\"15\"", "\"fifteen\"", false)]
    public void The_numbers_of_the_rows_rise(string expected, string old, string replacement, bool keyTwice)
    {
        string text = CompilerSamples.Change(CompilerSamples.TableByNumber, (old, replacement));
        string errors = CompilerSamples.ErrorsOf(CompilerSamples.TableFile, text);
        Assert.Equal(keyTwice ? "ERD1010:15 " + expected : expected, errors);
    }

    [Theory]
    [InlineData("ERD1027:16", "[\"14 AWG\", null]", "[\"14\", null]")]
    [InlineData("ERD1027:17", "[\"12 AWG\", [", "[\"12 gauge\", [")]
    [InlineData("ERD1040:17", "[\"12 AWG\", [", "[\"2000 kcmil\", [", "[\"2000 kcmil\", [\"2000 kcmil\"", "[\"12 AWG\", [\"2000 kcmil\"")]
    [InlineData("ERD1040:10", ",\n        [\"2000 kcmil\", [\"2000 kcmil\", null], \"t-\"]", "")]
    public void The_rows_of_a_table_by_size_are_all_the_sizes_in_order(
        string expected, string old, string replacement, string old2 = "", string replacement2 = "")
    {
        string text = CompilerSamples.Change(CompilerSamples.TableBySize, (old, replacement));
        text = old2.Length == 0 ? text : CompilerSamples.Change(text, (old2, replacement2));
        Assert.Equal(expected, CompilerSamples.ErrorsOf(CompilerSamples.TableFile, text));
    }

    [Fact]
    public void A_table_and_its_blocks_are_not_empty()
    {
        string noRows = CompilerSamples.Change(
            CompilerSamples.Table,
            ("[\"first\", [\"1\", \"2\"], \"to\"],", string.Empty),
            ("[\"second\", [\"3\", null], \"t-\"]", string.Empty));
        Assert.Equal("ERD1007:13", CompilerSamples.ErrorsOf(CompilerSamples.TableFile, noRows));

        string noColumns = CompilerSamples.Change(CompilerSamples.Table, ("[\"cu\", \"al\"]", "[]"));
        Assert.StartsWith("ERD1007:7 ", CompilerSamples.ErrorsOf(CompilerSamples.TableFile, noColumns), StringComparison.Ordinal);

        string noEditions = CompilerSamples.Change(
            CompilerSamples.Table,
            ("{ \"2014\": \"1.1\", \"2017\": \"1.1\", \"2020\": \"1.1\" }", "{}"),
            ("\"2023\":", "\"2014\": \"x\", \"2017\": \"x\", \"2020\": \"x\", \"2023\":"));
        Assert.Equal("ERD1007:12", CompilerSamples.ErrorsOf(CompilerSamples.TableFile, noEditions));
    }

    [Fact]
    public void The_key_has_its_form()
    {
        string text = CompilerSamples.Change(CompilerSamples.Table, ("sample.table", "Sample_table"));
        Assert.Equal("ERD1009:2", CompilerSamples.ErrorsOf("Sample_table.json", text));
    }

    [Fact]
    public void An_id_of_a_block_stands_once()
    {
        const string rows = "[[\"first\", [\"1\", \"2\"], \"to\"]]";
        const string second = $"{{ \"id\": \"a\", \"editions\": {{ \"2023\": \"2.2\" }}, \"rows\": {rows}, \"sources\": [\"s1\"] }}";
        string text = CompilerSamples.Change(
            CompilerSamples.Table,
            ("    }\n  ],", "    },\n" + second + "\n  ],"),
            ("\"2023\": \"not verified\", ", string.Empty));
        Assert.Equal("ERD1010:19", CompilerSamples.ErrorsOf(CompilerSamples.TableFile, text));
    }

    [Fact]
    public void Two_tables_with_the_same_class_collide()
    {
        DataFolder data = CompilerSamples.Read(
            ("sample.table.json", CompilerSamples.Table),
            ("sample-table.json", CompilerSamples.Change(CompilerSamples.Table, ("sample.table", "sample-table"))));
        DataError error = Assert.Single(data.Errors);
        Assert.Equal((DataErrorCode.IdentifiersCollide, 1), (error.Code, error.Line));
    }

    [Fact]
    public void A_text_that_is_not_UTF8_is_no_JSON()
    {
        byte[] bytes = [.. "{\n\"key\": \""u8, 0xFF, .. "\" }"u8];
        DataFolder data = DataFolder.Read(new Dictionary<string, byte[]> { [CompilerSamples.TableFile] = bytes });
        Assert.Equal((DataErrorCode.NotJson, 2), (Assert.Single(data.Errors).Code, data.Errors[0].Line));
    }

    [Fact]
    public void All_errors_of_all_files_are_reported_at_once()
    {
        DataFolder data = CompilerSamples.Read(
            (CompilerSamples.TableFile, CompilerSamples.Change(CompilerSamples.Table, ("\"A\"", "\"amp\""), ("\"to\"", "\"tx\""))),
            (DataFolder.RulesFile, CompilerSamples.Change(CompilerSamples.Rules, ("ER9010", "X"))));
        Assert.Equal(
            ["rules.json(3): error ERD1080", "sample.table.json(4): error ERD1023", "sample.table.json(14): error ERD1026"],
            data.Errors.Select(error => string.Join(':', error.ToString().Split(':')[..2])));
    }
}
