using System.Globalization;
using ElectroRules.Conductors;
using ElectroRules.Results;
using ElectroRules.TableCompiler;
using ElectroRules.Tables;

namespace ElectroRules.Tests.Tables;

/// <summary>The closed lists of the table compiler are those of the library.</summary>
public class VocabularyTests
{
    [Fact]
    public void Editions_are_the_same() =>
        Assert.Equal(
            Editions.All.Select(edition => (((int)edition).ToString(CultureInfo.InvariantCulture), edition.ToString())),
            Vocabulary.Editions);

    [Fact]
    public void Units_are_the_same() =>
        Assert.Equal(Enum.GetNames<QuantityUnit>(), Vocabulary.Units.Select(unit => unit.Member));

    [Fact]
    public void Codes_of_units_are_those_of_the_library_but_for_the_numbers_of_several_kinds()
    {
        string[] ownCodes = ["count", Vocabulary.SizeUnit, Vocabulary.YesNoUnit];
        foreach ((string code, string member) in Vocabulary.Units)
        {
            string expected = Enum.Parse<QuantityUnit>(member).Code();
            Assert.Equal(expected, ownCodes.Contains(code) ? "1" : code);
        }
    }

    [Fact]
    public void Sizes_are_the_same() =>
        Assert.Equal(
            ConductorSizes.All.Select(size => (size.Label(), (int)size)),
            Vocabulary.Sizes.Select(size => (size, Vocabulary.OrdinalOf(size))));

    [Fact]
    public void Lookups_are_the_same() => SameMembers<RowLookup>(Vocabulary.Lookups);

    [Fact]
    public void Directions_are_the_same() => SameMembers<StricterDirection>(Vocabulary.Directions);

    [Fact]
    public void Confidences_are_the_same() => SameMembers<Confidence>(Vocabulary.Confidences);

    [Fact]
    public void Kinds_of_rules_are_those_of_citations_but_for_amendments() =>
        Assert.Equal(
            Enum.GetValues<CitationKind>().Where(kind => kind != CitationKind.Amendment).Select(kind => kind.ToString()),
            Vocabulary.RuleKinds.Select(kind => kind.Member));

    [Fact]
    public void Letters_are_those_that_the_library_reads()
    {
        for (char letter = ' '; letter <= '~'; letter++)
        {
            bool known = Record.Exception(() => ConfidenceLetters.Read(letter)) is null;
            Assert.Equal(known, Vocabulary.Letters.Contains(letter, StringComparison.Ordinal));
        }
    }

    private static void SameMembers<T>(IReadOnlyList<(string Code, string Member)> list)
        where T : struct, Enum =>
        Assert.Equal(Enum.GetNames<T>(), list.Select(entry => entry.Member));
}
