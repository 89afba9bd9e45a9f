using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>Resolves the stretches of a route into factors, with a step for each fact and factor.</summary>
internal static class SegmentAmpacity
{
    private static readonly StepDefinition Insulation = new(Rules.InsulationRating, "insulation-temperature", StepOperation.Table, QuantityUnit.Celsius, ConductorInsulationTable.Index);
    private static readonly StepDefinition CableInsulation = new(Rules.CableTemperature, "cable-insulation-temperature", StepOperation.Table, QuantityUnit.Celsius, ConductorCableTemperatureTable.Index);
    private static readonly StepDefinition CableLimit = new(Rules.CableTemperature, "cable-limit-temperature", StepOperation.Table, QuantityUnit.Celsius, ConductorCableTemperatureTable.Index);
    private static readonly StepDefinition InsulatedLargest = new(Rules.CableTemperature, "largest-size-held-to-60", StepOperation.Table, QuantityUnit.ConductorSize, ConductorCableInInsulationTable.Index);
    private static readonly StepDefinition Ambient = new(Rules.AmbientCorrection, "ambient", StepOperation.Given, QuantityUnit.Celsius);
    private static readonly StepDefinition RoofAdder = new(Rules.Rooftop, "adder-fahrenheit", StepOperation.Table, QuantityUnit.Kelvin, ConductorRooftopAdderTable.Index);
    private static readonly StepDefinition RoofKelvin = new(Rules.Rooftop, "adder", StepOperation.FahrenheitDifference, QuantityUnit.Kelvin);
    private static readonly StepDefinition RoofAmbient = new(Rules.Rooftop, "ambient-above-roof", StepOperation.Sum, QuantityUnit.Celsius);
    private static readonly StepDefinition AmbientFactor = new(Rules.AmbientCorrection, "factor", StepOperation.Table, QuantityUnit.One, ConductorAmbientCorrectionTable.Index);

    /// <summary>Whether the rule set has every table that a route needs.</summary>
    internal static bool Covered(RuleSet rules, ref Deriving d) =>
        rules.Has(ref d, ConductorAmpacityTable.Index, Rules.BaseAmpacity)
        && rules.Has(ref d, ConductorInsulationTable.Index, Rules.InsulationRating)
        && rules.Has(ref d, ConductorAmbientCorrectionTable.Index, Rules.AmbientCorrection)
        && rules.Has(ref d, ConductorAdjustmentTable.Index, Rules.Adjustment)
        && rules.Has(ref d, ConductorCableTemperatureTable.Index, Rules.CableTemperature)
        && rules.Has(ref d, WiringMethodsTable.Index, Rules.MethodInPlace);

    /// <summary>Resolves one stretch. What is missing or not permitted is noted in the derivation.</summary>
    internal static SegmentFactors Resolve(RuleSet rules, ref Deriving d, ConductorRun run, int index, Figure own, string pointer)
    {
        RouteSegment segment = run.Route[index];
        var at = new Pointer(pointer, index);
        var factors = new SegmentFactors { CapColumn = TemperatureColumn.None, CapLargestSize = int.MaxValue };
        Missing(ref d, run, segment, at);
        if (segment is not { Length: { } length, Ambient: { } ambient, Location: { } location, OtherCurrentCarryingConductors: { } others })
        {
            return factors;
        }

        factors.LengthFeet = Canonical.Feet(length);
        MethodInPlace(rules, ref d, run.Method, location, at);
        double celsius = InsulationTemperature(rules, ref d, run, location, index, pointer, at);
        if (double.IsNaN(celsius))
        {
            return factors;
        }

        factors.Column = TemperatureColumn.Of(celsius);
        Caps(rules, ref d, run, index, at, ref factors);
        factors.Ambient = AmbientOf(rules, ref d, run, segment, Canonical.Celsius(ambient), factors.Column, index, at);
        factors.Adjustment = SegmentAdjustment.Derive(rules, ref d, run, segment, others, own, index, at, ref factors);
        factors.Factor = factors.Ambient.Value * factors.Adjustment.Value;
        return factors;
    }

    private static void Missing(ref Deriving d, ConductorRun run, RouteSegment segment, Pointer at)
    {
        if (segment.Length is null)
        {
            d.Needs(Rules.LowerAmpacityPortion, at.To("/length"));
        }

        if (segment.Ambient is null)
        {
            d.Needs(Rules.AmbientCorrection, at.To("/ambient"));
        }

        if (segment.Location is null)
        {
            d.Needs(Rules.InsulationRating, at.To("/location"));
        }

        if (segment.OtherCurrentCarryingConductors is null)
        {
            d.Needs(Rules.Adjustment, at.To("/otherCurrentCarryingConductors"));
        }
    }

    private static void MethodInPlace(RuleSet rules, ref Deriving d, WiringMethod method, LocationKind location, Pointer at)
    {
        ReferenceTable methods = rules.Table(WiringMethodsTable.Index);
        int row = (int)method - 1;
        if (methods.At(row, WiringMethodsTable.Column.Permitted) == 0)
        {
            Refuse(ref d, Rules.ForbiddenMethod, "method-forbidden", string.Empty, methods.CiteCell(methods.CellIndex(row, WiringMethodsTable.Column.Permitted)));
            return;
        }

        double allowed = methods.At(row, WiringMethodsTable.Column.Dry + (int)location - 1);
        if (double.IsNaN(allowed))
        {
            d.NotCovered("place-depends-on-listing", Rules.MethodInPlace, at.To("/location"), string.Empty);
        }
        else if (allowed == 0)
        {
            Refuse(ref d, Rules.MethodInPlace, "method-not-for-place", at.To("/location"));
        }
    }

