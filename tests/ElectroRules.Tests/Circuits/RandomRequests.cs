using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using UnitsNet;

namespace ElectroRules.Tests.Circuits;

/// <summary>Complete requests at random, the same for the same seed.</summary>
internal static class RandomRequests
{
    private static readonly string[] AllLetters =
        ["TW", "THW", "THW-2", "THHW", "THWN", "THWN-2", "THHN", "XHHW", "XHHW-2", "RHH", "RHW", "RHW-2", "USE", "USE-2"];

    internal static string Letters(InsulationType insulation) => AllLetters[(int)insulation - 1];

    internal static EditionId Edition(int seed) => Sample.Covered.ElementAt((int)((uint)seed % 4));

    internal static BranchCircuitRequest Next(int seed)
    {
        var random = new Random(seed);
        WiringMethod method = Pick(random, WiringMethod.NonmetallicSheathedCable, WiringMethod.NonmetallicSheathedCable, WiringMethod.ArmoredCable, WiringMethod.UndergroundFeederCable, WiringMethod.ServiceEntranceCable, WiringMethod.ElectricalMetallicTubing, WiringMethod.RigidPvcConduit);
        bool raceway = method >= WiringMethod.ElectricalMetallicTubing;
        SupplySystem system = Pick(random, SupplySystem.SplitPhase120V240V, SupplySystem.SplitPhase120V240V, SupplySystem.Wye120V208V, SupplySystem.Wye277V480V);
        return new BranchCircuitRequest
        {
            Load = LoadOf(random, system),
            System = system,
            Material = random.Next(4) == 0 && method != WiringMethod.NonmetallicSheathedCable ? ConductorMaterial.Aluminum : ConductorMaterial.Copper,
            Method = method,
            Insulation = raceway ? (InsulationType)random.Next(2, 15) : null,
            Route = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Segment(random))],
            SupplyTermination = Pick<TerminationRating?>(random, null, TerminationRating.C60, TerminationRating.C75, TerminationRating.C75, TerminationRating.C90),
            LoadTermination = Pick<TerminationRating?>(random, null, TerminationRating.C60, TerminationRating.C75, TerminationRating.C75, TerminationRating.C90),
            DeviceKind = random.Next(4) == 0 ? OvercurrentDeviceKind.Fuse : OvercurrentDeviceKind.CircuitBreaker,
            HundredPercentRated = Pick<bool?>(random, null, false, false, true),
            Preferences = new DesignPreferences
            {
                NoNextSizeUp = random.Next(5) == 0,
                SpareNeutral = system == SupplySystem.SplitPhase120V240V && random.Next(4) == 0,
                SmallestSize = random.Next(4) == 0 ? (ConductorSize)random.Next(3, 10) : null,
            },
        };
    }

    private static Load LoadOf(Random random, SupplySystem system)
    {
        LoadKind kind = (LoadKind)random.Next(1, 13);
        CircuitConnection connection = kind == LoadKind.Receptacles
            ? CircuitConnection.LineToNeutral
            : (CircuitConnection)random.Next(1, system == SupplySystem.SplitPhase120V240V ? 3 : 4);
        double amperes = Math.Round(random.NextDouble() * random.NextDouble() * 150, 1) + 1;
        bool byPower = random.Next(2) == 0 && kind != LoadKind.AirConditioning;
        bool conditioner = kind == LoadKind.AirConditioning;
        return new Load
        {
            Kind = kind,
            Connection = connection,
            Current = byPower ? null : ElectricCurrent.FromAmperes(amperes),
            Power = byPower ? Power.FromWatts(Math.Round(amperes * 240)) : null,
            RatedVoltage = byPower || random.Next(3) == 0 ? ElectricPotential.FromVolts(Pick(random, 208.0, 240, 277)) : null,
            PowerFactor = Ratio.FromDecimalFractions(Pick(random, 1.0, 0.9, 0.8)),
            Duty = random.Next(2) == 0 ? LoadDuty.Continuous : LoadDuty.Noncontinuous,
            NeedsNeutral = connection == CircuitConnection.LineToLine && random.Next(2) == 0,
            MinimumCircuitAmpacity = conditioner ? ElectricCurrent.FromAmperes(Math.Round(amperes * 1.2, 1)) : null,
            MaximumDevice = conditioner ? ElectricCurrent.FromAmperes(Math.Round(amperes * 1.8 / 5) * 5 + 5)
                : random.Next(6) == 0 ? ElectricCurrent.FromAmperes(Math.Round(amperes * 1.5)) : null,
        };
    }

    private static RouteSegment Segment(Random random)
    {
        int others = random.Next(3) == 0 ? random.Next(0, 14) : 0;
        return new RouteSegment
        {
            Length = Length.FromFeet(Pick(random, 1.5, 8, 12, 40, 120)),
            Ambient = Temperature.FromDegreesCelsius(random.Next(-10, 62)),
            Location = random.Next(12) == 0 ? LocationKind.Wet : LocationKind.Dry,
            OtherCurrentCarryingConductors = others,
            Grouping = random.Next(2) == 0 ? CableGrouping.Bundled : CableGrouping.Apart,
            OtherCables = others,
            InThermalInsulation = random.Next(2) == 0,
        };
    }

    private static T Pick<T>(Random random, params T[] choices) => choices[random.Next(choices.Length)];
}
