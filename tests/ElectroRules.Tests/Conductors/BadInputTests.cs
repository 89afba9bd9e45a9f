using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Overcurrent;
using ElectroRules.Tests.Support;
using UnitsNet;

namespace ElectroRules.Tests.Conductors;

/// <summary>What is wrong with a request is said exactly: the kind of exception, the member and the range, in every culture.</summary>
public class BadInputTests
{
    private static readonly RuleSet Rules = RuleSet.For(EditionId.Nec2023);

    private static readonly Dictionary<string, (Action Call, string Member, string Message)> Faults = new()
    {
        ["zero length"] = (() => Determine(Given.Segment(feet: 0)), "Run.Route[0].Length", "must be more than 0 ft; it was 0 ft."),
        ["negative length"] = (() => Determine(Given.Segment(feet: -1.5)), "Run.Route[0].Length", "must be more than 0 ft; it was -1.5 ft."),
        ["too cold"] = (() => Determine(Given.Segment(celsius: -60.1)), "Run.Route[0].Ambient", "must be from -60 to 200 Cel; it was -60.1 Cel."),
        ["too hot"] = (() => Determine(Given.Segment(), Given.Segment(celsius: 200.5)), "Run.Route[1].Ambient", "must be from -60 to 200 Cel; it was 200.5 Cel."),
        ["negative count"] = (() => Determine(Given.Segment(others: -1)), "Run.Route[0].OtherCurrentCarryingConductors", "must be 0 or more; it was -1."),
        ["negative cables"] = (() => Determine(Given.Segment() with { OtherCables = -1 }), "Run.Route[0].OtherCables", "must be 0 or more; it was -1."),
        ["below the roof"] = (() => Determine(Given.Segment() with { HeightAboveRoof = Length.FromInches(-1) }), "Run.Route[0].HeightAboveRoof", "must be 0 or more in; it was -1 in."),
        ["place"] = (() => Determine(Given.Segment(location: (LocationKind)9)), "Run.Route[0].Location", "9 is not a defined LocationKind; use one of Dry, Damp, Wet."),
        ["null segment"] = (() => Determine(null!, Given.Segment()), "Run.Route[0].Item", "must not be null."),
        ["no route"] = (() => Determine(Given.Raceway(InsulationType.Thhn) with { Route = [] }), "Run.Route.Count", "must be from 1 to 64; it was 0."),
        ["long route"] = (() => Determine(Given.Raceway(InsulationType.Thhn) with { Route = [.. Enumerable.Repeat(Given.Segment(), 65)] }), "Run.Route.Count", "must be from 1 to 64; it was 65."),
        ["null route"] = (() => Determine(Given.Raceway(InsulationType.Thhn) with { Route = null! }), "Run.Route", "must not be null."),
        ["null wires"] = (() => Determine(Given.Raceway(InsulationType.Thhn) with { Wires = null! }), "Run.Wires", "must not be null."),
        ["null run"] = (() => Determine((ConductorRun)null!), "Run", "must not be null."),
        ["sets"] = (() => Determine(Given.Raceway(InsulationType.Thhn) with { ParallelSets = 0 }), "Run.ParallelSets", "must be from 1 to 12; it was 0."),
        ["metal"] = (() => Determine(Given.Raceway(InsulationType.Thhn) with { Material = default }), "Run.Material", "0 is not a defined ConductorMaterial; use one of Copper, Aluminum, CopperCladAluminum."),
        ["three phases of two"] = (() => Determine(Given.Raceway(InsulationType.Thhn) with { Wires = Given.TwoWires with { Connection = CircuitConnection.ThreePhase } }), "Run.Wires.Connection", "cannot be ThreePhase on a single-phase system."),
        ["size"] = (() => Ampacity.Determine(Rules, Given.Ampacity((ConductorSize)31, Given.Raceway(InsulationType.Thhn))), "Size", ""),
        ["rating"] = (() => Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, Given.Raceway(InsulationType.Thhn), 0)), "CircuitRating", "must be more than 0 A; it was 0 A."),
        ["negative load"] = (() => SmallestConductor.Determine(Rules, Given.Smallest(Given.Raceway(InsulationType.Thhn), -0.5)), "Continuous", "must be 0 or more A; it was -0.5 A."),
        ["no load"] = (() => SmallestConductor.Determine(Rules, Given.Smallest(Given.Raceway(InsulationType.Thhn), 0)), "Continuous", "and Noncontinuous must not both be 0 A."),
        ["test"] = (() => SmallestConductor.Determine(Rules, Given.Smallest(Given.Raceway(InsulationType.Thhn), 1) with { TerminalTest = (TerminalTest)7 }), "TerminalTest", "7 is not a defined TerminalTest; use one of LowerEnd, EachEnd."),
        ["device load"] = (() => OvercurrentDevice.Select(Rules, Given.Device(1, -1)), "Noncontinuous", "must be 0 or more A; it was -1 A."),
        ["device kind"] = (() => OvercurrentDevice.Select(Rules, Given.Device(1) with { Kind = (OvercurrentDeviceKind)3 }), "Kind", "3 is not a defined OvercurrentDeviceKind; use one of CircuitBreaker, Fuse."),
        ["device ampacity"] = (() => OvercurrentDevice.Select(Rules, Given.Protecting(0, ConductorSize.Awg12)), "ConductorAmpacity", "must be more than 0 A; it was 0 A."),
        ["marked"] = (() => OvercurrentDevice.Select(Rules, Given.Device(1) with { MarkedMaximum = Given.Amperes(-25) }), "MarkedMaximum", "must be more than 0 A; it was -25 A."),
        ["current"] = (() => VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, 0, 120, 100)), "Current", "must be more than 0 A; it was 0 A."),
        ["voltage"] = (() => VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, 1, -120, 100)), "SourceVoltage", "must be more than 0 V; it was -120 V."),
        ["drop length"] = (() => VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, 1, 120, 0)), "Length", "must be more than 0 ft; it was 0 ft."),
        ["power factor"] = (() => VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, 1, 120, 1) with { PowerFactor = Given.Share(1.01) }), "PowerFactor", "must be more than 0 and at most 1; it was 1.01."),
        ["limit"] = (() => VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, 1, 120, 1) with { LimitShare = Given.Share(0) }), "LimitShare", "must be more than 0 and at most 1; it was 0."),
        ["impedance"] = (() => VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, 1, 120, 1) with { ImpedanceOf1000Feet = ElectricResistance.Zero }), "ImpedanceOf1000Feet", "must be more than 0 Ohm; it was 0 Ohm."),
        ["two impedances"] = (() => VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, 1, 120, 1) with { ImpedanceOf1000Feet = ElectricResistance.FromOhms(1), ResistanceOfCircularMilFoot = ElectricResistance.FromOhms(1) }), "ImpedanceOf1000Feet", "and ResistanceOfCircularMilFoot must not both be given."),
        ["ground device"] = (() => EquipmentGrounding.Size(Rules, Given.Ground(0, ConductorSize.Awg12)), "Device", "must be more than 0 A; it was 0 A."),
        ["ground size"] = (() => EquipmentGrounding.Size(Rules, Given.Ground(20, (ConductorSize)99)), "InstalledSize", ""),
    };

    public static TheoryData<string, string> Names
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (string name in Faults.Keys)
            {
                foreach (string culture in TestCulture.Names)
                {
                    data.Add(name, culture);
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_fault_is_named(string name, string culture)
    {
        (Action call, string member, string message) = Faults[name];
        ArgumentException error = TestCulture.Under(culture, () => Assert.Throws<ArgumentException>(call));
        Assert.Equal(member, error.ParamName);
        Assert.StartsWith($"{member} {message}", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_null_rule_set_or_request_is_named()
    {
        Null("rules", () => Ampacity.Determine(null!, Given.Ampacity(ConductorSize.Awg12, Given.Raceway(InsulationType.Thhn))));
        Null("request", () => Ampacity.Determine(Rules, null!));
        Null("rules", () => SmallestConductor.Determine(null!, Given.Smallest(Given.Raceway(InsulationType.Thhn), 1)));
        Null("request", () => SmallestConductor.Determine(Rules, null!));
        Null("rules", () => OvercurrentDevice.Select(null!, Given.Device(1)));
        Null("request", () => OvercurrentDevice.Select(Rules, null!));
        Null("rules", () => VoltageDrop.Compute(null!, Given.Drop(ConductorSize.Awg12, 1, 120, 1)));
        Null("request", () => VoltageDrop.Compute(Rules, null!));
        Null("rules", () => EquipmentGrounding.Size(null!, Given.Ground(20, ConductorSize.Awg12)));
        Null("request", () => EquipmentGrounding.Size(Rules, null!));
        Null("rules", () => Ampacity.Listed(null!, ConductorSize.Awg12, ConductorMaterial.Copper, TerminationRating.C60));
        Null("rules", () => StandardRatings.NotBelow(null!, Given.Amperes(1), OvercurrentDeviceKind.Fuse));
        Null("rules", () => ConductorSearch.Smallest(null!, Given.Amperes(1), ConductorMaterial.Copper, TerminationRating.C90, TerminationRating.C75, Given.Share(1)));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void A_quantity_that_is_no_number_never_gives_an_answer(double value)
    {
        // UnitsNet refuses some of them itself; what it lets through, the request refuses.
        Assert.ThrowsAny<ArgumentException>(() => OvercurrentDevice.Select(Rules, Given.Device(value)));
        Assert.ThrowsAny<ArgumentException>(() => Determine(Given.Segment(feet: value)));
        Assert.ThrowsAny<ArgumentException>(() => Determine(Given.Segment(celsius: value)));
        Assert.ThrowsAny<ArgumentException>(() => VoltageDrop.Compute(Rules, Given.Drop(ConductorSize.Awg12, value, 120, 1)));
    }

    [Fact]
    public void The_bare_lookups_refuse_choices_that_are_not_defined()
    {
        Assert.ThrowsAny<ArgumentException>(() => StandardRatings.NotBelow(Rules, Given.Amperes(16), (OvercurrentDeviceKind)3));
        Assert.ThrowsAny<ArgumentException>(() => StandardRatings.NotAbove(Rules, Given.Amperes(16), default));
        Assert.ThrowsAny<ArgumentException>(() => Ampacity.Listed(Rules, ConductorSize.Awg12, default, TerminationRating.C60));
        Assert.ThrowsAny<ArgumentException>(() => Ampacity.Listed(Rules, (ConductorSize)31, ConductorMaterial.Copper, TerminationRating.C60));
        Assert.ThrowsAny<ArgumentException>(
            () => ConductorSearch.Smallest(Rules, Given.Amperes(16), (ConductorMaterial)9, TerminationRating.C90, TerminationRating.C75, Given.Share(1)));
    }

    [Fact]
    public void The_bare_search_refuses_numbers_out_of_range()
    {
        Assert.ThrowsAny<ArgumentException>(() => Search(-1, 1));
        Assert.ThrowsAny<ArgumentException>(() => Search(16, 0));
    }

    private static ConductorSize? Search(double need, double factor) => ConductorSearch.Smallest(
        Rules, Given.Amperes(need), ConductorMaterial.Copper, TerminationRating.C90, TerminationRating.C75, Given.Share(factor));

    private static void Determine(params RouteSegment[] route) => Determine(Given.Raceway(InsulationType.Thhn, route));

    private static void Determine(ConductorRun run) => Ampacity.Determine(Rules, Given.Ampacity(ConductorSize.Awg12, run));

    private static void Null(string name, Func<object?> call) => Assert.Equal(name, Assert.Throws<ArgumentNullException>(call).ParamName);
}
