using System.Globalization;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Results;

namespace KilnWorkshop;

/// <summary>The figures that an electrician asks for first.</summary>
internal static class KeyFigures
{
    public static void Print(Determination<BranchCircuitDesign> answer)
    {
        if (!answer.TryGetValue(out BranchCircuitDesign? c))
        {
            return;
        }

        Line($"Load:       {c.LoadCurrent.Amperes:0.0} A, {(c.Continuous ? "continuous" : "not continuous")}; the circuit must carry {c.Required.Amperes:0.0} A");
        Line($"Breaker:    {c.Device.Rating.Amperes:0} A, {c.Device.Poles}-pole");
        Line($"Conductors: {c.Conductors.Count} of {c.Conductors.Size.Label()}, good for {c.Conductors.Ampacity.Amperes:0} A; cable {c.Cable?.TradeSize ?? "none"}");
        Line($"Ground:     {c.EquipmentGround.Size.Label()} or larger");
        Line($"Drop:       {c.Drop.Drop.Volts:0.0} V ({c.Drop.Share.Percent:0.0} %); {c.Drop.VoltageAtLoad.Volts:0.0} V at the kiln");
        Console.WriteLine();
    }

    public static void Print(Determination<ConductorLimitsResult> answer)
    {
        if (!answer.TryGetValue(out ConductorLimitsResult? c))
        {
            return;
        }

        Line($"Ampacity:   {c.Ampacity.Amperes:0} A where it lies");
        Line($"Most load:  {c.MostNoncontinuousLoad.Amperes:0} A, or {c.MostContinuousLoad.Amperes:0} A for three hours or more");
        Console.WriteLine();
    }

    private static void Line(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
}
