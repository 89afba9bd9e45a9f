using ElectroRules.Conductors;
using ElectroRules.Tests.Support;

namespace ElectroRules.Tests.Conductors;

/// <summary>Classic mistakes about voltage drop. Expected values are physics: Ohm's law over the path of the current.</summary>
public class VoltageDropTrapTests
{
    [Theory]
    [InlineData(CircuitConnection.LineToNeutral, 2)]
    [InlineData(CircuitConnection.LineToLine, 2)]
    [InlineData(CircuitConnection.ThreePhase, 1.7320508075688772)]
    public void The_current_goes_there_and_back(CircuitConnection connection, double path)
    {
        // 12 AWG at 2.0 ohm in 1000 ft: http://electricianpracticetests.com/national-electrical-code-questions/voltage-drop-calculations-1-nec-code-questions/
        VoltageDropResult value = Compute(Given.Drop(ConductorSize.Awg12, 10, 240, 100) with { Connection = connection });
        Assert.Equal(path * 0.1 * 2.0 * 10, value.Drop.Volts, 1e-9);
    }

    [Fact]
    public void The_share_is_of_the_voltage_of_the_load()
    {
        // 3 V of 240 V are 1.25 percent, not 2.5 percent of 120 V.
        VoltageDropResult value = Compute(Given.Drop(ConductorSize.Awg12, 7.5, 240, 100) with { Connection = CircuitConnection.LineToLine });
        Assert.Equal(3, value.Drop.Volts, 1e-9);
        Assert.Equal(1.25, value.Share.Percent, 1e-9);
        Assert.Equal(237, value.VoltageAtLoad.Volts, 1e-9);
    }

    [Fact]
    public void Conductors_in_parallel_share_the_drop()
    {
        VoltageDropRequest one = Given.Drop(ConductorSize.FourAught, 200, 240, 300);
        Assert.Equal(Compute(one).Drop.Volts / 2, Compute(one with { ParallelSets = 2 }).Drop.Volts, 1e-9);
    }

    [Fact]
    public void A_drop_for_sets_in_parallel_never_asks_for_conductors_too_small_to_be_run_in_parallel()
    {
        VoltageDropResult value = Compute(Given.Drop(ConductorSize.FourAught, 20, 240, 50) with { ParallelSets = 2 });
        Assert.True(value.SmallestSize >= ConductorSize.OneAught, $"{value.SmallestSize} may not be run in parallel.");
    }

    private static VoltageDropResult Compute(VoltageDropRequest request)
    {
        RuleSet rules = RuleSet.For(EditionId.Nec2023);
        return Answer.Of(rules, VoltageDrop.Compute(rules, request));
    }
}
