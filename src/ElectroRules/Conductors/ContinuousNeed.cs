using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;
using UnitsNet;

namespace ElectroRules.Conductors;

/// <summary>What a load asks of the device and of the conductor: the factor on its continuous part is applied once.</summary>
internal readonly struct ContinuousNeed
{
    private static readonly StepDefinition Continuous = new(Rules.ContinuousLoad, "continuous", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition Noncontinuous = new(Rules.ContinuousLoad, "noncontinuous", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition Factor = new(Rules.ContinuousLoad, "factor", StepOperation.Table, QuantityUnit.One, OvercurrentFactorsTable.Index);
    private static readonly StepDefinition FullFactor = new(Rules.HundredPercentRated, "factor", StepOperation.Table, QuantityUnit.One, OvercurrentFactorsTable.Index);
    private static readonly StepDefinition Scaled = new(Rules.ContinuousLoad, "continuous-times-factor", StepOperation.Product, QuantityUnit.Ampere);
    private static readonly StepDefinition Required = new(Rules.ContinuousLoad, "required", StepOperation.Sum, QuantityUnit.Ampere);
    private static readonly StepDefinition Total = new(Rules.MinimumForLoad, "load", StepOperation.Sum, QuantityUnit.Ampere);

    private ContinuousNeed(Figure atTerminations, Figure load)
    {
        AtTerminations = atTerminations;
        Load = load;
    }

    /// <summary>125 percent of the continuous part and the rest: what the device and the terminations must carry.</summary>
    internal Figure AtTerminations { get; }

    /// <summary>The load itself: what the conductor must carry after correction.</summary>
    internal Figure Load { get; }

    /// <summary>Checks the two parts of a load in a request that has them under these names.</summary>
    internal static void Check(RequestCheck check, ElectricCurrent? continuous, ElectricCurrent? noncontinuous)
    {
        double? on = continuous is { } c ? Canonical.Amperes(c) : null;
        double? rest = noncontinuous is { } n ? Canonical.Amperes(n) : null;
        check.ZeroOrMore(on, "Continuous", QuantityUnit.Ampere);
        check.ZeroOrMore(rest, "Noncontinuous", QuantityUnit.Ampere);
        check.Require(on + rest is null or > 0, "Continuous", "and Noncontinuous must not both be 0 A.");
    }

    internal static ContinuousNeed Derive(
        RuleSet rules, ref Deriving d, ElectricCurrent? continuous, ElectricCurrent? noncontinuous, bool? hundredPercentRated, string pointer)
    {
        if (!rules.Has(ref d, OvercurrentFactorsTable.Index, Rules.ContinuousLoad))
        {
            return default;
        }

        if (continuous is null)
        {
            d.Needs(Rules.ContinuousLoad, pointer + "/continuous");
        }

        if (noncontinuous is null)
        {
            d.Needs(Rules.ContinuousLoad, pointer + "/noncontinuous");
        }

        if (continuous is not { } on || noncontinuous is not { } rest)
        {
            return default;
        }

        Figure ic = d.Given(Continuous, Canonical.Amperes(on));
        Figure other = d.Given(Noncontinuous, Canonical.Amperes(rest));
        return Derive(rules, ref d, ic, other, hundredPercentRated);
    }

    internal static ContinuousNeed Derive(RuleSet rules, ref Deriving d, Figure continuous, Figure rest, bool? hundredPercentRated)
    {
        Figure scaled = ScaledPart(rules, ref d, continuous, hundredPercentRated);
        return new ContinuousNeed(d.Sum(Required, scaled, rest), d.Sum(Total, continuous, rest));
    }

    /// <summary>For a load that is all continuous.</summary>
    internal static ContinuousNeed AllContinuous(RuleSet rules, ref Deriving d, Figure load, bool? hundredPercentRated) =>
        new(ScaledPart(rules, ref d, load, hundredPercentRated), load);

    /// <summary>For a load that is not continuous, or whose nameplate already holds the factor.</summary>
    internal static ContinuousNeed AsItStands(Figure required, Figure load) => new(required, load);

    private static Figure ScaledPart(RuleSet rules, ref Deriving d, Figure continuous, bool? hundredPercentRated)
    {
        ReferenceTable factors = rules.Table(OvercurrentFactorsTable.Index);
        Figure factor = hundredPercentRated == true
            ? factors.Read(ref d, FullFactor, OvercurrentFactorsTable.Row.HundredPercentRated, OvercurrentFactorsTable.Column.Value)
            : factors.Read(ref d, Factor, OvercurrentFactorsTable.Row.ContinuousLoad, OvercurrentFactorsTable.Column.Value);
        return d.Product(Scaled, continuous, factor);
    }
}
