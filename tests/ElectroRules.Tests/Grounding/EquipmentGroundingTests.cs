using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Tests.Support;

namespace ElectroRules.Tests.Grounding;

public class EquipmentGroundingTests
{
    /// <summary>Copper sizes as at https://brunsengineering.com/nec-table-250-122/; each device and the one just above it.</summary>
    private static readonly (double Device, string Size)[] Copper =
    [
        (15, "14 AWG"), (20, "12 AWG"), (60, "10 AWG"), (100, "8 AWG"), (200, "6 AWG"), (300, "4 AWG"), (400, "3 AWG"), (500, "2 AWG"),
        (600, "1 AWG"), (800, "1/0 AWG"), (1000, "2/0 AWG"), (1200, "3/0 AWG"), (1600, "4/0 AWG"), (2000, "250 kcmil"), (2500, "350 kcmil"),
        (3000, "400 kcmil"), (4000, "500 kcmil"), (5000, "700 kcmil"), (6000, "800 kcmil"),
    ];

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void The_size_changes_just_above_each_rating(EditionId edition)
    {
        for (int i = 0; i < Copper.Length; i++)
        {
            Assert.Equal(Copper[i].Size, Size(edition, Copper[i].Device));
            if (i + 1 < Copper.Length)
            {
                Assert.Equal(Copper[i + 1].Size, Size(edition, Copper[i].Device + 0.1));
            }
        }

        RuleSet rules = RuleSet.For(edition);
        Assert.Equal("device-above-table", Answer.NotCovered(EquipmentGrounding.Size(rules, Given.Ground(6000.1, ConductorSize.Kcmil2000))).Code);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void It_goes_by_the_device_and_not_by_the_load(EditionId edition)
    {
        // A 16 A load on a 30 A device: 10 AWG, not 14 AWG. Common practice, no source.
        RuleSet rules = RuleSet.For(edition);
        Assert.Equal(ConductorSize.Awg10, Answer.Of(rules, EquipmentGrounding.Size(rules, Given.Ground(30, ConductorSize.Awg10))).Size);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void It_grows_with_conductors_made_larger_for_drop(EditionId edition)
    {
        // https://www.ecmag.com/magazine/articles/article-detail/equipment-grounding-controls--cqd-spotlight
        RuleSet rules = RuleSet.For(edition);
        Assert.Equal(ConductorSize.Awg6, Answer.Of(rules, EquipmentGrounding.Size(rules, Given.Ground(20, ConductorSize.Awg6, ConductorSize.Awg12))).Size);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void It_is_never_larger_than_the_circuit_conductors_of_the_same_metal(EditionId edition)
    {
        RuleSet rules = RuleSet.For(edition);
        EquipmentGroundingResult value = Answer.Of(rules, EquipmentGrounding.Size(rules, Given.Ground(60, ConductorSize.Awg12)));
        Assert.Equal((ConductorSize.Awg12, ConductorSize.Awg10, true), (value.Size, value.TableSize, value.HeldToCircuitConductors));
    }

    /// <summary>Only the 2017 edition counts from the size before correction: from memory.</summary>
    [Theory]
    [InlineData(EditionId.Nec2014, 1)]
    [InlineData(EditionId.Nec2017, 1.5896)]
    [InlineData(EditionId.Nec2020, 1)]
    [InlineData(EditionId.Nec2023, 1)]
    public void What_it_grows_from_goes_by_the_edition(EditionId edition, double ratio)
    {
        RuleSet rules = RuleSet.For(edition);
        EquipmentGroundingRequest request = Given.Ground(20, ConductorSize.Awg10) with
        {
            SmallestAfterCorrection = ConductorSize.Awg10,
            SmallestBeforeCorrection = ConductorSize.Awg12,
        };
        EquipmentGroundingResult value = Answer.Of(rules, EquipmentGrounding.Size(rules, request));
        Assert.Equal(ratio, value.Increase.DecimalFractions, 1e-4);
        Assert.Equal(ratio > 1 ? ConductorSize.Awg10 : ConductorSize.Awg12, value.Size);
    }

    [Theory]
    [InlineData(EditionId.Nec2014, "/smallestAfterCorrection")]
    [InlineData(EditionId.Nec2017, "/smallestBeforeCorrection")]
    [InlineData(EditionId.Nec2020, "/smallestAfterCorrection")]
    [InlineData(EditionId.Nec2023, "/smallestAfterCorrection")]
    public void Missing_facts_are_named_together(EditionId edition, string basis)
    {
        RuleSet rules = RuleSet.For(edition);
        EquipmentGroundingRequest request = Given.Ground(20, ConductorSize.Awg12);
        EquipmentGroundingRequest without = request with { SmallestAfterCorrection = null, SmallestBeforeCorrection = null };
        Assert.Equal([basis], Answer.Needs(EquipmentGrounding.Size(rules, without)));
        Assert.Equal(["/device"], Answer.Needs(EquipmentGrounding.Size(rules, request with { Device = null })));
        Assert.Equal(
            ["/device", "/installedSize", basis],
            Answer.Needs(EquipmentGrounding.Size(rules, without with { Device = null, InstalledSize = null })));
    }

    [Fact]
    public void The_needed_conductors_cannot_be_larger_than_those_installed()
    {
        EquipmentGroundingRequest request = Given.Ground(20, ConductorSize.Awg12);
        RuleSet rules = RuleSet.For(EditionId.Nec2017);
        ArgumentException after = Assert.Throws<ArgumentException>(
            () => EquipmentGrounding.Size(rules, request with { SmallestAfterCorrection = ConductorSize.Awg10 }));
        Assert.Equal("SmallestAfterCorrection", after.ParamName);
        ArgumentException before = Assert.Throws<ArgumentException>(
            () => EquipmentGrounding.Size(rules, request with { SmallestAfterCorrection = null, SmallestBeforeCorrection = ConductorSize.Awg10 }));
        Assert.Equal("SmallestBeforeCorrection", before.ParamName);
    }

    private static string Size(EditionId edition, double device)
    {
        RuleSet rules = RuleSet.For(edition);
        return Answer.Of(rules, EquipmentGrounding.Size(rules, Given.Ground(device, ConductorSize.Kcmil2000))).Size.Label();
    }
}
