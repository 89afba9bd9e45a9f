using ElectroRules.Conductors;
using ElectroRules.Overcurrent;
using ElectroRules.Tests.Support;

namespace ElectroRules.Tests.Overcurrent;

/// <summary>Values on both sides of the edges of the rules on overcurrent devices.</summary>
public class OvercurrentEdgeTests
{
    private static readonly RuleSet Rules = RuleSet.For(EditionId.Nec2023);

    /// <summary>20 A up to 13.3 A, above it 150 percent and the next rating up: https://forums.mikeholt.com/threads/calculating-water-heaters.68985</summary>
    [Theory]
    [InlineData(5, 20)]
    [InlineData(13.3, 20)]
    [InlineData(13.31, 20)]
    [InlineData(13.34, 25)]
    [InlineData(16.66, 25)]
    [InlineData(16.67, 30)]
    [InlineData(20, 30)]
    [InlineData(20.01, 35)]
    public void The_device_of_an_appliance_changes_at_13_point_3_amperes(double load, double largest) =>
        Assert.Equal(largest, Select(Given.Device(0, load) with { SingleNonmotorAppliance = true }).Largest?.Amperes);

    /// <summary>The ratings of breakers as every maker lists them: common practice, no source.</summary>
    [Theory]
    [InlineData(15, 15)]
    [InlineData(15.001, 20)]
    [InlineData(50, 50)]
    [InlineData(50.001, 60)]
    [InlineData(60.001, 70)]
    [InlineData(100, 100)]
    [InlineData(100.001, 110)]
    [InlineData(110.001, 125)]
    [InlineData(125.001, 150)]
    [InlineData(6000, 6000)]
    public void The_device_is_the_first_standard_rating_not_below(double load, double rating)
    {
        Assert.Equal(rating, Select(Given.Device(0, load)).Device.Rating.Amperes);
        Assert.Equal(rating, StandardRatings.NotBelow(Rules, Given.Amperes(load), OvercurrentDeviceKind.CircuitBreaker)?.Amperes);
    }

    [Fact]
    public void Above_the_last_rating_there_is_none()
    {
        Assert.Null(StandardRatings.NotBelow(Rules, Given.Amperes(6000.1), OvercurrentDeviceKind.CircuitBreaker));
        Assert.Equal("no-standard-rating", Answer.NotCovered(OvercurrentDevice.Select(Rules, Given.Device(0, 6000.1))).Code);
    }

    [Fact]
    public void Below_the_first_rating_there_is_none()
    {
        Assert.Null(StandardRatings.NotAbove(Rules, Given.Amperes(9.9), OvercurrentDeviceKind.CircuitBreaker));
        Assert.Equal(6, StandardRatings.NotAbove(Rules, Given.Amperes(9.9), OvercurrentDeviceKind.Fuse)?.Amperes);
        Assert.Equal(10, StandardRatings.NotAbove(Rules, Given.Amperes(10), OvercurrentDeviceKind.CircuitBreaker)?.Amperes);
        Assert.Null(StandardRatings.NotAbove(RuleSet.For(EditionId.Nec2020), Given.Amperes(10), OvercurrentDeviceKind.CircuitBreaker));
    }

    [Fact]
    public void The_ampacity_has_to_carry_the_load_itself()
    {
        OvercurrentRequest request = Given.Protecting(55, ConductorSize.Awg6) with { Noncontinuous = Given.Amperes(55) };
        Assert.Equal(60, Select(request).Device.Rating.Amperes);
        Answer.Refused(OvercurrentDevice.Select(Rules, request with { Noncontinuous = Given.Amperes(55.001) }), "conductor-below-load");
    }

    [Fact]
    public void An_edition_without_tables_gives_no_number()
    {
        RuleSet rules = RuleSet.For(EditionId.Nec2026);
        Assert.Equal("table-absent", Answer.NotCovered(OvercurrentDevice.Select(rules, Given.Device(16))).Code);
        Assert.Null(StandardRatings.NotBelow(rules, Given.Amperes(16), OvercurrentDeviceKind.CircuitBreaker));
    }

    private static OvercurrentSelection Select(OvercurrentRequest request) => Answer.Of(Rules, OvercurrentDevice.Select(Rules, request));
}
