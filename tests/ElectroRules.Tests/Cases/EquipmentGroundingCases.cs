using ElectroRules.Grounding;
using ElectroRules.Tests.Support;

namespace ElectroRules.Tests.Cases;

/// <summary>Published examples of equipment grounding conductors made larger with the circuit; each case carries its source.</summary>
public class EquipmentGroundingCases
{
    internal static CaseRunners Runners { get; } = new("equipment-grounding", new Dictionary<string, Action<PublishedCase, RuleSet>>
    {
        ["egc-20A-12-to-6"] = (c, r) => Size(c, r),
        ["egc-20A-12-to-10"] = (c, r) => Size(c, r),
        ["egc-3/0-to-500"] = (c, r) => WithRatio(c, r, 0.02),
        ["egc-300A-250-to-350"] = (c, r) => WithRatio(c, r, 1e-9),
    });

    public static TheoryData<string, EditionId> Data => Runners.Data();

    [Theory]
    [MemberData(nameof(Data))]
    public void Comes_out_as_published(string id, EditionId edition) => Runners.Run(id, edition);

    private static EquipmentGroundingResult Size(PublishedCase c, RuleSet rules)
    {
        EquipmentGroundingResult value = Answer.Of(
            rules, EquipmentGrounding.Size(rules, Given.Ground(c.In("ocpd_A"), c.InSize("installed"), c.InSize("base"))));
        Assert.Equal(c.InSize("base_egc"), value.TableSize);
        Assert.Equal(c.OutSize("egc"), value.Size);
        return value;
    }

    private static void WithRatio(PublishedCase c, RuleSet rules, double tolerance)
    {
        Assert.Equal(c.Out("ratio"), Size(c, rules).Increase.DecimalFractions, tolerance);
        var answer = EquipmentGrounding.Size(rules, Given.Ground(c.In("ocpd_A"), c.InSize("installed"), c.InSize("base")));
        double ratio = Answer.Step(answer, "ratio");
        Assert.Equal(c.Out("required_cmil") / c.Out("ratio") * ratio, Answer.Step(answer, "required-area"), 1e-6);
    }
}
