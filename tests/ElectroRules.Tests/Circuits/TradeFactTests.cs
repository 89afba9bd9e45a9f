using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Tests.Circuits;

/// <summary>Circuits that an electrician knows by heart.</summary>
public sealed class TradeFactTests
{
    // Common practice; 55 A for 6 AWG NM copper and 60 A as the next rating up are also the published case nm-6-3-subpanel-60A.
    [Fact]
    public void A_continuous_42_ampere_load_on_six_three_cable_has_a_60_ampere_device()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.FixedResistiveAppliance, 42, LoadDuty.Continuous)) with
        {
            Preferences = new DesignPreferences { SpareNeutral = true },
        });

        Assert.Equal(60, design.Device.Rating.Amperes);
        Assert.Equal(2, design.Device.Poles);
        Assert.Equal(ConductorSize.Awg6, design.Conductors.Size);
        Assert.Equal(55, design.Conductors.Ampacity.Amperes);
        Assert.Equal("6/3", design.Cable!.TradeSize);
        Assert.Equal(ConductorSize.Awg10, design.EquipmentGround.Size);
        Assert.Equal(ConductorSize.Awg10, design.EquipmentGround.InCable);
        Assert.Equal(52.5, design.Required.Amperes, 9);
        Assert.True(design.Neutral.Spare);
    }

    // Common practice, no source: 45 A is the next standard rating above 42 A, and the conductor still allows 60 A.
    [Fact]
    public void A_noncontinuous_42_ampere_load_may_have_45_amperes_and_no_more_than_60()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.FixedResistiveAppliance, 42, LoadDuty.Noncontinuous)));

        Assert.Equal(45, design.Device.Rating.Amperes);
        Assert.Equal(60, design.LargestDevice.Amperes);
        Assert.Equal(ConductorSize.Awg6, design.Conductors.Size);
    }

    // Ampacities of 6 and 4 AWG copper at 60 °C: 2018 residential code, table E3705.1. The ground for 60 A: from memory. The drop is worked by hand.
    [Fact]
    public void A_kiln_of_11500_watts_is_the_circuit_worked_by_hand()
    {
        BranchCircuitRequest request = Sample.Cable(Sample.Watts(LoadKind.Kiln, 11_500, duty: LoadDuty.ByKind), Sample.Stretch(feet: 95));
        Determination<BranchCircuitDesign> determination = BranchCircuit.Design(Sample.Rules2023, request);
        BranchCircuitDesign design = determination.Value;

        Assert.Equal(47.92, design.LoadCurrent.Amperes, 2);
        Assert.Equal(59.90, design.Required.Amperes, 2);
        Assert.True(design.Continuous);
        Assert.Equal((60, 2), (design.Device.Rating.Amperes, design.Device.Poles));
        Assert.Equal(ConductorSize.Awg4, design.Conductors.Size);
        Assert.Equal(70, design.Conductors.Ampacity.Amperes);
        Assert.Equal(ConductorSize.Awg10, design.EquipmentGround.Size);
        Assert.Equal(DesignLimit.DeviceRating, design.EquipmentGround.Limit);
        Assert.Equal("4/3", design.Cable!.TradeSize);
        Assert.Equal(2 * 95 / 1000.0 * 0.31 * 47.9167, design.Drop.Drop.Volts, 3);
        Assert.Equal(2.82, design.Drop.Drop.Volts, 2);
        Assert.Equal(240 - 2.82, design.Drop.VoltageAtLoad.Volts, 2);
        Assert.False(design.Neutral.Needed);
        Step rejected = Assert.Single(determination.Derivation, s => s.Operation == StepOperation.Rejected);
        Assert.Equal((55, "6 AWG"), (rejected.Value, rejected.Subject!.ConductorSize!));
        Assert.Equal(59.90, determination.Derivation[rejected.Inputs[0]].Value, 2);
        AlternativeCircuit pipe = Assert.Single(design.Alternatives, a => a is { Method: WiringMethod.ElectricalMetallicTubing, Material: ConductorMaterial.Copper });
        Assert.Equal(ConductorSize.Awg6, pipe.Size);
    }

    // 240.15(B): a two-pole device is one device; its poles do not add up. From memory.
    [Fact]
    public void A_two_pole_20_ampere_device_is_20_amperes()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.Other, 20, LoadDuty.Noncontinuous)));

        Assert.Equal((20, 2), (design.Device.Rating.Amperes, design.Device.Poles));
        Assert.Equal(ConductorSize.Awg12, design.Conductors.Size);
        Assert.Equal(2, design.Conductors.Count);
    }

    [Theory] // Trade sizes as sold and the grounds in them: common practice, no source.
    [InlineData(15, "14/2", ConductorSize.Awg14)]
    [InlineData(20, "12/2", ConductorSize.Awg12)]
    [InlineData(30, "10/2", ConductorSize.Awg10)]
    [InlineData(40, "8/2", ConductorSize.Awg10)]
    [InlineData(50, "6/2", ConductorSize.Awg10)]
    [InlineData(70, "4/3", ConductorSize.Awg8)]
    public void Common_cables_for_common_devices(double amperes, string cable, ConductorSize ground)
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.Other, amperes, LoadDuty.Noncontinuous)));

        Assert.Equal(amperes, design.Device.Rating.Amperes);
        Assert.Equal(cable, design.Cable!.TradeSize);
        Assert.Equal(ground, design.EquipmentGround.Size);
        Assert.Equal(ground, design.EquipmentGround.InCable);
    }

    // 240.6(A) gives 60 A and 70 A breakers; the fuse table is the same there. A wish is kept and named.
    [Fact]
    public void A_wish_for_a_larger_conductor_is_kept_and_named()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.Other, 16, LoadDuty.Noncontinuous)) with
        {
            DeviceKind = OvercurrentDeviceKind.Fuse,
            Preferences = new DesignPreferences { SmallestSize = ConductorSize.Awg10 },
        });

        Assert.Equal((ConductorSize.Awg10, DesignLimit.Preference), (design.Conductors.Size, design.Conductors.Limit));
        Assert.Equal(20, design.Device.Rating.Amperes);
        Assert.Equal(OvercurrentDeviceKind.Fuse, design.Device.Kind);
    }

    // Arithmetic: 20 A device less 16 A; 20 A ampacity less 16 A. A panel at 228 V (measured) changes only the drop.
    [Fact]
    public void Reserve_and_measured_voltage()
    {
        BranchCircuitRequest request = Sample.Cable(Sample.Amperes(LoadKind.Other, 16, LoadDuty.Noncontinuous)) with { PanelVoltage = ElectricPotential.FromVolts(228) };
        BranchCircuitDesign design = Sample.Design(request);

        Assert.Equal(4, design.ReserveAtDevice.Amperes, 9);
        Assert.Equal(4, design.ReserveOfConductors.Amperes, 9);
        Assert.Equal(2 * 50 / 1000.0 * 2.0 * 16, design.Drop.Drop.Volts, 9);
        Assert.Equal(228 - 3.2, design.Drop.VoltageAtLoad.Volts, 9);
        Assert.Equal(240, design.SupplyVoltage.Volts);
    }
}
