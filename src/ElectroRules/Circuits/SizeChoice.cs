using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Circuits;

/// <summary>The size of the conductors, and the sizes on the way to it.</summary>
/// <param name="Size">The size that is installed.</param>
/// <param name="ByAmpacity">The smallest size whose ampacity is enough where it lies.</param>
/// <param name="BeforeCorrection">The smallest size whose ampacity is enough before correction and adjustment.</param>
/// <param name="Limit">What decided the size.</param>
/// <param name="Insulated">The insulated conductors of the cable as sold; 0 when its makes are not known here.</param>
internal readonly record struct SizeChoice(int Size, int ByAmpacity, int BeforeCorrection, DesignLimit Limit, int Insulated)
{
    internal static SizeChoice Find(
        RuleSet rules,
        ref Deriving d,
        in ResolvedRun run,
        BranchCircuitRequest request,
        in CircuitTests tests,
        in DropWish drop,
        int insulated)
    {
        int first = ConductorSearch.SmallestAllowed(rules, request.Material);
        int byAmpacity = ByAmpacityOf(in run, in tests, first);
        if (byAmpacity == 0)
        {
            d.NotCovered("no-size-large-enough", Rules.MinimumForLoad, "/route", string.Empty);
            return default;
        }

        DesignLimit limit = byAmpacity == first ? DesignLimit.SmallestSize : LimitOf(tests.Test(in run, byAmpacity - 1));
        int size = byAmpacity;
        if (request.Preferences.SmallestSize is { } wished && (int)wished > size)
        {
            size = (int)wished;
            limit = DesignLimit.Preference;
        }

        if (drop.HasLimit)
        {
            DropNeed need = drop.Need;
            int forDrop = VoltageDrop.SmallestFor(
                rules, size, request.Material, request.Method, ImpedanceMethod.AcImpedance, drop.PowerFactor, in need);
            if (forDrop == 0)
            {
                d.NotCovered("no-size-for-drop", Rules.VoltageDropFormula, "/preferences/dropLimit", string.Empty);
                return default;
            }

            limit = forDrop > size ? DesignLimit.VoltageDrop : limit;
            size = forDrop;
        }

        int sold = CableMakes.SizeAsSold(rules, ref d, request.Method, request.Material, size, insulated, out int conductors);
        limit = sold > size ? DesignLimit.CableAsSold : limit;
        return new SizeChoice(sold, byAmpacity, BeforeCorrectionOf(in run, in tests, first, byAmpacity), limit, conductors);
    }

    internal static int ByAmpacityOf(in ResolvedRun run, in CircuitTests tests, int first)
    {
        for (int size = first; size <= (int)ConductorSize.Kcmil2000; size++)
        {
            if (tests.Test(in run, size) == FailedTest.None)
            {
                return size;
            }
        }

        return 0;
    }

    private static int BeforeCorrectionOf(in ResolvedRun run, in CircuitTests tests, int first, int last)
    {
        for (int size = first; size < last; size++)
        {
            if (tests.HoldsBeforeCorrection(in run, size))
            {
                return size;
            }
        }

        return last;
    }

    private static DesignLimit LimitOf(FailedTest test) => test switch
    {
        FailedTest.Terminations => DesignLimit.Terminations,
        FailedTest.Surroundings => DesignLimit.Surroundings,
        _ => DesignLimit.DeviceProtection,
    };
}
