using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>The voltage drop of a run: operation <c>voltage-drop.compute</c>.</summary>
public static class VoltageDrop
{
    private const double FeetOfTable = 1000;
    private static readonly StepDefinition Current = new(Rules.VoltageDropFormula, "current", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition Source = new(Rules.VoltageDropFormula, "source-voltage", StepOperation.Given, QuantityUnit.Volt);
    private static readonly StepDefinition Length = new(Rules.VoltageDropFormula, "length", StepOperation.Given, QuantityUnit.Foot);
    private static readonly StepDefinition Sets = new(Rules.VoltageDropFormula, "sets", StepOperation.Given, QuantityUnit.Count);
    private static readonly StepDefinition GivenImpedance = new(Rules.VoltageDropFormula, "given-impedance", StepOperation.Given, QuantityUnit.OhmPerThousandFeet);
    private static readonly StepDefinition Constant = new(Rules.VoltageDropFormula, "circular-mil-constant", StepOperation.Given, QuantityUnit.OhmCircularMilPerFoot);
    private static readonly StepDefinition Area = new(Rules.ConductorImpedance, "area", StepOperation.Table, QuantityUnit.CircularMil, ConductorAreaTable.Index);
    private static readonly StepDefinition OfFoot = new(Rules.VoltageDropFormula, "resistance-of-one-foot", StepOperation.Quotient, QuantityUnit.Ohm);
    private static readonly StepDefinition OfThousand = new(Rules.VoltageDropFormula, "resistance-of-1000-feet", StepOperation.Product, QuantityUnit.OhmPerThousandFeet);
    private static readonly StepDefinition Thousand = new(Rules.VoltageDropFormula, "feet-of-the-table", StepOperation.Rule, QuantityUnit.Foot);
    private static readonly StepDefinition Path = new(Rules.VoltageDropFormula, "path-factor", StepOperation.Rule, QuantityUnit.One);
    private static readonly StepDefinition PathLength = new(Rules.VoltageDropFormula, "path-length", StepOperation.Product, QuantityUnit.Foot);
    private static readonly StepDefinition Thousands = new(Rules.VoltageDropFormula, "thousands-of-feet", StepOperation.Quotient, QuantityUnit.One);
    private static readonly StepDefinition OneSet = new(Rules.VoltageDropFormula, "drop-of-one-set", StepOperation.Product, QuantityUnit.Volt);
    private static readonly StepDefinition DropOfSets = new(Rules.VoltageDropFormula, "drop", StepOperation.Quotient, QuantityUnit.Volt);
    private static readonly StepDefinition DropAlone = new(Rules.VoltageDropFormula, "drop", StepOperation.Product, QuantityUnit.Volt);
    private static readonly StepDefinition Share = new(Rules.VoltageDropFormula, "share", StepOperation.Quotient, QuantityUnit.One);
    private static readonly StepDefinition AtLoad = new(Rules.VoltageDropFormula, "voltage-at-load", StepOperation.Difference, QuantityUnit.Volt);
    private static readonly StepDefinition Wanted = new(Rules.VoltageDropFormula, "limit-share", StepOperation.Given, QuantityUnit.One);
    private static readonly StepDefinition Recommended = new(Rules.VoltageDropRecommendation, "recommended-share", StepOperation.Table, QuantityUnit.One, VoltageDropRecommendationTable.Index);
    private static readonly StepDefinition LongestRun = new(Rules.VoltageDropFormula, "longest-run", StepOperation.Product, QuantityUnit.Foot);
    private static readonly StepDefinition LimitToShare = new(Rules.VoltageDropFormula, "limit-to-share", StepOperation.Quotient, QuantityUnit.One);

    /// <summary>The voltage drop of a run, the longest run and the smallest conductor for a limit.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A number of the request is out of its range, or a choice is not a defined one.</exception>
    public static Determination<VoltageDropResult> Compute(RuleSet rules, VoltageDropRequest request)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(request);
        request.Check(RequestCheck.Throwing);
        var d = new Deriving(rules.Resolver);
        Ask(ref d, request);
        bool covered = ConductorImpedance.Covered(rules, ref d)
            && rules.Has(ref d, VoltageDropRecommendationTable.Index, Rules.VoltageDropRecommendation);
        if (!covered || d.IsStopped
            || request is not { Current: { } amperes, SourceVoltage: { } volts, Length: { } length })
        {
            return d.Finish<VoltageDropResult>(value: null);
        }

        Figure current = d.Given(Current, Canonical.Amperes(amperes));
        Figure source = d.Given(Source, Canonical.Volts(volts));
        Figure impedance = ImpedanceOf(rules, ref d, request);
        if (double.IsNaN(impedance.Value))
        {
            d.NotCovered("no-impedance-in-table", Rules.ConductorImpedance, "/size", string.Empty);
            return d.Finish<VoltageDropResult>(value: null);
        }

        Figure run = d.Given(Length, Canonical.Feet(length));
        DropFigures drop = Derive(ref d, request.Connection, current, source, impedance, run, request.ParallelSets);
        Figure limit = LimitOf(rules, ref d, request.LimitShare is { } share ? Canonical.Fraction(share) : null);
        Figure toShare = d.Quotient(LimitToShare, limit, drop.Share);
        Figure longest = d.Product(LongestRun, run, toShare);
        NoteAboveLimit(ref d, drop, limit, request.LimitShare is null, string.Empty);
        return d.Finish(new VoltageDropResult
        {
            Drop = Canonical.Potential(drop.Drop.Value),
            Share = Canonical.Ratio(drop.Share.Value),
            VoltageAtLoad = Canonical.Potential(drop.AtLoad.Value),
            LimitShare = Canonical.Ratio(limit.Value),
            LongestRun = Canonical.Length(longest.Value),
            SmallestSize = SmallestFor(rules, request, limit.Value),
        });
    }