    private static double InsulationTemperature(
        RuleSet rules, ref Deriving d, ConductorRun run, LocationKind location, int index, string pointer, Pointer at)
    {
        ReferenceTable cables = rules.Table(ConductorCableTemperatureTable.Index);
        int row = (int)run.Method - 1;
        int column = (int)location - 1;
        bool fixedByCable = !double.IsNaN(cables.At(row, ConductorCableTemperatureTable.Column.AmpacityLimit));
        if (!double.IsNaN(cables.At(row, ConductorCableTemperatureTable.Column.Dry)) && (fixedByCable || run.Insulation is null))
        {
            if (double.IsNaN(cables.At(row, column)))
            {
                Refuse(ref d, Rules.InsulationRating, "insulation-not-for-place", at.To("/location"));
                return double.NaN;
            }

            return SaidBefore(run, index) ? cables.At(row, column) : cables.Read(ref d, CableInsulation, row, column, StepSubject.Item(index)).Value;
        }

        if (run.Insulation is not { } insulation)
        {
            d.Needs(Rules.InsulationRating, pointer + "/insulation");
            return double.NaN;
        }

        ReferenceTable insulations = rules.Table(ConductorInsulationTable.Index);
        if (double.IsNaN(insulations.At((int)insulation - 1, column)))
        {
            Refuse(ref d, Rules.InsulationRating, "insulation-not-for-place", at.To("/location"));
            return double.NaN;
        }

        return SaidBefore(run, index)
            ? insulations.At((int)insulation - 1, column)
            : insulations.Read(ref d, Insulation, (int)insulation - 1, column, StepSubject.Item(index)).Value;
    }

    /// <summary>Whether the stretch before lies in a place of the same kind, so that its insulation has been stated already.</summary>
    private static bool SaidBefore(ConductorRun run, int index) => index > 0 && run.Route[index - 1].Location == run.Route[index].Location;

    private static void Caps(RuleSet rules, ref Deriving d, ConductorRun run, int index, Pointer at, ref SegmentFactors factors)
    {
        RouteSegment segment = run.Route[index];
        int row = (int)run.Method - 1;
        ReferenceTable cables = rules.Table(ConductorCableTemperatureTable.Index);
        double limit = cables.At(row, ConductorCableTemperatureTable.Column.AmpacityLimit);
        if (!double.IsNaN(limit))
        {
            if (index == 0)
            {
                cables.Read(ref d, CableLimit, row, ConductorCableTemperatureTable.Column.AmpacityLimit);
            }

            factors.CapColumn = TemperatureColumn.Of(limit);
            return;
        }

        ReferenceTable insulated = rules.Table(ConductorCableInInsulationTable.Index);
        double largest = insulated.At(row, ConductorCableInInsulationTable.Column.LargestSize);
        if (double.IsNaN(largest))
        {
            return;
        }

        if (segment.InThermalInsulation is not { } inInsulation)
        {
            d.Needs(Rules.CableTemperature, at.To("/inThermalInsulation"));
        }
        else if (inInsulation)
        {
            insulated.Read(ref d, InsulatedLargest, row, ConductorCableInInsulationTable.Column.LargestSize);
            factors.CapColumn = 0;
            factors.CapLargestSize = (int)largest;
        }
    }

    private static Figure AmbientOf(
        RuleSet rules, ref Deriving d, ConductorRun run, RouteSegment segment, double celsius, int column, int index, Pointer at)
    {
        Figure ambient = d.Given(Ambient, celsius, StepSubject.Item(index));
        if (segment.HeightAboveRoof is { } height)
        {
            ambient = AboveRoof(rules, ref d, run, Canonical.Inches(height), ambient);
        }

        ReferenceTable table = rules.Table(ConductorAmbientCorrectionTable.Index);
        int row = table.RowNotBelow(ambient.Value);
        if (row < 0 || double.IsNaN(table.At(row, column)))
        {
            Refuse(ref d, Rules.AmbientCorrection, "too-hot-for-insulation", at.To("/ambient"));
            return default;
        }

        return table.Read(ref d, AmbientFactor, row, column, ambient, StepSubject.Item(index));
    }

    private static Figure AboveRoof(RuleSet rules, ref Deriving d, ConductorRun run, double inches, Figure ambient)
    {
        ReferenceTable exempt = rules.Table(ConductorRooftopExemptTable.Index);
        if (run.Insulation is { } insulation && exempt.At((int)insulation - 1, ConductorRooftopExemptTable.Column.Exempt) > 0)
        {
            return ambient;
        }

        ReferenceTable table = rules.Table(ConductorRooftopAdderTable.Index);
        int row = table.RowNotBelow(inches);
        if (row < 0)
        {
            return ambient;
        }

        Figure fahrenheit = table.Read(ref d, RoofAdder, row, ConductorRooftopAdderTable.Column.Fahrenheit);
        Figure kelvin = d.FahrenheitDifference(RoofKelvin, fahrenheit);
        return d.Sum(RoofAmbient, ambient, kelvin);
    }

    /// <summary>Notes that something is not permitted here: a finding, and no number.</summary>
    internal static void Refuse(ref Deriving d, RuleId rule, string code, string at) =>
        Refuse(ref d, rule, code, at, d.Cite(rule));

    private static void Refuse(ref Deriving d, RuleId rule, string code, string at, Citation citation)
    {
        d.Find(new Finding
        {
            Rule = rule,
            Code = code,
            Hazard = Hazard.FixSoon,
            Standing = CodeStanding.Violation,
            Path = at,
            Citation = citation,
        });
        d.NotCovered("not-permitted", rule, at, code);
    }
}
