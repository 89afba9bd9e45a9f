using ElectroRules.Conductors;
using ElectroRules.Results;
using ElectroRules.Tests.Support;
using FsCheck.Xunit;
using UnitsNet;

namespace ElectroRules.Tests.Conductors;

/// <summary>What must hold of every run: more heat, more company or a weaker end never give more ampacity.</summary>
[Properties(MaxTest = 400, Replay = "7177,1307", QuietOnSuccess = true)]
public class AmpacityProperties
{
    [Property]
    public void Every_answer_can_be_redone(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        DerivationReplay.Verify(rules, Ampacity.Determine(rules, draw.Ampacity()));
        DerivationReplay.Verify(rules, SmallestConductor.Determine(rules, Load(draw, draw.Between(0.1, 500))));
    }

    [Property]
    public void A_hotter_place_never_gives_more(int seed) => NeverMore(seed, (draw, segment) => segment with
    {
        Ambient = Given.Celsius(segment.Ambient!.Value.DegreesCelsius + draw.Between(0, 30)),
    });

    [Property]
    public void More_conductors_together_never_give_more(int seed) => NeverMore(seed, (draw, segment) => segment with
    {
        OtherCurrentCarryingConductors = segment.OtherCurrentCarryingConductors + draw.Count(20),
        OtherCables = segment.OtherCables + draw.Count(3),
    });

    [Property]
    public void Thermal_insulation_never_gives_more(int seed) =>
        NeverMore(seed, (_, segment) => segment with { InThermalInsulation = false }, (_, segment) => segment with { InThermalInsulation = true });

    [Property]
    public void A_lower_marking_of_a_termination_never_gives_more(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        AmpacityRequest request = draw.Ampacity();
        double before = double.PositiveInfinity;
        foreach (TerminationRating rating in new[] { TerminationRating.C90, TerminationRating.C75, TerminationRating.C60 })
        {
            double ampacity = Usable(rules, request with { Run = request.Run with { LoadTermination = rating } });
            Assert.True(ampacity <= before);
            before = ampacity;
        }
    }

    [Property]
    public void The_order_of_the_stretches_does_not_matter(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        AmpacityRequest request = draw.Ampacity();
        AmpacityRequest shuffled = request with { Run = request.Run with { Route = draw.Shuffled(request.Run.Route) } };
        Assert.Equal(Usable(rules, request), Usable(rules, shuffled));
    }

    [Property]
    public void A_larger_conductor_never_has_less(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        AmpacityRequest request = draw.Ampacity() with { Size = (ConductorSize)(4 + draw.Count(25)) };

        // A limit of a cable in insulation holds only up to a size, so a larger one only ever gains.
        Assert.True(Usable(rules, request) <= Usable(rules, request with { Size = request.Size + 1 }));
    }

    [Property]
    public void More_load_never_takes_a_smaller_conductor(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        double load = draw.Between(0.1, 600);
        SmallestConductorRequest request = Load(draw, load);
        SmallestConductorRequest more = request with { Continuous = Given.Amperes(request.Continuous!.Value.Amperes + draw.Between(0, 100)) };
        Assert.True(SizeOf(rules, request) <= SizeOf(rules, more));
        Assert.True(SizeOf(rules, request with { HundredPercentRated = true }) <= SizeOf(rules, request));
    }

    [Property]
    public void The_smallest_conductor_carries_its_load_and_the_next_smaller_one_does_not(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        SmallestConductorRequest request = Load(draw, draw.Between(0.1, 400)) with { HundredPercentRated = true };
        Determination<SmallestConductorResult> answer = SmallestConductor.Determine(rules, request);
        if (answer.Status != DeterminationStatus.Determined)
        {
            return;
        }

        double load = request.Continuous!.Value.Amperes + request.Noncontinuous!.Value.Amperes;
        var asked = new AmpacityRequest { Size = answer.Value.Size, Run = request.Run, CircuitRating = request.CircuitRating };
        Assert.True(Usable(rules, asked) >= load * (1 - 1e-9));
        Assert.Equal(answer.Value.Ampacity.Amperes, Usable(rules, asked));
    }

