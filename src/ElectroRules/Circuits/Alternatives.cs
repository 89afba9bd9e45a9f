using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;

namespace ElectroRules.Circuits;

/// <summary>Tries the same load in the other metal and in the other kind of wiring.</summary>
internal static class Alternatives
{
    /// <summary>The ways that are tried beside the one asked for: common practice in a dwelling.</summary>
    private static readonly (ConductorMaterial Material, WiringMethod Method, InsulationType? Insulation)[] Ways =
    [
        (ConductorMaterial.Copper, WiringMethod.NonmetallicSheathedCable, null),
        (ConductorMaterial.Copper, WiringMethod.ElectricalMetallicTubing, InsulationType.Thwn2),
        (ConductorMaterial.Aluminum, WiringMethod.ElectricalMetallicTubing, InsulationType.Xhhw2),
    ];

    internal static IReadOnlyList<AlternativeCircuit> Try(
        RuleSet rules, BranchCircuitRequest request, in CircuitTests tests, bool neutral, int insulated)
    {
        var found = new List<AlternativeCircuit>(Ways.Length);
        foreach ((ConductorMaterial material, WiringMethod method, InsulationType? insulation) in Ways)
        {
            if (material != request.Material || method != request.Method)
            {
                found.Add(TryWay(rules, request with { Material = material, Method = method, Insulation = insulation }, in tests, neutral, insulated));
            }
        }

        return found;
    }

    private static AlternativeCircuit TryWay(
        RuleSet rules, BranchCircuitRequest other, in CircuitTests tests, bool neutral, int insulated)
    {
        // The steps of an alternative are not kept: only its size, or why it does not work.
        var d = new Deriving(rules.Resolver);
        ConductorRun run = other.Run(neutral);
        var segments = new SegmentFactors[other.Route.Count];
        if (!Ampacity.Resolve(rules, ref d, run, segments, string.Empty))
        {
            return Describe(other, size: 0, d.WhyStopped ?? "needs-input");
        }

        var resolved = new ResolvedRun(rules, run, segments);
        int size = SizeChoice.ByAmpacityOf(in resolved, in tests, ConductorSearch.SmallestAllowed(rules, other.Material));
        if (size > 0 && other.Method == WiringMethod.NonmetallicSheathedCable)
        {
            size = CableMakes.Sold(rules, other.Material, size, insulated, out _);
            return Describe(other, size, size == 0 ? "no-such-cable" : null);
        }

        return Describe(other, size, size == 0 ? "no-size-large-enough" : null);
    }

    private static AlternativeCircuit Describe(BranchCircuitRequest other, int size, string? whyNot) => new()
    {
        Material = other.Material,
        Method = other.Method,
        Size = size == 0 ? null : (ConductorSize)size,
        WhyNot = whyNot,
    };
}
