using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tests.Support;

namespace ElectroRules.Tests.Overcurrent;

/// <summary>
/// Classic mistakes about overcurrent devices: the answer of the novice must not come out.
/// The list of mistakes is common practice, no source; a published source stands beside a check that has one.
/// </summary>
public class OvercurrentTrapTests
{
    [Theory]
    [InlineData(CircuitConnection.LineToNeutral, 1)]
    [InlineData(CircuitConnection.LineToLine, 2)]
    [InlineData(CircuitConnection.ThreePhase, 3)]
    public void Poles_do_not_add_up(CircuitConnection connection, int poles)
    {
        OvercurrentSelection value = Select(EditionId.Nec2023, Given.Device(24) with { Connection = connection });
        Assert.Equal((30, poles), (value.Device.Rating.Amperes, value.Device.Poles));
    }

    /// <summary>10 AWG: https://www.voltexam.com/questions/electrician/conductors-and-ampacity; 14 and 12 AWG: common practice, no source.</summary>
    [Theory]
    [InlineData(ConductorSize.Awg14, 25, 15)]
    [InlineData(ConductorSize.Awg12, 30, 20)]
    [InlineData(ConductorSize.Awg10, 40, 30)]
    [InlineData(ConductorSize.Awg8, 55, 60)]
    public void A_small_conductor_has_a_limit_of_its_own(ConductorSize size, double ampacity, double largest)
    {
        foreach (EditionId edition in VerifiedEditions.List)
        {
            Assert.Equal(largest, Largest(edition, Given.Protecting(ampacity, size)));
        }
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void The_factor_for_continuous_load_is_applied_once(EditionId edition)
    {
        // A 40 A charger: 50 A, not 70 A.
        Assert.Equal(50, Select(edition, Given.Device(40)).Device.Rating.Amperes);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void A_20_ampere_circuit_carries_16_amperes_continuously(EditionId edition)
    {
        // 16 A of 20 A: https://www.formsbank.com/template/123203/king-electric-breaker-size-chart.html
        Assert.Equal(20, Select(edition, Given.Device(16)).Device.Rating.Amperes);
        Assert.Equal(25, Select(edition, Given.Device(16.01)).Device.Rating.Amperes);
        Assert.Equal(20, Select(edition, Given.Device(20) with { HundredPercentRated = true }).Device.Rating.Amperes);
        Assert.Equal(20, Select(edition, Given.Device(0, 20)).Device.Rating.Amperes);
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void Receptacle_circuits_are_not_rounded_up(EditionId edition)
    {
        Assert.Equal(15, Largest(edition, Given.Protecting(17.5, ConductorSize.Awg12, receptacles: true)));
        Assert.Equal(20, Largest(edition, Given.Protecting(17.5, ConductorSize.Awg12)));
        Assert.Equal(15, Largest(edition, Given.Protecting(17.5, ConductorSize.Awg12) with { NoNextSizeUp = true }));
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void A_bundle_at_13_and_a_half_amperes_never_has_a_15_ampere_receptacle_circuit(EditionId edition)
    {
        RuleSet rules = RuleSet.For(edition);
        Assert.Equal(15, Largest(edition, Given.Protecting(13.5, ConductorSize.Awg12)));
        var answer = OvercurrentDevice.Select(rules, Given.Protecting(13.5, ConductorSize.Awg12, receptacles: true));
        if (edition == EditionId.Nec2023)
        {
            // A 10 A breaker came with this edition.
            Assert.Equal(10, Answer.Of(rules, answer).Largest?.Amperes);
        }
        else
        {
            Assert.Equal("no-standard-rating", Answer.NotCovered(answer).Code);
        }
    }

    /// <summary>Up to 800 A: https://www.thebuildingcodeforum.com/forum/threads/nec-240-4-b-simplified-guide-to-overcurrent-protection-for-devices-up-to-800-amps.35105/latest</summary>
    [Theory]
    [InlineData(399, 400)]
    [InlineData(701, 800)]
    [InlineData(799.9, 800)]
    [InlineData(800, 800)]
    [InlineData(800.1, 800)]
    [InlineData(910, 800)]
    [InlineData(999, 800)]
    [InlineData(1000, 1000)]
    [InlineData(1199, 1000)]
    public void Above_800_amperes_nothing_is_rounded_up(double ampacity, double largest)
    {
        foreach (EditionId edition in VerifiedEditions.List)
        {
            Assert.Equal(largest, Largest(edition, Given.Protecting(ampacity, ConductorSize.Kcmil500)));
        }
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void A_water_heater_of_4500_watts_does_not_go_on_20_amperes(EditionId edition)
    {
        // https://www.ecmweb.com/national-electrical-code/qa/article/20899335/code-qa-electric-water-heaters
        OvercurrentSelection value = Select(edition, Given.Device(18.75) with { SingleNonmotorAppliance = true });
        Assert.Equal([25, 30], value.Allowed.Select(a => a.Amperes));
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void The_device_of_an_air_conditioner_goes_by_its_plate_and_its_wire_by_the_circuit_ampacity(EditionId edition)
    {
        // Circuit ampacity 22 A, device 35 A: 12 AWG at 75 degrees will do. Like https://forum.nachi.org/t/a-c-circuit-breaker/44800
        RuleSet rules = RuleSet.For(edition);
        ConductorRun run = Given.Raceway(InsulationType.Thhn);
        SmallestConductorResult wire = Answer.Of(rules, SmallestConductor.Determine(rules, Given.Smallest(run, 0, 22)));
        Assert.Equal(ConductorSize.Awg12, wire.Size);
        OvercurrentRequest request = Given.Protecting(wire.Ampacity.Amperes, wire.Size) with
        {
            Noncontinuous = Given.Amperes(22),
            SpecificApplication = true,
            MarkedMaximum = Given.Amperes(35),
        };
        Assert.Equal([25, 30, 35], Select(edition, request).Allowed.Select(a => a.Amperes));
    }

    [Theory]
    [ClassData(typeof(VerifiedEditions))]
    public void A_marked_maximum_is_never_rounded_up(EditionId edition)
    {
        OvercurrentSelection value = Select(edition, Given.Device(0, 22) with { MarkedMaximum = Given.Amperes(25) });
        Assert.Equal((25, 25), (value.Device.Rating.Amperes, value.Largest!.Value.Amperes));
        Assert.Equal([25], value.Allowed.Select(a => a.Amperes));
        Assert.Equal([25], Select(edition, Given.Device(0, 22) with { MarkedMaximum = Given.Amperes(29.9) }).Allowed.Select(a => a.Amperes));
    }

    [Fact]
    public void A_marked_maximum_below_the_load_is_refused_where_it_stands()
    {
        RuleSet rules = RuleSet.For(EditionId.Nec2023);
        Finding finding = Answer.Refused(OvercurrentDevice.Select(rules, Given.Device(0, 26) with { MarkedMaximum = Given.Amperes(25) }), "no-device-fits");
        Assert.Equal("/markedMaximum", finding.Path);
    }

    private static double? Largest(EditionId edition, OvercurrentRequest request) => Select(edition, request).Largest?.Amperes;

    private static OvercurrentSelection Select(EditionId edition, OvercurrentRequest request)
    {
        RuleSet rules = RuleSet.For(edition);
        return Answer.Of(rules, OvercurrentDevice.Select(rules, request));
    }
}
