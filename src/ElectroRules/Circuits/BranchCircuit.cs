using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Internal;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Circuits;

/// <summary>The branch circuit of one load: operation <c>branch-circuit.design</c>.</summary>
public static class BranchCircuit
{
    /// <summary>The branch circuit of one load: device, conductors, neutral, ground, drop, reserve, and the other ways that were tried.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A number of the request is out of its range, or a choice is not a defined one.</exception>
    public static Determination<BranchCircuitDesign> Design(RuleSet rules, BranchCircuitRequest request)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(request);
        request.Check(RequestCheck.Throwing);
        if (!rules.Table(LoadKindsTable.Index).IsPresent)
        {
            var d = new Deriving(rules.Resolver);
            LoadKinds.Covered(rules, ref d);
            return d.Finish<BranchCircuitDesign>(value: null);
        }

        bool? continuous = LoadNeed.IsContinuous(rules, request.Load);
        return continuous is { } known
            ? Design(rules, request, known, stillPossible: [])
            : Design(rules, request, isContinuous: true, BothDuties.Answers(rules, request));
    }

    /// <summary>The design for a load that is taken as continuous or not. Answers that are still possible make it ask for the duty.</summary>
    internal static Determination<BranchCircuitDesign> Design(
        RuleSet rules, BranchCircuitRequest request, bool isContinuous, IReadOnlyList<string> stillPossible)
    {
        var d = new Deriving(rules.Resolver);
        if (!Covered(rules, ref d))
        {
            return d.Finish<BranchCircuitDesign>(value: null);
        }

        if (stillPossible.Count > 0)
        {
            d.Needs(Rules.ContinuousByKind, "/load/duty", stillPossible);
        }

        NeutralNeed neutral = NeutralNeed.Find(rules, ref d, request);
        DesignQuestions.Ask(rules, ref d, request);
        Figure supply = LoadCurrent.SupplyVoltage(rules, ref d, request.System, request.Load.Connection);
        Figure current = LoadCurrent.Derive(rules, ref d, request.Load, supply, "/load");
        ConductorRun run = request.Run(neutral.IsRun);
        var segments = new SegmentFactors[request.Route.Count];
        if (!Ampacity.Resolve(rules, ref d, run, segments, string.Empty, "/load") || d.IsStopped)
        {
            return d.Finish<BranchCircuitDesign>(value: null);
        }

        ContinuousNeed need = LoadNeed.Derive(rules, ref d, request.Load, current, isContinuous, request.HundredPercentRated);
        DeviceStep device = DeviceStep.Derive(rules, ref d, request, current, need);
        if (d.IsStopped)
        {
            return d.Finish<BranchCircuitDesign>(value: null);
        }

        TerminalNeeds terminals = TerminalNeeds.Derive(rules, ref d, run, device.Rating, request.TerminalTest);
        var resolved = new ResolvedRun(rules, run, segments);
        var tests = new CircuitTests(need, terminals, device);
        var drop = DropWish.Of(rules, request, supply, current);
        SizeChoice size = SizeChoice.Find(rules, ref d, in resolved, request, in tests, in drop, neutral.Insulated(request.Load.Connection));
        if (d.IsStopped)
        {
            return d.Finish<BranchCircuitDesign>(value: null);
        }

        BranchCircuitDesign? design = DesignSteps.Write(rules, ref d, in resolved, request, in tests, in drop, in size, in neutral, supply, current, isContinuous);
        return d.IsStopped ? d.Finish<BranchCircuitDesign>(value: null) : d.Finish(design);
    }

    private static bool Covered(RuleSet rules, ref Deriving d) =>
        LoadKinds.Covered(rules, ref d)
        && OvercurrentDevice.Covered(rules, ref d)
        && ConductorImpedance.Covered(rules, ref d)
        && EquipmentGrounding.Covered(rules, ref d);
}

/// <summary>The answers for a load of unknown duty: both ways are tried.</summary>
internal static class BothDuties
{
    internal static IReadOnlyList<string> Answers(RuleSet rules, BranchCircuitRequest request)
    {
        string without = Answer(BranchCircuit.Design(rules, request, isContinuous: false, []));
        string with = Answer(BranchCircuit.Design(rules, request, isContinuous: true, []));
        return [without, with];
    }

    private static string Answer(Determination<BranchCircuitDesign> determination)
    {
        if (!determination.TryGetValue(out BranchCircuitDesign? design))
        {
            return determination.NotCovered?.Reason is { Length: > 0 } reason ? reason : determination.NotCovered?.Code ?? "needs-input";
        }

        double amperes = Canonical.Amperes(design.Device.Rating);
        return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{amperes} A, {design.Conductors.Size.Label()}");
    }
}
