using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Overcurrent;

namespace ElectroRules.Circuits;

/// <summary>Which test a size of a branch circuit fails.</summary>
internal enum FailedTest
{
    None,
    Terminations,
    Surroundings,
    DeviceProtection,
}

/// <summary>The tests of a size in a branch circuit: its load at the terminations and after correction, and what the device protects.</summary>
internal readonly struct CircuitTests(ContinuousNeed need, TerminalNeeds terminals, DeviceStep device)
{
    private readonly ContinuousNeed _need = need;
    private readonly TerminalNeeds _terminals = terminals;

    internal ContinuousNeed Need => _need;

    internal TerminalNeeds Terminals => _terminals;

    internal DeviceStep Device { get; } = device;

    internal FailedTest Test(in ResolvedRun run, int size)
    {
        switch (ConductorNeeds.Test(in run, size, in _need, in _terminals))
        {
            case FailedNeed.Terminations:
                return FailedTest.Terminations;
            case FailedNeed.AfterCorrection:
                return FailedTest.Surroundings;
        }

        double usable = ConductorNeeds.Usable(in run, size, in _terminals);
        return Protects(run.RuleSet, usable, size, run.Material) ? FailedTest.None : FailedTest.DeviceProtection;
    }

    /// <summary>Whether a size would do if nothing were corrected or adjusted.</summary>
    internal bool HoldsBeforeCorrection(in ResolvedRun run, int size)
    {
        double listed = run.ListedWithinCable(size, TemperatureColumn.Of(_terminals.Required.Value));
        return Limit.AtLeast(listed, _need.AtTerminations.Value) && Protects(run.RuleSet, listed, size, run.Material);
    }

    private bool Protects(RuleSet rules, double ampacity, int size, ConductorMaterial material)
    {
        ProtectionRules protection = Device.Protection;
        double largest = DeviceForConductor.Largest(rules, ampacity, size, material, in protection);
        return Limit.AtLeast(largest, Device.Rating.Value);
    }
}

/// <summary>The facts for the drop of a branch circuit, and the wish for a limit.</summary>
internal readonly record struct DropWish(DropNeed Need, double PowerFactor, double PanelVolts, bool HasLimit)
{
    internal static DropWish Of(RuleSet rules, BranchCircuitRequest request, Figure supply, Figure current)
    {
        double feet = 0;
        for (int i = 0; i < request.Route.Count; i++)
        {
            feet += Canonical.Feet(request.Route[i].Length!.Value);
        }

        double volts = request.PanelVoltage is { } found ? Canonical.Volts(found) : supply.Value;
        double factor = request.Load.PowerFactor is { } given && !Loads.LoadKinds.IsResistive(rules, request.Load.Kind)
            ? Canonical.Fraction(given)
            : 1;
        double limit = request.Preferences.DropLimit is { } wanted ? Canonical.Fraction(wanted) : double.NaN;
        return new DropWish(
            new DropNeed(request.Load.Connection, current.Value, volts, feet, 1, limit), factor, volts, !double.IsNaN(limit));
    }
}
