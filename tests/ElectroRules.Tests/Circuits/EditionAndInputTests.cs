using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using UnitsNet;

namespace ElectroRules.Tests.Circuits;

/// <summary>Where the editions differ, and what a request may not hold.</summary>
public sealed class EditionAndInputTests
{
    private static readonly BranchCircuitRequest Good = Sample.Pipe(Sample.Amperes(LoadKind.Other, 20, LoadDuty.Noncontinuous));

    private static readonly Dictionary<string, BranchCircuitRequest> Bad = new(StringComparer.Ordinal)
    {
        ["Load.Current"] = Good with { Load = Good.Load with { Current = ElectricCurrent.Zero } },
        ["Load.Power"] = Good with { Load = Good.Load with { Current = null, Power = Power.FromWatts(-1) } },
        ["Load.ApparentPower"] = Good with { Load = Good.Load with { Current = null, ApparentPower = ElectricApparentPower.Zero } },
        ["Load.RatedVoltage"] = Good with { Load = Good.Load with { RatedVoltage = ElectricPotential.Zero } },
        ["Load.PowerFactor"] = Good with { Load = Good.Load with { PowerFactor = Ratio.FromPercent(101) } },
        ["Load.Kind"] = Good with { Load = Good.Load with { Kind = 0 } },
        ["Load.Duty"] = Good with { Load = Good.Load with { Duty = (LoadDuty)9 } },
        ["Load.MinimumCircuitAmpacity"] = Good with { Load = Good.Load with { MinimumCircuitAmpacity = ElectricCurrent.Zero } },
        ["Load.MaximumDevice"] = Good with { Load = Good.Load with { MaximumDevice = ElectricCurrent.FromAmperes(-5) } },
        ["Load.Connection"] = Good with { Load = Good.Load with { Connection = CircuitConnection.ThreePhase } },
        ["Load"] = Good with { Load = null! },
        ["Preferences"] = Good with { Preferences = null! },
        ["Preferences.DropLimit"] = Good with { Preferences = new DesignPreferences { DropLimit = Ratio.Zero } },
        ["Preferences.SmallestSize"] = Good with { Preferences = new DesignPreferences { SmallestSize = (ConductorSize)31 } },
        ["System"] = Good with { System = 0 },
        ["Material"] = Good with { Material = (ConductorMaterial)4 },
        ["Method"] = Good with { Method = (WiringMethod)14 },
        ["Insulation"] = Good with { Insulation = (InsulationType)15 },
        ["SupplyTermination"] = Good with { SupplyTermination = (TerminationRating)4 },
        ["LoadTermination"] = Good with { LoadTermination = 0 },
        ["DeviceKind"] = Good with { DeviceKind = (OvercurrentDeviceKind)3 },
        ["TerminalTest"] = Good with { TerminalTest = 0 },
        ["PanelVoltage"] = Good with { PanelVoltage = ElectricPotential.Zero },
        ["Route"] = Good with { Route = null! },
        ["Route.Count"] = Good with { Route = [] },
        ["Route[0].Length"] = Good with { Route = [Sample.Stretch(feet: 0)] },
        ["Route[0].Ambient"] = Good with { Route = [Sample.Stretch(celsius: 201)] },
        ["Route[0].Location"] = Good with { Route = [Sample.Stretch() with { Location = (LocationKind)4 }] },
        ["Route[0].OtherCurrentCarryingConductors"] = Good with { Route = [Sample.Stretch() with { OtherCurrentCarryingConductors = -1 }] },
        ["Route[0].OtherCables"] = Good with { Route = [Sample.Stretch() with { OtherCables = -1 }] },
        ["Route[0].Grouping"] = Good with { Route = [Sample.Stretch() with { Grouping = 0 }] },
        ["Route[0].HeightAboveRoof"] = Good with { Route = [Sample.Stretch() with { HeightAboveRoof = Length.FromInches(-1) }] },
    };

    public static TheoryData<string> BadMembers => [.. Bad.Keys];

