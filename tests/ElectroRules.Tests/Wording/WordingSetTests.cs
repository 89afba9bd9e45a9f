using ElectroRules.Results;
using ElectroRules.Wording;

namespace ElectroRules.Tests.Wording;

public sealed class WordingSetTests
{
    [Fact]
    public void A_second_language_needs_no_code_and_falls_back_to_English()
    {
        WordingSet spanish = WordingSet.FromJson("""{"material.copper": "cobre", "unit.Ampere": "{number} amperios"}""");
        Assert.Equal("cobre", spanish.Text("material.copper"));
        Assert.Equal("aluminum", spanish.Text("material.aluminum"));
        Assert.Equal("47.92 amperios", NumberWording.Write(spanish, 47.9166666, QuantityUnit.Ampere));
    }

    [Fact]
    public void All_faults_are_listed_at_once()
    {
        WordingException fault = Assert.Throws<WordingException>(() => WordingSet.FromJson(
            """{"no.such": "x", "word.yes": 1, "word.no": "a", "word.no": "b", "unit.Volt": "{nummer} V"}"""));
        Assert.Equal(4, fault.Faults.Count);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("")]
    public void What_is_not_an_object_is_refused(string json) => Assert.Throws<WordingException>(() => WordingSet.FromJson(json));

    [Theory]
    [InlineData(47.916666666666664, QuantityUnit.Ampere, "47.92 A")]
    [InlineData(60, QuantityUnit.Ampere, "60 A")]
    [InlineData(60.001, QuantityUnit.Ampere, "60.001 A")]
    [InlineData(59.99999999999999, QuantityUnit.Ampere, "60 A")]
    [InlineData(59.998, QuantityUnit.Ampere, "59.998 A")]
    [InlineData(0.87, QuantityUnit.One, "0.87")]
    [InlineData(1.7320508, QuantityUnit.One, "1.7321")]
    [InlineData(0.0031387, QuantityUnit.Ohm, "0.003139 Ω")]
    [InlineData(33.333333333, QuantityUnit.Kelvin, "33.33 K")]
    [InlineData(7, QuantityUnit.ConductorSize, "6 AWG")]
    [InlineData(1, QuantityUnit.YesNo, "yes")]
    public void Numbers_are_rounded_for_reading_but_never_seem_exact(double value, QuantityUnit unit, string text) =>
        Assert.Equal(text, NumberWording.Write(WordingSet.English, value, unit));

    [Theory]
    [InlineData(59.894, 59.8957)]
    [InlineData(0.03001, 0.03)]
    [InlineData(14.9999, 15)]
    [InlineData(100.0000004, 100)]
    public void Two_numbers_on_different_sides_never_read_the_same(double a, double b)
    {
        (string left, string right) = NumberWording.Compared(WordingSet.English, a, b, QuantityUnit.Ampere);
        Assert.NotEqual(left, right);
    }

    [Fact]
    public void Cautions_stand_in_their_order()
    {
        IReadOnlyList<string> cautions = Cautions.All(WordingSet.English);
        Assert.Equal(Cautions.Count, cautions.Count);
        Assert.Contains("lock", cautions[0], StringComparison.Ordinal);
        Assert.Contains("prove the meter again", cautions[1], StringComparison.Ordinal);
        Assert.Contains("stays live", cautions[2], StringComparison.Ordinal);
        Assert.Contains("inspector decides", cautions[5], StringComparison.Ordinal);
    }
}
