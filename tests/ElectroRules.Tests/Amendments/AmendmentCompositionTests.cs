using ElectroRules.Amendments;
using ElectroRules.Results;
using ElectroRules.Tables;
using FsCheck.Xunit;
using static ElectroRules.Tests.Amendments.AmendmentSamples;

namespace ElectroRules.Tests.Amendments;

public class AmendmentCompositionTests
{
    [Fact]
    public void The_complete_example_changes_its_cells_and_nothing_else()
    {
        RuleSet rules = Rules();
        RuleSet amended = rules.With(AmendmentReader.Read(Complete));

        Assert.Equal(4, amended.Table("conductor.minimum-size").Value("copper", "size"));
        Assert.Equal(0, amended.Table("wiring.methods").Value("nonmetallicSheathedCable", "permitted"));
        Assert.Equal(1, amended.Table("wiring.methods").Value("metalCladCable", "wet"));
        Assert.Equal(["springfield-2024"], amended.Stamp.Amendments);
        Assert.Equal("inspect-before-cover", Assert.Single(amended.Remarks).Code);
        Assert.Equal("springfield-2024", Assert.Single(amended.Amendments).Id);
        Assert.Equal(4, RuleSet.Diff(rules, amended).Count);
        Assert.Empty(rules.Stamp.Amendments);
        Assert.Equal(3, rules.Table("conductor.minimum-size").Value("copper", "size"));
    }

    [Fact]
    public void An_amended_cell_says_so()
    {
        ReferenceTable table = Rules().With(Of("a", Smallest(4))).Table("conductor.minimum-size");
        Citation amended = table.CiteCell(table.CellIndex(table.RowOf("copper"), 0));
        Citation other = table.CiteCell(table.CellIndex(table.RowOf("aluminum"), 0));

        Assert.Equal((CitationKind.Amendment, "a"), (amended.Kind, amended.Amendment));
        Assert.Equal((CitationKind.Code, (string?)null), (other.Kind, other.Amendment));
        Assert.Equal("a", table.AmendedBy("copper", "size"));
    }