    /// <summary>The factor on the one-way length: there and back, or the square root of three for balanced phases.</summary>
    internal static double PathFactor(CircuitConnection connection) => connection == CircuitConnection.ThreePhase ? Math.Sqrt(3) : 2;

    /// <summary>The share of the source voltage that is lost, without steps.</summary>
    internal static double RawShare(CircuitConnection connection, double amperes, double volts, double ohmsOf1000Feet, double feet, int sets) =>
        PathFactor(connection) * feet / FeetOfTable * ohmsOf1000Feet * amperes / sets / volts;

    internal static DropFigures Derive(
        ref Deriving d, CircuitConnection connection, Figure current, Figure source, Figure impedance, Figure run, int sets)
    {
        Figure path = d.Rule(Path, PathFactor(connection));
        Figure pathLength = d.Product(PathLength, path, run);
        Figure thousands = d.Quotient(Thousands, pathLength, d.Rule(Thousand, FeetOfTable));
        Figure drop = sets > 1
            ? d.Quotient(DropOfSets, d.Product(OneSet, thousands, impedance, current), d.Given(Sets, sets))
            : d.Product(DropAlone, thousands, impedance, current);
        return new DropFigures(drop, d.Quotient(Share, drop, source), d.Difference(AtLoad, source, drop));
    }

    /// <summary>The limit wanted, or the recommendation for a branch circuit.</summary>
    internal static Figure LimitOf(RuleSet rules, ref Deriving d, double? wanted) => wanted is { } share
        ? d.Given(Wanted, share)
        : rules.Table(VoltageDropRecommendationTable.Index)
            .Read(ref d, Recommended, VoltageDropRecommendationTable.Row.BranchCircuit, VoltageDropRecommendationTable.Column.Share);

    internal static void NoteAboveLimit(ref Deriving d, in DropFigures drop, Figure limit, bool recommendation, string pointer)
    {
        if (Limit.AtMost(drop.Share.Value, limit.Value))
        {
            return;
        }

        d.Find(new Finding
        {
            Rule = Rules.VoltageDropRecommendation,
            Code = recommendation ? "drop-above-recommendation" : "drop-above-limit",
            Hazard = Hazard.None,
            Standing = CodeStanding.Advice,
            Path = pointer,
            Measured = new Measure(drop.Share.Value, QuantityUnit.One),
            Limit = new Measure(limit.Value, QuantityUnit.One),
            Remedy = "use-larger-conductor",
            Citation = d.Cite(Rules.VoltageDropRecommendation),
        });
    }

