using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Results;
using UnitsNet;

namespace ElectroRules.Tests.Circuits;

/// <summary>Complete requests that the tests start from.</summary>
internal static class Sample
{
    internal static RuleSet Rules2023 { get; } = RuleSet.For(EditionId.Nec2023);

    internal static IEnumerable<EditionId> Covered => [EditionId.Nec2014, EditionId.Nec2017, EditionId.Nec2020, EditionId.Nec2023];

    internal static Load Watts(LoadKind kind, double watts, double volts = 240, LoadDuty? duty = null) => new()
    {
        Kind = kind,
        Connection = CircuitConnection.LineToLine,
        Power = Power.FromWatts(watts),
        RatedVoltage = ElectricPotential.FromVolts(volts),
        Duty = duty,
        NeedsNeutral = false,
    };

    internal static Load Amperes(LoadKind kind, double amperes, LoadDuty? duty = null, CircuitConnection connection = CircuitConnection.LineToLine) => new()
    {
        Kind = kind,
        Connection = connection,
        Current = ElectricCurrent.FromAmperes(amperes),
        PowerFactor = Ratio.FromDecimalFractions(1),
        Duty = duty,
        NeedsNeutral = connection == CircuitConnection.LineToNeutral,
    };

    internal static Load AirConditioner(double minimum, double maximum) => Amperes(LoadKind.AirConditioning, minimum * 0.8) with
    {
        PowerFactor = Ratio.FromDecimalFractions(0.9),
        MinimumCircuitAmpacity = ElectricCurrent.FromAmperes(minimum),
        MaximumDevice = ElectricCurrent.FromAmperes(maximum),
    };

    internal static RouteSegment Stretch(double feet = 50, double celsius = 30, int others = 0) => new()
    {
        Length = Length.FromFeet(feet),
        Ambient = Temperature.FromDegreesCelsius(celsius),
        Location = LocationKind.Dry,
        OtherCurrentCarryingConductors = others,
        InThermalInsulation = false,
        Grouping = CableGrouping.Bundled,
        OtherCables = others / 2,
    };

    internal static BranchCircuitRequest Cable(Load load, RouteSegment? route = null) => new()
    {
        Load = load,
        System = SupplySystem.SplitPhase120V240V,
        Material = ConductorMaterial.Copper,
        Method = WiringMethod.NonmetallicSheathedCable,
        Route = [route ?? Stretch()],
        SupplyTermination = TerminationRating.C75,
        LoadTermination = TerminationRating.C75,
    };

    internal static BranchCircuitRequest Pipe(Load load, InsulationType insulation = InsulationType.Thhn, RouteSegment? route = null) =>
        Cable(load, route) with { Method = WiringMethod.ElectricalMetallicTubing, Insulation = insulation };

    internal static ConductorLimitsRequest Limits(ConductorSize size, BranchCircuitRequest like, bool receptacles = false, double powerFactor = 1) => new()
    {
        Size = size,
        Run = new ConductorRun
        {
            Material = like.Material,
            Method = like.Method,
            Insulation = like.Insulation,
            Wires = new CircuitWires { System = like.System, Connection = like.Load.Connection, Neutral = false },
            Route = like.Route,
            SupplyTermination = like.SupplyTermination,
            LoadTermination = like.LoadTermination,
        },
        CircuitRating = ElectricCurrent.FromAmperes(20),
        SeveralReceptacles = receptacles,
        PowerFactor = Ratio.FromDecimalFractions(powerFactor),
    };

    internal static BranchCircuitDesign Design(BranchCircuitRequest request, EditionId edition = EditionId.Nec2023)
    {
        Determination<BranchCircuitDesign> determination = BranchCircuit.Design(RuleSet.For(edition), request);
        Assert.True(determination.TryGetValue(out BranchCircuitDesign? design), Describe(determination));
        return design;
    }

    internal static ConductorLimitsResult Limit(ConductorLimitsRequest request, EditionId edition = EditionId.Nec2023)
    {
        Determination<ConductorLimitsResult> determination = ConductorLimits.Determine(RuleSet.For(edition), request);
        Assert.True(determination.TryGetValue(out ConductorLimitsResult? result), Describe(determination));
        return result;
    }

    internal static string Describe(Determination determination) =>
        $"{determination.Status}: {determination.NotCovered} {string.Join(", ", determination.Needs.Select(n => n.Path))} {string.Join(", ", determination.Findings.Select(f => f.Code))}";
}
