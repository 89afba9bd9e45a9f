using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Loads;

/// <summary>The current that a load takes from the supply it is connected to.</summary>
internal static class LoadCurrent
{
    private static readonly StepDefinition Supply = new(Rules.NominalVoltage, "supply-voltage", StepOperation.Table, QuantityUnit.Volt, SupplyVoltagesTable.Index);
    private static readonly StepDefinition Marked = new(Rules.LoadCurrent, "marked-current", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition Power = new(Rules.LoadCurrent, "marked-power", StepOperation.Given, QuantityUnit.Watt);
    private static readonly StepDefinition Apparent = new(Rules.LoadCurrent, "marked-apparent-power", StepOperation.Given, QuantityUnit.VoltAmpere);
    private static readonly StepDefinition Rated = new(Rules.LoadSupplyVoltage, "rated-voltage", StepOperation.Given, QuantityUnit.Volt);
    private static readonly StepDefinition Factor = new(Rules.LoadCurrent, "power-factor", StepOperation.Given, QuantityUnit.One);
    private static readonly StepDefinition FromPower = new(Rules.LoadCurrent, "apparent-power", StepOperation.Quotient, QuantityUnit.VoltAmpere);
    private static readonly StepDefinition Scaled = new(Rules.LoadSupplyVoltage, "power-at-supply", StepOperation.SquareScaled, QuantityUnit.Watt);
    private static readonly StepDefinition VoltageRatio = new(Rules.LoadSupplyVoltage, "voltage-ratio", StepOperation.Quotient, QuantityUnit.One);
    private static readonly StepDefinition ScaledCurrent = new(Rules.LoadSupplyVoltage, "current-at-supply", StepOperation.Product, QuantityUnit.Ampere);
    private static readonly StepDefinition RootThree = new(Rules.LoadCurrent, "three-phase-factor", StepOperation.Rule, QuantityUnit.One);
    private static readonly StepDefinition PhaseVolts = new(Rules.LoadCurrent, "voltage-times-phase-factor", StepOperation.Product, QuantityUnit.Volt);
    private static readonly StepDefinition Current = new(Rules.LoadCurrent, "current", StepOperation.Quotient, QuantityUnit.Ampere);
    private static readonly StepDefinition AsMarked = new(Rules.LoadCurrent, "current", StepOperation.Same, QuantityUnit.Ampere);

    /// <summary>The voltage of the supply between the conductors that the load is connected to.</summary>
    internal static Figure SupplyVoltage(RuleSet rules, ref Deriving d, SupplySystem system, CircuitConnection connection)
    {
        ReferenceTable table = rules.Table(SupplyVoltagesTable.Index);
        return table.Read(ref d, Supply, (int)system - 1, (int)connection - 1);
    }

    /// <summary>The current at the voltage of the supply. What is missing is noted.</summary>
    internal static Figure Derive(RuleSet rules, ref Deriving d, Load load, Figure supply, string pointer)
    {
        bool resistive = LoadKinds.IsResistive(rules, load.Kind);
        if (load.Current is { } marked)
        {
            return FromCurrent(ref d, load, d.Given(Marked, Canonical.Amperes(marked)), supply, resistive);
        }

        if (load.Power is null && load.ApparentPower is null)
        {
            d.Needs(Rules.LoadCurrent, pointer + "/current");
            return default;
        }

        if (load.RatedVoltage is null)
        {
            d.Needs(Rules.LoadSupplyVoltage, pointer + "/ratedVoltage");
            return default;
        }

        return FromPowerMarked(ref d, load, supply, resistive, pointer);
    }

    private static Figure FromCurrent(ref Deriving d, Load load, Figure marked, Figure supply, bool resistive)
    {
        if (load.RatedVoltage is not { } volts || Limit.Same(Canonical.Volts(volts), supply.Value))
        {
            return d.Same(AsMarked, marked);
        }

        Figure rated = d.Given(Rated, Canonical.Volts(volts));
        Figure ratio = resistive ? d.Quotient(VoltageRatio, supply, rated) : d.Quotient(VoltageRatio, rated, supply);
        return d.Product(ScaledCurrent, marked, ratio);
    }

    private static Figure FromPowerMarked(ref Deriving d, Load load, Figure supply, bool resistive, string pointer)
    {
        Figure power;
        if (load.ApparentPower is { } apparent)
        {
            power = d.Given(Apparent, Canonical.VoltAmperes(apparent));
        }
        else
        {
            power = d.Given(Power, Canonical.Watts(load.Power!.Value));
            if (!resistive)
            {
                if (load.PowerFactor is not { } factor)
                {
                    d.Needs(Rules.LoadCurrent, pointer + "/powerFactor");
                    return default;
                }

                power = d.Quotient(FromPower, power, d.Given(Factor, Canonical.Fraction(factor)));
            }
        }

        double volts = Canonical.Volts(load.RatedVoltage!.Value);
        if (resistive && !Limit.Same(volts, supply.Value))
        {
            power = d.SquareScaled(Scaled, power, supply, d.Given(Rated, volts));
        }

        Figure divisor = load.Connection == CircuitConnection.ThreePhase
            ? d.Product(PhaseVolts, supply, d.Rule(RootThree, Math.Sqrt(3)))
            : supply;
        return d.Quotient(Current, power, divisor);
    }
}