    private static void Ask(ref Deriving d, VoltageDropRequest request)
    {
        if (request.Current is null)
        {
            d.Needs(Rules.VoltageDropFormula, "/current");
        }

        if (request.SourceVoltage is null)
        {
            d.Needs(Rules.VoltageDropFormula, "/sourceVoltage");
        }

        if (request.Length is null)
        {
            d.Needs(Rules.VoltageDropFormula, "/length");
        }

        bool given = request.ImpedanceOf1000Feet is not null || request.ResistanceOfCircularMilFoot is not null;
        if (request.Impedance == ImpedanceMethod.AcImpedance && request.PowerFactor is null && !given)
        {
            d.Needs(Rules.VoltageDropFormula, "/powerFactor");
        }
    }

    private static Figure ImpedanceOf(RuleSet rules, ref Deriving d, VoltageDropRequest request)
    {
        if (request.ImpedanceOf1000Feet is { } given)
        {
            return d.Given(GivenImpedance, Canonical.Ohms(given));
        }

        if (request.ResistanceOfCircularMilFoot is { } constant)
        {
            Figure k = d.Given(Constant, Canonical.Ohms(constant));
            Figure area = rules.Table(ConductorAreaTable.Index).Read(
                ref d, Area, (int)request.Size - 1, ConductorAreaTable.Column.Area, StepSubject.Conductor((int)request.Size, (int)request.Material));
            return d.Product(OfThousand, d.Quotient(OfFoot, k, area), d.Rule(Thousand, FeetOfTable));
        }

        return ConductorImpedance.Derive(
            rules, ref d, (int)request.Size, request.Material, request.Method, request.Impedance, PowerFactorOf(request), isResistive: false);
    }

    private static double PowerFactorOf(VoltageDropRequest request) =>
        request.PowerFactor is { } factor ? Canonical.Fraction(factor) : 1;

    private static ConductorSize? SmallestFor(RuleSet rules, VoltageDropRequest request, double limit)
    {
        if (request.ImpedanceOf1000Feet is not null || request.ResistanceOfCircularMilFoot is not null)
        {
            return null;
        }

        int size = SmallestFor(
            rules,
            ParallelConductors.SmallestAllowed(rules, request.Material, request.ParallelSets),
            request.Material,
            request.Method,
            request.Impedance,
            PowerFactorOf(request),
            new DropNeed(request.Connection, Canonical.Amperes(request.Current!.Value), Canonical.Volts(request.SourceVoltage!.Value), Canonical.Feet(request.Length!.Value), request.ParallelSets, limit));
        return size == 0 ? null : (ConductorSize)size;
    }

    /// <summary>The smallest size from a first one that keeps the drop within a limit; 0 when there is none.</summary>
    internal static int SmallestFor(
        RuleSet rules, int first, ConductorMaterial material, WiringMethod method, ImpedanceMethod how, double powerFactor, in DropNeed need)
    {
        for (int size = first; size <= (int)ConductorSize.Kcmil2000; size++)
        {
            double ohms = ConductorImpedance.Raw(rules, size, material, method, how, powerFactor);
            if (!double.IsNaN(ohms)
                && Limit.AtMost(RawShare(need.Connection, need.Amperes, need.Volts, ohms, need.Feet, need.Sets), need.LimitShare))
            {
                return size;
            }
        }

        return 0;
    }
}

/// <summary>The figures of a drop.</summary>
internal readonly record struct DropFigures(Figure Drop, Figure Share, Figure AtLoad);

/// <summary>What a run must keep within.</summary>
internal readonly record struct DropNeed(CircuitConnection Connection, double Amperes, double Volts, double Feet, int Sets, double LimitShare);