    public static TheoryData<string, Func<CellChange, CellChange>> Faults => new()
    {
        { "ERD2010 a /changes/0/table", c => c with { Table = "no.table" } },
        { "ERD2011 a /changes/0/row", c => c with { Row = "gold" } },
        { "ERD2012 a /changes/0/column", c => c with { Column = "sise" } },
        { "ERD2014 a /changes/0/expects", c => c with { Expects = 4 } },
        { "ERD2014 a /changes/0/expects", c => c with { Expects = null } },
        { "ERD2015 a /changes/0/relaxes", c => c with { Value = 2 } },
        { "ERD2008 a /changes/0/value", c => c with { Value = double.NaN } },
        { "ERD2008 a /changes/0/value", c => c with { Value = double.PositiveInfinity } },
        { "ERD2008 a /changes/0/value", c => c with { Value = -1 } },
        { "ERD2008 a /changes/0/value", c => c with { Value = 31 } },
        { "ERD2008 a /changes/0/value", c => c with { Value = 4.5 } },
        { "ERD2008 a /changes/0/expects", c => c with { Expects = double.NaN } },
        { "ERD2006 a /changes/0/section", c => c with { Section = string.Empty } },
        { "ERD2015 a /changes/0/relaxes", _ => CellChange.ForbidMethod("metalCladCable", "L") with { Column = "wet", Expects = null } },
        { "ERD2015 a /changes/0/relaxes", _ => CellChange.ForbidMethod("metalCladCable", "L") with { Column = "wet", Expects = null, Value = 1 } },
        { "ERD2015 a /changes/0/relaxes", _ => CellChange.ForbidMethod("armoredCable", "L") with { Column = "wet", Expects = 0, Value = 1 } },
        { "ERD2014 a /changes/0/expects", _ => CellChange.ForbidMethod("armoredCable", "L") with { Column = "wet" } },
        { "ERD2015 a /changes/0/relaxes", c => c with { Table = "overcurrent.factors", Row = "continuous-load", Column = "value", Expects = 1.25, Value = 1.5 } },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void One_fault_is_one_error(string expected, Func<CellChange, CellChange> spoil)
    {
        ArgumentNullException.ThrowIfNull(spoil);
        Assert.Equal([expected], Errors(() => Rules().With(Of("a", spoil(Smallest(4))))));
    }

    [Fact]
    public void A_marked_relaxation_and_a_marked_tightening_both_stand()
    {
        Assert.Equal(2, Rules().With(Of("a", Smallest(2) with { Relaxes = true })).Table("conductor.minimum-size").Value("copper", "size"));
        Assert.Equal(4, Rules().With(Of("a", Smallest(4) with { Relaxes = true })).Table("conductor.minimum-size").Value("copper", "size"));
    }

    [Fact]
    public void An_amendment_for_another_edition_is_refused() => Assert.Equal(
        ["ERD2017 a /editions"],
        Errors(() => RuleSet.For(EditionId.Nec2020).With(Of("a", Smallest(4)))));

    [Fact]
    public void A_table_that_the_edition_does_not_have_cannot_be_amended() => Assert.Equal(
        ["ERD2013 a /changes/0/table"],
        Errors(() => RuleSet.For(EditionId.Nec2026).With(Of("a", Smallest(4)) with { Editions = [EditionId.Nec2026] })));

    [Fact]
    public void Nothing_is_half_done_and_all_errors_are_told()
    {
        RuleSet rules = Rules();
        Amendment good = Of("a", Smallest(4));
        Amendment bad = Of("b", CellChange.ForbidMethod("armoredCable", "L"), Smallest(5) with { Row = "gold", Column = "x" });

        Assert.Equal(["ERD2011 b /changes/1/row", "ERD2012 b /changes/1/column"], Errors(() => rules.With([good, bad])).Order(StringComparer.Ordinal));
        Assert.Same(rules, RuleSet.For(EditionId.Nec2023));
        Assert.Empty(RuleSet.Diff(rules, RuleSet.For(EditionId.Nec2023)));
        Assert.Equal(3, rules.Table("conductor.minimum-size").Value("copper", "size"));
        Assert.Equal(1, rules.Table("wiring.methods").Value("armoredCable", "permitted"));
    }

    [Fact]
    public void Two_amendments_on_one_cell_conflict_in_any_order_and_one_by_one()
    {
        Amendment a = Of("a", Smallest(4));
        Amendment b = Of("b", Smallest(5));
        string[] expected = ["ERD2016 a /changes/0", "ERD2016 b /changes/0"];

        Assert.Equal(expected, Errors(() => Rules().With([a, b])));
        Assert.Equal(expected, Errors(() => Rules().With([b, a])));
        Assert.Equal(expected, Errors(() => Rules().With(b).With(a)));
    }

    [Fact]
    public void A_circle_of_superseding_is_refused() => Assert.Equal(
        ["ERD2019 a /supersedes", "ERD2019 b /supersedes"],
        Errors(() => Rules().With([Of("a") with { Supersedes = ["b"] }, Of("b") with { Supersedes = ["a"] }])));

    [Fact]
    public void The_same_id_twice_is_refused()
    {
        Assert.Contains("ERD2018 a /id", Errors(() => Rules().With([Of("a"), Of("a")])));
        Assert.Contains("ERD2018 a /id", Errors(() => Rules().With(Of("a")).With(Of("a"))));
    }

    [Property(MaxTest = 50)]
    public void The_order_of_amendments_never_decides(int seed, bool oneByOne)
    {
        Amendment[] all =
        [
            Of("a", Smallest(4), CellChange.ForbidMethod("armoredCable", "L 2")),
            Of("b", Smallest(5)) with { Supersedes = ["a", "not-there"] },
            Of("c", Smallest(6)) with { Supersedes = ["b"] },
            Of("d", CellChange.ForbidMethod("rigidPvcConduit", "L 3")),
        ];
        new Random(seed).Shuffle(all);
        // One by one: b must be there before c meets a, so the chain is given in its own order and d anywhere between.
        RuleSet amended = oneByOne
            ? all.OrderBy(x => x.Id is "d" ? Array.IndexOf(all, x) : x.Id[0] - 'a').Aggregate(Rules(), (rules, x) => rules.With(x))
            : Rules().With(all);

        Assert.Equal(["a", "b", "c", "d"], amended.Stamp.Amendments);
        Assert.Equal(6, amended.Table("conductor.minimum-size").Value("copper", "size"));
        Assert.Equal("c", amended.Table("conductor.minimum-size").AmendedBy("copper", "size"));
        Assert.Equal("a", amended.Table("wiring.methods").AmendedBy("armoredCable", "permitted"));
        Assert.Equal("d", amended.Table("wiring.methods").AmendedBy("rigidPvcConduit", "permitted"));
    }

    [Fact]
    public void No_amendment_gives_the_same_rule_set_and_null_is_the_callers_mistake()
    {
        Assert.Same(Rules(), Rules().With([]));
        Assert.Throws<ArgumentException>("amendments", () => Rules().With([null!]));
        Assert.Throws<ArgumentNullException>("amendment", () => Rules().With((Amendment)null!));
    }
}
