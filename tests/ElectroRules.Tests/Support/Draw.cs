using ElectroRules.Conductors;

namespace ElectroRules.Tests.Support;

/// <summary>Draws requests from a seed; the same seed always gives the same request.</summary>
#pragma warning disable CA5394 // The numbers are for tests, not for secrets.
internal sealed class Draw(int seed)
{
    private readonly Random _random = new(seed);

    internal EditionId Edition() => Pick(VerifiedEditions.List);

    internal T Pick<T>(IReadOnlyList<T> list) => list[_random.Next(list.Count)];

    internal T Choice<T>()
        where T : struct, Enum => Pick(Enum.GetValues<T>());

    internal bool Yes() => _random.Next(2) == 1;

    internal double Between(double least, double most) => Math.Round(least + (_random.NextDouble() * (most - least)), 2);

    internal int Count(int most) => _random.Next(most + 1);

    internal RouteSegment Segment() => new()
    {
        Length = Given.Feet(Between(0.5, Yes() ? 15 : 200)),
        Ambient = Given.Celsius(Between(-20, 60)),
        Location = Count(9) == 0 ? LocationKind.Wet : LocationKind.Dry,
        OtherCurrentCarryingConductors = Yes() ? 0 : Count(45),
        Grouping = Choice<CableGrouping>(),
        OtherCables = Count(6),
        InThermalInsulation = Yes(),
        HeightAboveRoof = Count(4) == 0 ? UnitsNet.Length.FromInches(Between(0, 40)) : null,
    };

    internal ConductorRun Run()
    {
        SupplySystem system = Choice<SupplySystem>();
        return new ConductorRun
        {
            Material = Choice<ConductorMaterial>(),
            Method = Choice<WiringMethod>(),
            Insulation = Choice<InsulationType>(),
            Wires = new CircuitWires
            {
                System = system,
                Connection = system == SupplySystem.SplitPhase120V240V ? CircuitConnection.LineToLine : Choice<CircuitConnection>(),
                Neutral = Yes(),
                MostlyNonlinear = Yes(),
            },
            Route = [.. Enumerable.Range(0, 1 + Count(3)).Select(_ => Segment())],
            SupplyTermination = Yes() ? Choice<TerminationRating>() : null,
            LoadTermination = Yes() ? Choice<TerminationRating>() : null,
            ParallelSets = Count(5) == 0 ? 2 : 1,
        };
    }

    internal AmpacityRequest Ampacity() => new()
    {
        Size = (ConductorSize)(3 + Count(27)),
        Run = Run(),
        CircuitRating = Given.Amperes(Pick([20.0, 60, 100, 125, 400])),
    };

    internal VoltageDropRequest Drop() => new()
    {
        Size = (ConductorSize)(4 + Count(22)),
        Material = Pick([ConductorMaterial.Copper, ConductorMaterial.Aluminum]),
        Method = Choice<WiringMethod>(),
        Connection = Choice<CircuitConnection>(),
        Current = Given.Amperes(Between(1, 200)),
        SourceVoltage = UnitsNet.ElectricPotential.FromVolts(Pick([120.0, 208, 240, 277, 480])),
        Length = Given.Feet(Between(5, 500)),
        Impedance = Choice<ImpedanceMethod>(),
        PowerFactor = Given.Share(Between(0.5, 1)),
        ParallelSets = 1 + Count(2),
    };

    internal int Place(int count) => _random.Next(count);

    internal T[] Shuffled<T>(IReadOnlyList<T> list)
    {
        T[] copy = [.. list];
        _random.Shuffle(copy);
        return copy;
    }
}
#pragma warning restore CA5394
