using System.Globalization;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Results;

namespace KilnWorkshop;

/// <summary>Prints the key figures of a determination.</summary>
internal static class Printer
{
    public static void Title(string text)
    {
        Console.WriteLine();
        Console.WriteLine(text);
        Console.WriteLine(new string('-', text.Length));
    }

    public static void Print(Determination determination)
    {
        Line($"status: {determination.Status}, edition {(int)determination.Stamp.Edition}");
        switch (determination.ValueOrNull)
        {
            case ConductorLimitsResult limits:
                Line($"ampacity where it lies: {limits.Ampacity.Amperes:0.#} A; largest device: {limits.LargestDevice.Amperes:0.#} A");
                Line($"most load: {limits.MostNoncontinuousLoad.Amperes:0.#} A, or {limits.MostContinuousLoad.Amperes:0.#} A for three hours or more");
                break;
            case BranchCircuitDesign design:
                Line($"load: {design.LoadCurrent.Amperes:0.#} A, {(design.Continuous ? "continuous" : "not continuous")}; the circuit must carry {design.Required.Amperes:0.#} A");
                Line($"device: {design.Device.Rating.Amperes:0.#} A");
                Line($"conductors: {design.Conductors.Count} of {design.Conductors.Size.Label()}, {design.Conductors.Ampacity.Amperes:0.#} A, decided by {design.Conductors.Limit}");
                Line($"ground: {design.EquipmentGround.Size.Label()}; cable: {design.Cable?.TradeSize ?? "none"}");
                Line($"drop: {design.Drop.Drop.Volts:0.##} V ({design.Drop.Share.Percent:0.##} %), {design.Drop.VoltageAtLoad.Volts:0.#} V at the kiln");
                break;
        }

        foreach (Need need in determination.Needs)
        {
            Line($"asked: {need.Path} ({need.Rule.Slug}); still possible: {string.Join(" or ", need.StillPossible)}");
        }

        foreach (Finding finding in determination.Findings)
        {
            Line($"finding: {finding.Code} (hazard {finding.Hazard}, standing {finding.Standing}) {finding.Path} [{finding.Citation.Section}]");
        }

        if (determination.NotCovered is { } reason)
        {
            Line($"not covered: {reason.Code}, {reason.Detail}: {reason.Reason}");
        }
    }

    public static void Compare(Determination older, Determination newer)
    {
        var sections = older.Derivation.Zip(newer.Derivation)
            .Where(p => p.First.Citation.Section != p.Second.Citation.Section)
            .Select(p => $"{p.First.Rule.Slug}: {p.First.Citation.Section} became {p.Second.Citation.Section}");
        foreach (string line in sections.Distinct())
        {
            Line(line);
        }

        bool sameSteps = older.Derivation.Select(s => s.Value).SequenceEqual(newer.Derivation.Select(s => s.Value));
        Line(sameSteps ? "Every number is the same." : "The numbers differ.");
    }

    private static void Line(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private static void Line(string text) => Console.WriteLine(text);
}