    [Property]
    public void The_unit_of_a_fact_does_not_matter(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        SmallestConductorRequest request = Load(draw, draw.Between(0.1, 400));
        SmallestConductorRequest other = request with
        {
            Continuous = request.Continuous!.Value.ToUnit(UnitsNet.Units.ElectricCurrentUnit.Kiloampere),
            Noncontinuous = request.Noncontinuous!.Value.ToUnit(UnitsNet.Units.ElectricCurrentUnit.Milliampere),
            CircuitRating = request.CircuitRating!.Value.ToUnit(UnitsNet.Units.ElectricCurrentUnit.Kiloampere),
            Run = request.Run with { Route = [.. request.Run.Route.Select(InOtherUnits)] },
        };
        Assert.Equal(SizeOf(rules, request), SizeOf(rules, other));
        AmpacityRequest ampacity = draw.Ampacity();
        AmpacityRequest converted = ampacity with { Run = ampacity.Run with { Route = [.. ampacity.Run.Route.Select(InOtherUnits)] } };
        Assert.Equal(Usable(rules, ampacity), Usable(rules, converted), 1e-6);
    }

    [Property]
    public void The_culture_does_not_matter(int seed)
    {
        string expected = TestCulture.Under(string.Empty, () => Everything(seed));
        Assert.All(TestCulture.Names, culture => Assert.Equal(expected, TestCulture.Under(culture, () => Everything(seed))));
    }

    private static string Everything(int seed)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        Determination<ConductorAmpacity> answer = Ampacity.Determine(rules, draw.Ampacity());
        IEnumerable<string> steps = answer.Derivation.Select(
            s => FormattableString.Invariant($"{s.Rule}/{s.Name}={s.Value:R} {s.Unit.Code()} {s.Cell?.Table}[{s.Cell?.Row},{s.Cell?.Column}] {s.Subject?.ConductorSize} {s.Subject?.Item} {s.Citation.Section}"));
        IEnumerable<string> findings = answer.Findings.Select(f => $"{f.Rule}/{f.Code} {f.Path}");
        return string.Join('\n', [$"{answer.Status} {answer.NotCovered?.Detail}", .. steps, .. findings]);
    }

    private static RouteSegment InOtherUnits(RouteSegment segment) => segment with
    {
        Length = segment.Length!.Value.ToUnit(UnitsNet.Units.LengthUnit.Meter),
        Ambient = segment.Ambient!.Value.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeFahrenheit),
        HeightAboveRoof = segment.HeightAboveRoof?.ToUnit(UnitsNet.Units.LengthUnit.Millimeter),
    };

    private static void NeverMore(int seed, Func<Draw, RouteSegment, RouteSegment> worse) => NeverMore(seed, (_, s) => s, worse);

    private static void NeverMore(int seed, Func<Draw, RouteSegment, RouteSegment> first, Func<Draw, RouteSegment, RouteSegment> worse)
    {
        var draw = new Draw(seed);
        RuleSet rules = RuleSet.For(draw.Edition());
        AmpacityRequest request = draw.Ampacity();
        RouteSegment[] route = [.. request.Run.Route];
        int place = draw.Place(route.Length);
        route[place] = first(draw, route[place]);
        double before = Usable(rules, request with { Run = request.Run with { Route = [.. route] } });
        route[place] = worse(draw, route[place]);
        Assert.True(Usable(rules, request with { Run = request.Run with { Route = route } }) <= before * (1 + 1e-12));
    }

    private static SmallestConductorRequest Load(Draw draw, double load) => new()
    {
        Run = draw.Run(),
        Continuous = Given.Amperes(draw.Yes() ? load : 0),
        Noncontinuous = Given.Amperes(load),
        CircuitRating = Given.Amperes(draw.Pick([20.0, 60, 100, 125, 400])),
        TerminalTest = draw.Choice<TerminalTest>(),
    };

    /// <summary>What may be used; nothing where there is no answer.</summary>
    private static double Usable(RuleSet rules, AmpacityRequest request) =>
        Ampacity.Determine(rules, request).TryGetValue(out ConductorAmpacity? value) ? value.Ampacity.Amperes : 0;

    private static int SizeOf(RuleSet rules, SmallestConductorRequest request) =>
        SmallestConductor.Determine(rules, request).TryGetValue(out SmallestConductorResult? value) ? (int)value.Size : int.MaxValue;
}
