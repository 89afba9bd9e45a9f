using System.Text.Json;
using ElectroRules.Conductors;
using ElectroRules.Tests.Support;
using ElectroRules.Tests.Tables;
using FsCheck.Xunit;

namespace ElectroRules.Tests.Conductors;

/// <summary>The bare search against a slow reading of the data file, and what must hold of every drop.</summary>
[Properties(MaxTest = 400, Replay = "2111,4099", QuietOnSuccess = true)]
public class SearchAndDropProperties
{
    private static readonly double?[] Ampacities = ReadAmpacities();

    [Property]
    public void The_bare_search_agrees_with_a_plain_reading_of_the_data(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(EditionId.Nec2020);
        double need = draw.Yes() ? draw.Between(0.1, 700) : draw.Pick([15.0, 20, 25, 30, 55, 100, 115, 665]);
        ConductorMaterial material = draw.Choice<ConductorMaterial>();
        TerminationRating insulation = draw.Choice<TerminationRating>();
        TerminationRating terminations = draw.Choice<TerminationRating>();
        double factor = draw.Yes() ? 1 : draw.Between(0.2, 1.15);
        Assert.Equal(
            Slow(need, material, insulation, terminations, factor),
            ConductorSearch.Smallest(rules, Given.Amperes(need), material, insulation, terminations, Given.Share(factor)));
    }

    [Property]
    public void A_longer_run_or_more_current_never_loses_less(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        VoltageDropRequest request = draw.Drop();
        VoltageDropResult value = Answer.Of(rules, VoltageDrop.Compute(rules, request));
        VoltageDropResult longer = Answer.Of(rules, VoltageDrop.Compute(rules, request with { Length = request.Length!.Value * (1 + draw.Between(0, 2)) }));
        VoltageDropResult more = Answer.Of(rules, VoltageDrop.Compute(rules, request with { Current = request.Current!.Value * (1 + draw.Between(0, 2)) }));
        Assert.True(longer.Drop >= value.Drop);
        Assert.True(more.Drop >= value.Drop);
        Assert.True((longer.SmallestSize ?? ConductorSize.Kcmil2000) >= (value.SmallestSize ?? ConductorSize.Kcmil2000));
        Assert.True(more.LongestRun <= value.LongestRun);
    }

    /// <summary>With direct-current resistance; reactance does not fall as steadily in the printed table.</summary>
    [Property]
    public void A_larger_conductor_never_loses_more(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        VoltageDropRequest request = draw.Drop() with { Impedance = ImpedanceMethod.DcResistance, Size = (ConductorSize)(3 + draw.Count(26)) };
        VoltageDropResult value = Answer.Of(rules, VoltageDrop.Compute(rules, request));
        VoltageDropResult larger = Answer.Of(rules, VoltageDrop.Compute(rules, request with { Size = request.Size + 1 }));
        Assert.True(larger.Drop <= value.Drop, $"{request.Size} {request.Material}");
    }

    [Property]
    public void The_longest_run_and_the_smallest_size_keep_the_limit(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        VoltageDropRequest request = draw.Drop();
        VoltageDropResult value = Answer.Of(rules, VoltageDrop.Compute(rules, request));
        VoltageDropResult atLongest = Answer.Of(rules, VoltageDrop.Compute(rules, request with { Length = value.LongestRun }));
        Assert.Equal(value.LimitShare.DecimalFractions, atLongest.Share.DecimalFractions, 1e-9);
        if (value.SmallestSize is not { } size)
        {
            return;
        }

        Assert.True(Answer.Of(rules, VoltageDrop.Compute(rules, request with { Size = size })).Share.DecimalFractions <= 0.03 + 1e-9);
    }

    [Property]
    public void The_unit_of_a_fact_does_not_matter(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        VoltageDropRequest request = draw.Drop();
        VoltageDropRequest other = request with
        {
            Current = request.Current!.Value.ToUnit(UnitsNet.Units.ElectricCurrentUnit.Milliampere),
            SourceVoltage = request.SourceVoltage!.Value.ToUnit(UnitsNet.Units.ElectricPotentialUnit.Kilovolt),
            Length = request.Length!.Value.ToUnit(UnitsNet.Units.LengthUnit.Meter),
            PowerFactor = request.PowerFactor!.Value.ToUnit(UnitsNet.Units.RatioUnit.Percent),
        };
        VoltageDropResult a = Answer.Of(rules, VoltageDrop.Compute(rules, request));
        VoltageDropResult b = Answer.Of(rules, VoltageDrop.Compute(rules, other));
        Assert.Equal(a.Drop.Volts, b.Drop.Volts, 1e-6);
        Assert.Equal(a.SmallestSize, b.SmallestSize);
    }

    private static ConductorSize? Slow(double need, ConductorMaterial material, TerminationRating insulation, TerminationRating terminations, double factor)
    {
        int metal = material == ConductorMaterial.Copper ? 0 : 3;

        // 14 AWG copper and 12 AWG aluminum are the smallest for general wiring: from memory.
        ConductorSize first = material == ConductorMaterial.Copper ? ConductorSize.Awg14 : ConductorSize.Awg12;
        for (ConductorSize size = first; size <= ConductorSize.Kcmil2000; size++)
        {
            int row = ((int)size - 1) * 6;
            double? corrected = Ampacities[row + metal + (int)insulation - 1] * factor;
            double? ceiling = Ampacities[row + metal + (int)terminations - 1];
            if (corrected >= need * (1 - 1e-9) && ceiling >= need * (1 - 1e-9))
            {
                return size;
            }
        }

        return null;
    }

    private static double?[] ReadAmpacities()
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(Path.Combine(RepositoryFiles.Data, "conductor.ampacity.json")));
        return [.. DataFileEdition.Read(document.RootElement, "2020").Values];
    }
}
