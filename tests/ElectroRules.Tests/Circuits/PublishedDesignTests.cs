using System.Text.Json;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;

namespace ElectroRules.Tests.Circuits;

/// <summary>Circuits that were published with their answers: the files in Cases/design, each with its source.</summary>
public sealed class PublishedDesignTests
{
    private static readonly Dictionary<string, JsonElement> Cases = Read();

    private static readonly Dictionary<string, Action<JsonElement, JsonElement>> Checks = new(StringComparer.Ordinal)
    {
        ["wh-4500-ecm"] = (inputs, expected) => WaterHeater(inputs, expected, EditionId.Nec2014),
        ["wh-4500-min-max-ocpd"] = (inputs, expected) =>
        {
            BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Watts(LoadKind.StorageWaterHeater, D(inputs, "W"), D(inputs, "V"))), EditionId.Nec2014);
            Assert.Equal(D(expected, "min_A"), design.Required.Amperes, 0.05);
            Assert.Equal(D(expected, "min_ocpd_A"), design.Device.Rating.Amperes);
            Assert.Equal(D(expected, "max_ocpd_A"), design.LargestDevice.Amperes);
            Assert.Equal(S(expected, "conductor"), Label(design));
        },
        ["ac-44-60"] = (inputs, expected) =>
        {
            BranchCircuitDesign design = Sample.Design(Sample.Pipe(Sample.AirConditioner(D(inputs, "MCA"), D(inputs, "MOCP"))));
            Assert.Equal((S(expected, "conductor"), D(expected, "ampacity_A")), (Label(design), design.Conductors.Ampacity.Amperes));
            Assert.Equal(D(expected, "ocpd_A"), design.LargestDevice.Amperes);
        },
        ["ac-28-40"] = (inputs, expected) =>
        {
            BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.AirConditioner(D(inputs, "MCA"), D(inputs, "MOCP"))));
            Assert.Equal((S(expected, "conductor"), D(expected, "max_breaker_A")), (Label(design), design.LargestDevice.Amperes));
            Assert.True(D(inputs, "breaker_A") <= design.LargestDevice.Amperes);
        },
        ["ac-mop20-breaker30"] = (inputs, expected) =>
        {
            BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.AirConditioner(16, D(inputs, "MOCP"))));
            Assert.Equal(expected.GetProperty("compliant").GetBoolean(), D(inputs, "breaker_A") <= design.LargestDevice.Amperes);
        },
        ["ac-mca-steps"] = (inputs, expected) => Each(inputs, "MCA", expected, "conductors", (amperes, size) =>
            Assert.Equal(size, Sample.Design(Sample.Cable(Sample.AirConditioner(amperes, 60))).Conductors.Size.Label())),
        ["heat-240-20A-max"] = (inputs, expected) =>
        {
            ConductorLimitsResult limits = Sample.Limit(Sample.Limits(ConductorSize.Awg12, Sample.Cable(Sample.Amperes(LoadKind.SpaceHeater, 1))));
            Assert.Equal(D(expected, "max_A"), limits.MostContinuousLoad.Amperes);
            Assert.Equal(D(expected, "max_W"), limits.MostContinuousLoad.Amperes * D(inputs, "V"));
            BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Watts(LoadKind.SpaceHeater, D(expected, "max_W"))));
            Assert.Equal((D(inputs, "breaker_A"), S(expected, "cable")), (design.Device.Rating.Amperes, design.Cable!.TradeSize));
        },
        ["heat-chart-30-40"] = (inputs, expected) =>
        {
            double[] watts = [.. expected.GetProperty("max_W").EnumerateArray().Select(w => w.GetDouble())];
            int i = 0;
            Each(inputs, "breakers_A", expected, "cable", (amperes, cable) =>
            {
                BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Watts(LoadKind.SpaceHeater, watts[i++])));
                Assert.Equal((amperes, cable), (design.Device.Rating.Amperes, design.Cable!.TradeSize));
            });
        },
        ["ev-48A-nm"] = (inputs, expected) =>
        {
            Load charger = Sample.Amperes(LoadKind.VehicleCharging, D(inputs, "EVSE_A"));
            BranchCircuitDesign cable = Sample.Design(Sample.Cable(charger));
            Assert.Equal(D(expected, "required_A"), cable.Required.Amperes);
            Assert.Equal(expected.GetProperty("nm6_ok").GetBoolean(), cable.Conductors.Size <= ConductorSize.Awg6);
            Assert.Equal((ConductorSize.Awg4, 70), (cable.Conductors.Size, cable.Conductors.Ampacity.Amperes));
            BranchCircuitDesign pipe = Sample.Design(Sample.Pipe(charger));
            Assert.Equal((ConductorSize.Awg6, 65), (pipe.Conductors.Size, pipe.Conductors.Ampacity.Amperes));
        },
        ["usfs-cont-24-32"] = ForestService,
        ["usfs-cont-48-64"] = ForestService,
        ["usfs-cont-36-45A"] = (inputs, expected) => Continuous(D(inputs, "load_A"), D(expected, "breaker_A"), S(expected, "conductor")),
        ["nm-6-3-subpanel-60A"] = (_, expected) =>
        {
            ConductorLimitsResult limits = Sample.Limit(Sample.Limits(ConductorSize.Awg6, Sample.Cable(Sample.Amperes(LoadKind.Other, 1))));
            Assert.Equal(D(expected, "ampacity_A"), limits.Ampacity.Amperes);
            Assert.Equal(expected.GetProperty("breaker_60A_ok").GetBoolean(), limits.LargestDevice.Amperes >= 60);
            Assert.Equal(D(expected, "max_calculated_load_A"), limits.MostNoncontinuousLoad.Amperes);
        },

        // The source lets 1 AWG (110 A at the 60 degree end) lie on a 125 A device. A design also asks what the device protects, where
        // 110 A is itself a standard rating: one size more than the source. The source's own sizes are those of conductor.smallest.
        ["cont-95A-three-sizes"] = (inputs, expected) =>
        {
            BranchCircuitRequest request = Sample.Pipe(Sample.Amperes(LoadKind.Other, D(inputs, "load_A"), LoadDuty.Continuous)) with
            {
                LoadTermination = TerminationRating.C60,
                TerminalTest = TerminalTest.EachEnd,
            };
            BranchCircuitDesign design = Sample.Design(request);
            Assert.Equal(D(expected, "sizing_A"), design.Required.Amperes, 0.3);
            Assert.Equal(D(expected, "ocpd_A"), design.Device.Rating.Amperes);
            Assert.True(design.Conductors.Size >= ConductorSize.Awg1);
            Assert.Equal(DesignLimit.DeviceProtection, design.Conductors.Limit);
            Assert.Equal("1 AWG Cu", S(expected, "selected"));
        },
        ["ser-6cu-4al-70A"] = (_, expected) => Each(expected, "ampacity_A", expected, "breaker_A", (ampacity, breaker) =>
        {
            BranchCircuitRequest like = Sample.Cable(Sample.Amperes(LoadKind.Other, 1)) with { Method = WiringMethod.ServiceEntranceCable };
            foreach ((ConductorSize size, ConductorMaterial metal) in new[] { (ConductorSize.Awg6, ConductorMaterial.Copper), (ConductorSize.Awg4, ConductorMaterial.Aluminum) })
            {
                ConductorLimitsResult limits = Sample.Limit(Sample.Limits(size, like with { Material = metal }));
                Assert.Equal((ampacity, breaker), (limits.Ampacity.Amperes, limits.LargestDevice.Amperes.ToString(System.Globalization.CultureInfo.InvariantCulture)));
            }
        }),
    };

    public static TheoryData<string> Ids => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_published_circuit_comes_out(string id)
    {
        JsonElement published = Cases[id];
        Assert.NotEmpty(published.GetProperty("source").GetProperty("address").GetString()!);
        Checks[id](published.GetProperty("inputs"), published.GetProperty("expected"));
    }

    [Fact]
    public void Every_copied_case_is_checked() => Assert.Equal(Cases.Keys.Order(StringComparer.Ordinal), Checks.Keys.Order(StringComparer.Ordinal));

    private static void WaterHeater(JsonElement inputs, JsonElement expected, EditionId edition)
    {
        BranchCircuitDesign design = Sample.Design(Sample.Pipe(Sample.Watts(LoadKind.StorageWaterHeater, D(inputs, "W"), D(inputs, "V"))), edition);
        Assert.Equal(D(expected, "load_A"), design.LoadCurrent.Amperes, 0.2);
        Assert.Equal(D(expected, "conductor_sizing_A"), design.Required.Amperes, 0.2);
        Assert.Equal((S(expected, "conductor"), D(expected, "max_ocpd_A")), (Label(design), design.LargestDevice.Amperes));
    }

    private static void ForestService(JsonElement inputs, JsonElement expected)
    {
        string[] sizes = [.. expected.GetProperty("conductor").EnumerateArray().Select(c => c.GetString()!)];
        int i = 0;
        foreach ((JsonElement load, JsonElement breaker) in inputs.GetProperty("load_A").EnumerateArray().Zip(expected.GetProperty("breaker_A").EnumerateArray()))
        {
            Continuous(load.GetDouble(), breaker.GetDouble(), sizes[i++]);
        }
    }

    private static void Continuous(double load, double breaker, string size)
    {
        BranchCircuitDesign design = Sample.Design(Sample.Pipe(Sample.Amperes(LoadKind.Other, load, LoadDuty.Continuous), InsulationType.Thw));
        Assert.Equal((breaker, size), (design.Device.Rating.Amperes, design.Conductors.Size.Label()));
    }

    private static void Each(JsonElement inputs, string of, JsonElement expected, string answers, Action<double, string> check)
    {
        foreach ((JsonElement input, JsonElement answer) in inputs.GetProperty(of).EnumerateArray().Zip(expected.GetProperty(answers).EnumerateArray()))
        {
            check(input.GetDouble(), answer.ToString());
        }
    }

    private static string Label(BranchCircuitDesign design) => design.Conductors.Size.Label() + " Cu";

    private static double D(JsonElement of, string name) => of.GetProperty(name).GetDouble();

    private static string S(JsonElement of, string name) => of.GetProperty(name).GetString()!;

    private static Dictionary<string, JsonElement> Read()
    {
        Dictionary<string, JsonElement> cases = new(StringComparer.Ordinal);
        foreach (string file in Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Cases", "design"), "*.json"))
        {
            foreach (JsonElement published in JsonDocument.Parse(File.ReadAllText(file)).RootElement.EnumerateArray())
            {
                cases.Add(published.GetProperty("id").GetString()!, published);
            }
        }

        return cases;
    }
}