    [Theory]
    [MemberData(nameof(BadMembers))]
    public void A_bad_member_is_named(string member)
    {
        ArgumentException e = Assert.Throws<ArgumentException>(() => BranchCircuit.Design(Sample.Rules2023, Bad[member]));
        Assert.Equal(member, e.ParamName);
        Assert.StartsWith(member + " ", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Null_arguments_are_named()
    {
        Assert.Equal("rules", Assert.Throws<ArgumentNullException>(() => BranchCircuit.Design(null!, Good)).ParamName);
        Assert.Equal("request", Assert.Throws<ArgumentNullException>(() => BranchCircuit.Design(Sample.Rules2023, null!)).ParamName);
        Assert.Equal("request", Assert.Throws<ArgumentNullException>(() => ConductorLimits.Determine(Sample.Rules2023, null!)).ParamName);
        ConductorLimitsRequest limits = Sample.Limits(ConductorSize.Awg12, Good);
        Assert.Equal("Run", Assert.Throws<ArgumentException>(() => ConductorLimits.Determine(Sample.Rules2023, limits with { Run = null! })).ParamName);
        Assert.Equal("Size", Assert.Throws<ArgumentException>(() => ConductorLimits.Determine(Sample.Rules2023, limits with { Size = 0 })).ParamName);
    }

    [Theory] // 338.10(B)(4): from 2017 only 10 AWG and smaller are held to 60 °C in insulation. Licence renewal course.
    [InlineData(EditionId.Nec2014, 55)]
    [InlineData(EditionId.Nec2017, 65)]
    [InlineData(EditionId.Nec2023, 65)]
    public void Service_cable_in_insulation(EditionId edition, double amperes)
    {
        BranchCircuitRequest like = Sample.Cable(Good.Load, Sample.Stretch() with { InThermalInsulation = true }) with { Method = WiringMethod.ServiceEntranceCable };
        Assert.Equal(amperes, Sample.Limit(Sample.Limits(ConductorSize.Awg6, like), edition).Ampacity.Amperes);
    }

    [Theory] // 6 in. above a roof at 30 °C: 30 °F more in 2014, 55 A x 0.82; nothing above 7/8 in. from 2017. Trade newsletter; 2017 from memory.
    [InlineData(EditionId.Nec2014, 45.1)]
    [InlineData(EditionId.Nec2017, 50)]
    [InlineData(EditionId.Nec2020, 50)]
    public void Above_a_roof(EditionId edition, double amperes)
    {
        BranchCircuitRequest like = Sample.Pipe(Good.Load, InsulationType.Thwn2, Sample.Stretch() with { HeightAboveRoof = Length.FromInches(6) });
        Assert.Equal(amperes, Sample.Limit(Sample.Limits(ConductorSize.Awg8, like), edition).Ampacity.Amperes, 9);
    }

    [Theory] // 250.122(B): only 2017 counts the increase from the size before correction. From memory. 12 AWG would do uncorrected, 10 AWG is needed.
    [InlineData(EditionId.Nec2014, ConductorSize.Awg12)]
    [InlineData(EditionId.Nec2017, ConductorSize.Awg10)]
    [InlineData(EditionId.Nec2020, ConductorSize.Awg12)]
    [InlineData(EditionId.Nec2023, ConductorSize.Awg12)]
    public void The_increase_of_the_ground(EditionId edition, ConductorSize ground)
    {
        BranchCircuitDesign design = Sample.Design(Good with { Route = [Sample.Stretch(others: 9)] }, edition);
        Assert.Equal((20, ConductorSize.Awg10, ground), (design.Device.Rating.Amperes, design.Conductors.Size, design.EquipmentGround.Size));
    }

    [Theory] // 240.6(A): 10 A is a standard breaker from 2023. Licence renewal course.
    [InlineData(EditionId.Nec2020, 15)]
    [InlineData(EditionId.Nec2023, 10)]
    public void The_10_ampere_rating(EditionId edition, double amperes)
    {
        Load lights = Sample.Amperes(LoadKind.Lighting, 8, LoadDuty.Noncontinuous, CircuitConnection.LineToNeutral);
        Assert.Equal(amperes, Sample.Design(Sample.Cable(lights), edition).Device.Rating.Amperes);
    }
}
