using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>How the impedance of a conductor is taken.</summary>
public enum ImpedanceMethod
{
    /// <summary>Direct-current resistance at 75 °C, reactance left out.</summary>
    DcResistance = 1,

    /// <summary>Alternating-current resistance and reactance at 75 °C by raceway, with the power factor.</summary>
    AcImpedance,
}

/// <summary>The effective impedance of 1000 ft of a conductor.</summary>
internal static class ConductorImpedance
{
    private static readonly StepDefinition Dc = new(Rules.ConductorImpedance, "dc-resistance", StepOperation.Table, QuantityUnit.OhmPerThousandFeet, ConductorDcResistanceTable.Index);
    private static readonly StepDefinition Ac = new(Rules.ConductorImpedance, "ac-resistance", StepOperation.Table, QuantityUnit.OhmPerThousandFeet, ConductorAcResistanceTable.Index);
    private static readonly StepDefinition Reactance = new(Rules.ConductorImpedance, "reactance", StepOperation.Table, QuantityUnit.OhmPerThousandFeet, ConductorReactanceTable.Index);
    private static readonly StepDefinition PowerFactor = new(Rules.VoltageDropFormula, "power-factor", StepOperation.Given, QuantityUnit.One);
    private static readonly StepDefinition Unity = new(Rules.VoltageDropFormula, "power-factor-of-resistance", StepOperation.Rule, QuantityUnit.One);
    private static readonly StepDefinition Sine = new(Rules.VoltageDropFormula, "sine", StepOperation.SineOfCosine, QuantityUnit.One);
    private static readonly StepDefinition RealPart = new(Rules.VoltageDropFormula, "resistive-part", StepOperation.Product, QuantityUnit.OhmPerThousandFeet);
    private static readonly StepDefinition ReactivePart = new(Rules.VoltageDropFormula, "reactive-part", StepOperation.Product, QuantityUnit.OhmPerThousandFeet);
    private static readonly StepDefinition Effective = new(Rules.VoltageDropFormula, "effective-impedance", StepOperation.Sum, QuantityUnit.OhmPerThousandFeet);

    internal static bool Covered(RuleSet rules, ref Deriving d) =>
        rules.Has(ref d, ConductorDcResistanceTable.Index, Rules.ConductorImpedance)
        && rules.Has(ref d, ConductorAcResistanceTable.Index, Rules.ConductorImpedance)
        && rules.Has(ref d, ConductorReactanceTable.Index, Rules.ConductorImpedance);

    /// <summary>The impedance without steps; NaN when the tables have none for the size.</summary>
    internal static double Raw(RuleSet rules, int size, ConductorMaterial material, WiringMethod method, ImpedanceMethod how, double powerFactor)
    {
        if (how == ImpedanceMethod.DcResistance)
        {
            return rules.Table(ConductorDcResistanceTable.Index).At(size - 1, DcColumn(rules, size, material));
        }

        double resistance = rules.Table(ConductorAcResistanceTable.Index).At(size - 1, AcColumn(rules, material, method));
        double reactance = rules.Table(ConductorReactanceTable.Index).At(size - 1, ReactanceColumn(rules, method));
        return (resistance * powerFactor) + (reactance * Math.Sqrt(1 - (powerFactor * powerFactor)));
    }

    /// <summary>The impedance with its steps.</summary>
    internal static Figure Derive(
        RuleSet rules, ref Deriving d, int size, ConductorMaterial material, WiringMethod method, ImpedanceMethod how, double powerFactor, bool isResistive)
    {
        ushort subject = StepSubject.Conductor(size, (int)material);
        if (how == ImpedanceMethod.DcResistance)
        {
            return rules.Table(ConductorDcResistanceTable.Index).Read(ref d, Dc, size - 1, DcColumn(rules, size, material), subject);
        }

        Figure resistance = rules.Table(ConductorAcResistanceTable.Index).Read(ref d, Ac, size - 1, AcColumn(rules, material, method), subject);
        Figure reactance = rules.Table(ConductorReactanceTable.Index).Read(ref d, Reactance, size - 1, ReactanceColumn(rules, method), subject);
        Figure cosine = isResistive ? d.Rule(Unity, powerFactor) : d.Given(PowerFactor, powerFactor);
        Figure sine = d.SineOfCosine(Sine, cosine);
        return d.Sum(Effective, d.Product(RealPart, resistance, cosine), d.Product(ReactivePart, reactance, sine));
    }

    /// <summary>Solid where the table has a solid conductor of the size up to 10 AWG, as building wire commonly is; else stranded.</summary>
    private static int DcColumn(RuleSet rules, int size, ConductorMaterial material)
    {
        bool copper = material == ConductorMaterial.Copper;
        bool solid = size <= (int)ConductorSize.Awg10
            && !double.IsNaN(rules.Table(ConductorDcResistanceTable.Index).At(size - 1, ConductorDcResistanceTable.Column.CuSolid));
        return (copper, solid) switch
        {
            (true, true) => ConductorDcResistanceTable.Column.CuSolid,
            (true, false) => ConductorDcResistanceTable.Column.CuStranded,
            (false, true) => ConductorDcResistanceTable.Column.AlSolid,
            (false, false) => ConductorDcResistanceTable.Column.AlStranded,
        };
    }

    private static int AcColumn(RuleSet rules, ConductorMaterial material, WiringMethod method)
    {
        int raceway = Raceway(rules, method);
        return material == ConductorMaterial.Copper
            ? ConductorAcResistanceTable.Column.CuPvc + raceway
            : ConductorAcResistanceTable.Column.AlPvc + raceway;
    }

    private static int ReactanceColumn(RuleSet rules, WiringMethod method) =>
        Raceway(rules, method) == 2 ? ConductorReactanceTable.Column.Steel : ConductorReactanceTable.Column.Nonmagnetic;

    private static int Raceway(RuleSet rules, WiringMethod method) =>
        (int)rules.Table(WiringImpedanceColumnTable.Index).At((int)method - 1, WiringImpedanceColumnTable.Column.Impedance);
}
