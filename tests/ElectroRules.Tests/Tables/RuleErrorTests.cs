using ElectroRules.TableCompiler;

namespace ElectroRules.Tests.Tables;

/// <summary>Every kind of error in the list of rules is found, with its code and its line.</summary>
public class RuleErrorTests
{
    [Fact]
    public void The_sample_is_correct() =>
        Assert.Equal(string.Empty, CompilerSamples.ErrorsOf(DataFolder.RulesFile, CompilerSamples.Rules));

    [Theory]
    [InlineData("ERD1003:3", "\"name\": \"FirstRule\"", "\"name\": \"FirstRule\", \"title\": \"x\"")]
    [InlineData("ERD1003:2", "\"rules\": [", "\"version\": \"1\", \"rules\": [")]
    [InlineData("ERD1004:6", "\"slug\": \"sample.second-rule\", ", "")]
    [InlineData("ERD1005:3", "\"FirstRule\"", "null")]
    [InlineData("ERD1006:4", "\"2014\": \"1.1\"", "\"2014\": \"\"")]
    [InlineData("ERD1010:6", "ER9020", "ER9010")]
    [InlineData("ERD1010:6", "sample.second-rule", "sample.first-rule")]
    [InlineData("ERD1010:6", "SecondRule", "FirstRule")]
    [InlineData("ERD1020:5", "\"absent\": {", "\"absent\": { \"1999\": \"old\",")]
    [InlineData("ERD1021:5", "\"absent\": {", "\"absent\": { \"2014\": \"old\",")]
    [InlineData("ERD1022:3", ", \"2023\": \"1.1\"", "")]
    [InlineData("ERD1080:3", "ER9010", "ER901")]
    [InlineData("ERD1080:3", "ER9010", "ER90x0")]
    [InlineData("ERD1081:6", "sample.second-rule", "sample.Second")]
    [InlineData("ERD1081:6", "sample.second-rule", "sample..rule")]
    [InlineData("ERD1082:6", "SecondRule", "secondRule")]
    [InlineData("ERD1082:6", "SecondRule", "Definitions")]
    [InlineData("ERD1083:6", "\"kind\": \"practice\"", "\"kind\": \"habit\"")]
    [InlineData("ERD1084:3", "\"one-source\"", "\"sure\"")]
    [InlineData("ERD1085:6", "\"confidence\": \"practice\"", "\"confidence\": \"practice\", \"sections\": { \"2014\": \"1.1\" }")]
    [InlineData("ERD1085:6", "\"confidence\": \"practice\"", "\"confidence\": \"practice\", \"absent\": { \"2014\": \"old\" }")]
    public void An_error_is_found_with_its_line(string expected, string old, string replacement) =>
        Assert.Equal(expected, CompilerSamples.ErrorsOf(DataFolder.RulesFile, CompilerSamples.Change(CompilerSamples.Rules, (old, replacement))));
}
