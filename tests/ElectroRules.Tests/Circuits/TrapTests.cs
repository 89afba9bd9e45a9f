using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Tests.Circuits;

/// <summary>Classic mistakes: the answer of a novice must not come out. Values from memory unless a source is named.</summary>
public sealed class TrapTests
{
    [Fact] // A two-pole 30 A device is not 60 A: 7200 VA on 240 V is 30 A.
    public void Poles_do_not_add_up()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.Other, 30, LoadDuty.Noncontinuous)));
        Assert.Equal((30, 2), (design.Device.Rating.Amperes, design.Device.Poles));
        Assert.NotEqual(60, design.LargestDevice.Amperes);
    }

    [Fact] // 12 AWG THHN is listed at 30 A at 90 °C, and its device is 20 A: notes of a wire maker, 240.4(D).
    public void Twelve_gauge_is_held_to_20_amperes() =>
        Assert.Equal(20, Sample.Limit(Sample.Limits(ConductorSize.Awg12, Sample.Pipe(Sample.Amperes(LoadKind.Other, 1)))).LargestDevice.Amperes);

    [Theory] // 2 AWG copper: 115 A at 75 °C, 95 A at 60 °C, never 130 A. 2018 residential code, table E3705.1.
    [InlineData(TerminationRating.C90, 115)]
    [InlineData(TerminationRating.C75, 115)]
    [InlineData(TerminationRating.C60, 95)]
    public void The_terminations_hold_the_ampacity_down(TerminationRating rating, double amperes)
    {
        ConductorLimitsRequest request = Sample.Limits(ConductorSize.Awg2, Sample.Pipe(Sample.Amperes(LoadKind.Other, 1)) with { LoadTermination = rating });
        Assert.Equal(amperes, Sample.Limit(request).Ampacity.Amperes);
    }

    [Fact] // Nine 12 AWG THHN: 30 x 0.7 = 21 A, not 25 x 0.7. Trade magazine quiz on conductors.
    public void Derating_starts_from_the_90_degree_column()
    {
        RouteSegment route = Sample.Stretch(others: 7);
        Assert.Equal(21, Sample.Limit(Sample.Limits(ConductorSize.Awg12, Sample.Pipe(Sample.Amperes(LoadKind.Other, 1), route: route))).Ampacity.Amperes, 9);
    }

    [Fact] // 48 A charger: 60 A, and not on 6 AWG NM. Owners' forum with an electrician's explanation.
    public void A_48_ampere_charger_is_not_put_on_six_gauge_cable()
    {
        Load charger = Sample.Amperes(LoadKind.VehicleCharging, 48);
        BranchCircuitDesign cable = Sample.Design(Sample.Cable(charger));
        Assert.Equal((60, ConductorSize.Awg4), (cable.Device.Rating.Amperes, cable.Conductors.Size));
        BranchCircuitDesign pipe = Sample.Design(Sample.Pipe(charger));
        Assert.Equal((60, ConductorSize.Awg6), (pipe.Device.Rating.Amperes, pipe.Conductors.Size));
    }

    [Fact] // 40 x 1.25 = 50 A once, not 62.5 A.
    public void The_continuous_factor_is_applied_once()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.VehicleCharging, 40, LoadDuty.Continuous)));
        Assert.Equal((50, 50), (design.Required.Amperes, design.Device.Rating.Amperes));
        Assert.Equal(ConductorSize.Awg6, design.Conductors.Size);
    }

    [Fact] // 32 A continuous with six conductors: 10 AWG fails at the terminations (35 < 40), and 55 x 0.8 = 44 A is enough for 32 A; at 60 °C 40 A is enough too.
    public void The_two_tests_of_a_conductor_are_made_apart()
    {
        Load load = Sample.Amperes(LoadKind.Other, 32, LoadDuty.Continuous);
        BranchCircuitRequest request = Sample.Pipe(load, route: Sample.Stretch(others: 4));
        BranchCircuitDesign design = Sample.Design(request);
        Assert.Equal((40, ConductorSize.Awg8, 44), (design.Device.Rating.Amperes, design.Conductors.Size, Math.Round(design.Conductors.Ampacity.Amperes, 9)));
        Assert.Equal(DesignLimit.Terminations, design.Conductors.Limit);

        // A novice wants 32 x 1.25 / 0.8 = 50 A of wire, which at 60 °C is 6 AWG.
        BranchCircuitDesign cooler = Sample.Design(request with { SupplyTermination = TerminationRating.C60, LoadTermination = TerminationRating.C60 });
        Assert.Equal(ConductorSize.Awg8, cooler.Conductors.Size);
    }

    [Fact] // The ground is sized by the device: 10 AWG for 30 A, not by the 16 A load.
    public void The_ground_is_sized_by_the_device() =>
        Assert.Equal(ConductorSize.Awg10, Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.Other, 24, LoadDuty.Continuous))).EquipmentGround.Size);

    [Theory] // 310.15(E): the neutral of a three-wire 120/240 V circuit is not counted; that of two lines and the neutral of a wye is.
    [InlineData(SupplySystem.SplitPhase120V240V, 2)]
    [InlineData(SupplySystem.Wye120V208V, 3)]
    public void The_neutral_is_counted_by_the_system(SupplySystem system, double count)
    {
        BranchCircuitRequest request = Sample.Cable(Sample.Amperes(LoadKind.Other, 16, LoadDuty.Noncontinuous) with { NeedsNeutral = true }) with { System = system };
        Determination<BranchCircuitDesign> found = BranchCircuit.Design(Sample.Rules2023, request);
        Assert.Equal(count, Assert.Single(found.Derivation, s => s.Name == "own-count").Value);
    }

    [Fact] // The drop goes there and back, and is a share of 240 V: 3 V of 240 V is 1.25 percent. 2 x 46.875 / 1000 x 2.0 x 16 = 3 V.
    public void The_drop_is_there_and_back_and_of_the_voltage_of_the_load()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.Other, 16, LoadDuty.Noncontinuous), Sample.Stretch(feet: 46.875)));
        Assert.Equal(3, design.Drop.Drop.Volts, 9);
        Assert.Equal(1.25, design.Drop.Share.Percent, 9);
    }

    [Fact] // 9600 W on 240 V is 40 A, not 80 A.
    public void Power_is_divided_by_the_voltage_between_the_lines() =>
        Assert.Equal(40, Sample.Design(Sample.Cable(Sample.Watts(LoadKind.SpaceHeater, 9600))).LoadCurrent.Amperes, 9);

    [Fact] // A 5 kW 240 V heater on 208 V: 5 x (208/240)^2 = 3.755 kW, 18.06 A; not 24.0 A and not 20.8 A.
    public void A_heater_on_a_lower_voltage_takes_less()
    {
        Load heater = Sample.Watts(LoadKind.StorageWaterHeater, 5000);
        BranchCircuitDesign design = Sample.Design(Sample.Cable(heater) with { System = SupplySystem.Wye120V208V });
        Assert.Equal(18.06, design.LoadCurrent.Amperes, 2);
        Assert.Equal(208, design.SupplyVoltage.Volts);
        Assert.Equal(25, design.Device.Rating.Amperes);
    }

    [Fact] // 10 kVA on 208 V three-phase: 10000 / (208 x 1.732) = 27.76 A, not 48 A.
    public void Three_phases_share_the_current()
    {
        Load load = new()
        {
            Kind = LoadKind.Other,
            Connection = CircuitConnection.ThreePhase,
            ApparentPower = ElectricApparentPower.FromVoltamperes(10_000),
            RatedVoltage = ElectricPotential.FromVolts(208),
            PowerFactor = Ratio.FromDecimalFractions(0.9),
            Duty = LoadDuty.Noncontinuous,
            NeedsNeutral = false,
        };
        BranchCircuitDesign design = Sample.Design(Sample.Pipe(load) with { System = SupplySystem.Wye120V208V });
        Assert.Equal(27.76, design.LoadCurrent.Amperes, 2);
        Assert.Equal((30, 3), (design.Device.Rating.Amperes, design.Device.Poles));
    }

    [Theory] // Derated to 17.5 A (12 AWG THWN, nine conductors): 15 A for several receptacles, else the next rating up.
    [InlineData(true, 15)]
    [InlineData(false, 20)]
    public void No_next_size_up_for_several_receptacles(bool receptacles, double amperes)
    {
        BranchCircuitRequest like = Sample.Pipe(Sample.Amperes(LoadKind.Other, 1), InsulationType.Thwn, Sample.Stretch(others: 7));
        ConductorLimitsResult limits = Sample.Limit(Sample.Limits(ConductorSize.Awg12, like, receptacles));
        Assert.Equal((17.5, amperes), (Math.Round(limits.Ampacity.Amperes, 9), limits.LargestDevice.Amperes));
    }

    [Fact] // The same in a design: 16 A of receptacles asks for 20 A, and 12 AWG at 17.5 A will not do.
    public void Receptacles_on_a_derated_conductor_take_the_next_conductor()
    {
        Load load = Sample.Amperes(LoadKind.Receptacles, 16, LoadDuty.Noncontinuous, CircuitConnection.LineToNeutral);
        BranchCircuitDesign design = Sample.Design(Sample.Pipe(load, InsulationType.Thwn, Sample.Stretch(others: 7)));
        Assert.Equal((20, ConductorSize.Awg10), (design.Device.Rating.Amperes, design.Conductors.Size));
    }

    [Fact] // 4500 W: 18.75 A, 23.4 A with the factor: 25 A and 10 AWG, never 20 A and 12 AWG. Trade magazine on water heaters.
    public void A_water_heater_is_continuous()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Watts(LoadKind.StorageWaterHeater, 4500, duty: LoadDuty.Noncontinuous)));
        Assert.Equal((25, ConductorSize.Awg10, 30), (design.Device.Rating.Amperes, design.Conductors.Size, design.LargestDevice.Amperes));
    }

    [Theory] // Nameplate 22 A and 35 A: 12 AWG at 75 °C carries 25 A; at 60 °C it takes 10 AWG; the device is up to 35 A.
    [InlineData(InsulationType.Thhn, ConductorSize.Awg12)]
    [InlineData(null, ConductorSize.Awg10)]
    public void An_air_conditioner_goes_by_its_nameplate(InsulationType? insulation, ConductorSize size)
    {
        Load load = Sample.AirConditioner(22, 35);
        BranchCircuitDesign design = Sample.Design(insulation is { } type ? Sample.Pipe(load, type) : Sample.Cable(load));
        Assert.Equal((size, 35), (design.Conductors.Size, design.LargestDevice.Amperes));
    }

    [Theory] // Never above the plate, not even to the next standard rating. 22 A is no standard rating: 20 A.
    [InlineData(18, 25, 25)]
    [InlineData(18, 28, 25)]
    [InlineData(18, 22, 20)]
    public void The_marked_maximum_is_not_rounded_up(double minimum, double maximum, double device)
    {
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.AirConditioner(minimum, maximum)));
        Assert.Equal((device, device), (design.Device.Rating.Amperes, design.LargestDevice.Amperes));
    }

    [Fact] // A demand of 8 kW on 240 V is 33.3 A, as the caller gives it: not the 50 A of the nameplate. A range is not continuous and has a neutral.
    public void A_range_goes_by_the_current_it_is_given()
    {
        Load range = Sample.Amperes(LoadKind.Range, 33.4) with { NeedsNeutral = null };
        BranchCircuitDesign design = Sample.Design(Sample.Cable(range));
        Assert.Equal(ConductorSize.Awg8, design.Conductors.Size);
        Assert.True(design.Neutral.Needed);
        Assert.InRange(design.Device.Rating.Amperes, 34, 40);
        Assert.Equal("8/3", design.Cable!.TradeSize);
    }

    [Fact] // 310.10: only 1/0 AWG and larger in parallel.
    public void Two_small_conductors_are_not_put_in_parallel()
    {
        ConductorLimitsRequest request = Sample.Limits(ConductorSize.Awg6, Sample.Pipe(Sample.Amperes(LoadKind.Other, 1)));
        Determination<ConductorLimitsResult> found = ConductorLimits.Determine(Sample.Rules2023, request with { Run = request.Run with { ParallelSets = 2 } });
        Assert.Equal(("not-permitted", "too-small-for-parallel"), (found.NotCovered!.Code, found.NotCovered.Reason));
        Assert.Contains(found.Findings, f => f.Code == "too-small-for-parallel");
    }

    [Fact] // 12 AWG taken up to 6 AWG takes the ground from 12 to 6 AWG.
    public void The_ground_grows_with_the_conductors()
    {
        BranchCircuitDesign design = Sample.Design(Sample.Pipe(Sample.Amperes(LoadKind.Other, 16, LoadDuty.Continuous)) with
        {
            Preferences = new DesignPreferences { SmallestSize = ConductorSize.Awg6 },
        });
        Assert.Equal((20, ConductorSize.Awg6), (design.Device.Rating.Amperes, design.Conductors.Size));
        Assert.Equal((ConductorSize.Awg6, DesignLimit.ConductorIncrease), (design.EquipmentGround.Size, design.EquipmentGround.Limit));
    }

    [Fact] // In cable as sold the ground stays 10 AWG, and that is said.
    public void A_ground_in_cable_that_is_too_small_is_said()
    {
        BranchCircuitRequest request = Sample.Cable(Sample.Amperes(LoadKind.Other, 16, LoadDuty.Continuous)) with
        {
            Preferences = new DesignPreferences { SmallestSize = ConductorSize.Awg6 },
        };
        Assert.Contains(BranchCircuit.Design(Sample.Rules2023, request).Findings, f => f.Code == "ground-in-cable-too-small");
    }

    [Fact] // A 20 A circuit carries 16 A for four hours. Heater maker's chart.
    public void Sixteen_amperes_are_the_most_continuous_load_of_20()
    {
        ConductorLimitsResult limits = Sample.Limit(Sample.Limits(ConductorSize.Awg12, Sample.Cable(Sample.Amperes(LoadKind.Other, 1))));
        Assert.Equal((20, 16), (limits.MostNoncontinuousLoad.Amperes, limits.MostContinuousLoad.Amperes));
    }

    [Fact] // NM 12 AWG at 45 °C: 30 x 0.87 = 26.1, held to 20 A; not 20 x 0.71 and not 16 A.
    public void An_attic_does_not_take_from_the_60_degree_column()
    {
        RouteSegment attic = Sample.Stretch(celsius: 45);
        Assert.Equal(20, Sample.Limit(Sample.Limits(ConductorSize.Awg12, Sample.Cable(Sample.Amperes(LoadKind.Other, 1), attic))).Ampacity.Amperes);
        BranchCircuitDesign design = Sample.Design(Sample.Cable(Sample.Amperes(LoadKind.Other, 20, LoadDuty.Noncontinuous), attic));
        Assert.Equal(ConductorSize.Awg12, design.Conductors.Size);
    }

    [Fact] // Twelve 12/2 NM through one sealed hole: 24 conductors, 45 percent of 30 A = 13.5 A, 15 A by the next rating up.
    public void Twelve_cables_in_one_sealed_hole()
    {
        RouteSegment hole = Sample.Stretch(others: 22) with { Grouping = CableGrouping.SealedOpening, OtherCables = 11 };
        ConductorLimitsResult limits = Sample.Limit(Sample.Limits(ConductorSize.Awg12, Sample.Cable(Sample.Amperes(LoadKind.Other, 1), hole)));
        Assert.Equal((13.5, 15), (Math.Round(limits.Ampacity.Amperes, 9), limits.LargestDevice.Amperes));
    }

    [Fact] // Three NM 12/2 bundled: six conductors, 0.8 of 30 = 24 A, held to 20 A; the grounds do not count.
    public void Grounds_do_not_count_in_a_bundle()
    {
        RouteSegment bundle = Sample.Stretch(others: 4);
        Assert.Equal(20, Sample.Limit(Sample.Limits(ConductorSize.Awg12, Sample.Cable(Sample.Amperes(LoadKind.Other, 1), bundle))).Ampacity.Amperes);
    }
}
