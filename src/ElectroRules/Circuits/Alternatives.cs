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
        RuleSet rules, ref Deriving d, BranchCircuitRequest request, SegmentFactors[] room, in CircuitTests tests, bool neutral, int insulated)
    {
        int count = 0;
        var found = new AlternativeCircuit[Ways.Length];
        foreach ((ConductorMaterial material, WiringMethod method, InsulationType? insulation) in Ways)
        {
            if (material != request.Material || method != request.Method)
            {
                d.BeginTrial();
                found[count++] = TryWay(rules, ref d, room, request.Run(neutral, material, method, insulation), in tests, insulated);
            }
        }

        d.EndTrial();
        return count == found.Length ? found : found[..count];
    }

    private static AlternativeCircuit TryWay(
        RuleSet rules, ref Deriving d, SegmentFactors[] segments, ConductorRun run, in CircuitTests tests, int insulated)
    {
        if (!Ampacity.Resolve(rules, ref d, run, segments, string.Empty, "/load"))
        {
            return Describe(run, size: 0, d.WhyTrialStopped);
        }

        var resolved = new ResolvedRun(rules, run, segments);
        int size = SizeChoice.ByAmpacityOf(in resolved, in tests, ConductorSearch.SmallestAllowed(rules, run.Material));
        if (size > 0 && run.Method == WiringMethod.NonmetallicSheathedCable)
        {
            size = CableMakes.Sold(rules, run.Material, size, insulated, out _);
            return Describe(run, size, size == 0 ? "no-such-cable" : null);
        }

        return Describe(run, size, size == 0 ? "no-size-large-enough" : null);
    }

    private static AlternativeCircuit Describe(ConductorRun run, int size, string? whyNot) => new()
    {
        Material = run.Material,
        Method = run.Method,
        Size = size == 0 ? null : (ConductorSize)size,
        WhyNot = whyNot,
    };
}
