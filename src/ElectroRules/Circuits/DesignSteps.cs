using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Internal;
using ElectroRules.Overcurrent;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Circuits;

/// <summary>Writes the chosen circuit down: the size with its steps, the ground, the drop, the reserve.</summary>
internal static class DesignSteps
{
    private static readonly StepDefinition DeviceTooLarge = new(Rules.NextSizeUp, "conductor-not-protected", StepOperation.Rejected, QuantityUnit.Ampere);
    private static readonly StepDefinition DeviceProtects = new(Rules.NextSizeUp, "device-protects-conductor", StepOperation.Holds, QuantityUnit.Ampere);
    private static readonly StepDefinition LargestOfBoth = new(Rules.NameplateMaximum, "largest-device-of-circuit", StepOperation.Minimum, QuantityUnit.Ampere);
    private static readonly StepDefinition PanelVoltage = new(Rules.VoltageDropFormula, "panel-voltage", StepOperation.Given, QuantityUnit.Volt);
    private static readonly StepDefinition TotalLength = new(Rules.VoltageDropFormula, "total-length", StepOperation.Rule, QuantityUnit.Foot);
    private static readonly StepDefinition DropTooLarge = new(Rules.VoltageDropFormula, "drop-too-large", StepOperation.Rejected, QuantityUnit.One);
    private static readonly StepDefinition AtDevice = new(Rules.BranchCircuitReserve, "at-device", StepOperation.Difference, QuantityUnit.Ampere);
    private static readonly StepDefinition OfConductors = new(Rules.BranchCircuitReserve, "of-conductors", StepOperation.Difference, QuantityUnit.Ampere);
    private static readonly StepDefinition InCable = new(Rules.CableMake, "ground-in-cable", StepOperation.Table, QuantityUnit.ConductorSize, CableNonmetallicGroundTable.Index);

    internal static BranchCircuitDesign? Write(
        RuleSet rules,
        ref Deriving d,
        in ResolvedRun run,
        BranchCircuitRequest request,
        in CircuitTests tests,
        in DropWish drop,
        in SizeChoice size,
        in NeutralNeed neutral,
        Figure supply,
        Figure current,
        bool isContinuous)
    {
        ContinuousNeed need = tests.Need;
        TerminalNeeds terminals = tests.Terminals;
        RejectSmaller(rules, ref d, in run, in tests, size.ByAmpacity);
        Figure usable = ConductorNeeds.Derive(ref d, in run, size.Size, in need, in terminals);
        Figure largest = Protection(rules, ref d, in run, in tests, usable, size.Size);
        GroundingChoice ground = Ground(rules, ref d, request, in tests, in size);
        Figure limit = VoltageDrop.LimitOf(rules, ref d, drop.HasLimit ? drop.Need.LimitShare : null);
        RejectForDrop(rules, ref d, request, in drop, in size, limit);
        DropFigures figures = Drop(rules, ref d, request, in drop, size.Size, supply, current);
        VoltageDrop.NoteAboveLimit(ref d, in figures, limit, !drop.HasLimit, string.Empty);
        if (d.IsStopped)
        {
            return null;
        }

        Figure atDevice = d.Difference(AtDevice, tests.Device.Rating, need.AtTerminations);
        Figure ofConductors = d.Difference(OfConductors, usable, need.Load);
        return new BranchCircuitDesign
        {
            LoadCurrent = Canonical.Current(current.Value),
            Continuous = isContinuous,
            Required = Canonical.Current(need.AtTerminations.Value),
            SupplyVoltage = Canonical.Potential(supply.Value),
            Device = DeviceOf(request, tests.Device.Rating),
            DeviceLimit = tests.Device.Limit,
            LargestDevice = Canonical.Current(largest.Value),
            Conductors = ConductorsOf(request, in size, usable),
            Neutral = new NeutralChoice
            {
                Needed = neutral.IsNeeded,
                Spare = neutral.IsRun && !neutral.IsNeeded,
                Size = neutral.IsRun ? (ConductorSize)size.Size : null,
            },
            EquipmentGround = ground,
            Cable = size.Insulated == 0
                ? null
                : new CableChoice { TradeSize = CableMakes.TradeSize(size.Size, size.Insulated), InsulatedConductors = size.Insulated },
            Drop = new DropChoice
            {
                Drop = Canonical.Potential(figures.Drop.Value),
                Share = Canonical.Ratio(figures.Share.Value),
                VoltageAtLoad = Canonical.Potential(figures.AtLoad.Value),
            },
            ReserveAtDevice = Canonical.Current(atDevice.Value),
            ReserveOfConductors = Canonical.Current(ofConductors.Value),
            Alternatives = Alternatives.Try(rules, ref d, request, run.Room, in tests, neutral.IsRun, neutral.Insulated(request.Load.Connection)),
        };
    }

    private static void RejectSmaller(RuleSet rules, ref Deriving d, in ResolvedRun run, in CircuitTests tests, int byAmpacity)
    {
        int smaller = byAmpacity - 1;
        if (smaller < ConductorSearch.SmallestAllowed(rules, run.Material))
        {
            ConductorNeeds.SaySmallest(ref d, in run);
            return;
        }

        ContinuousNeed need = tests.Need;
        TerminalNeeds terminals = tests.Terminals;
        if (ConductorNeeds.Reject(ref d, in run, smaller, in need, in terminals))
        {
            return;
        }

        ProtectionRules protection = tests.Device.Protection;
        double usable = ConductorNeeds.Usable(in run, smaller, in terminals);
        double largest = DeviceForConductor.Largest(rules, usable, smaller, run.Material, in protection);
        d.Rejected(DeviceTooLarge, largest, tests.Device.Rating, StepSubject.Conductor(smaller, (int)run.Material));
    }

    private static Figure Protection(RuleSet rules, ref Deriving d, in ResolvedRun run, in CircuitTests tests, Figure usable, int size)
    {
        ProtectionRules protection = tests.Device.Protection;
        Figure largest = DeviceForConductor.Derive(rules, ref d, usable, size, run.Material, in protection);
        d.Holds(DeviceProtects, largest.Value, tests.Device.Rating, StepSubject.Conductor(size, (int)run.Material));
        return tests.Device.Ceiling is { } ceiling ? d.Minimum(LargestOfBoth, largest, ceiling) : largest;
    }

    private static GroundingChoice Ground(RuleSet rules, ref Deriving d, BranchCircuitRequest request, in CircuitTests tests, in SizeChoice size)
    {
        int needed = EquipmentGrounding.CountsFromBeforeCorrection(rules) ? size.BeforeCorrection : size.ByAmpacity;
        var circuit = new GroundedCircuit(request.Material, size.Size, request.Material, needed);
        GroundChoice choice = EquipmentGrounding.Derive(rules, ref d, tests.Device.Rating, in circuit);
        int inCable = size.Insulated == 0 ? 0 : CableMakes.GroundOf(rules, size.Size);
        if (inCable > 0)
        {
            rules.Table(CableNonmetallicGroundTable.Index)
                .Read(ref d, InCable, size.Size - 1, CableNonmetallicGroundTable.Column.Ground, StepSubject.Conductor(inCable, (int)request.Material));
            NoteSmallGround(ref d, inCable, choice.Size, size.Limit);
        }

        return new GroundingChoice
        {
            Size = (ConductorSize)choice.Size,
            Material = request.Material,
            InCable = inCable == 0 ? null : (ConductorSize)inCable,
            Limit = choice.Size > choice.TableSize ? DesignLimit.ConductorIncrease : DesignLimit.DeviceRating,
        };
    }

    private static void NoteSmallGround(ref Deriving d, int inCable, int asked, DesignLimit why)
    {
        if (inCable >= asked)
        {
            return;
        }

        d.Find(new Finding
        {
            Rule = Rules.EquipmentGroundingIncrease,
            Code = "ground-in-cable-too-small",
            Hazard = why == DesignLimit.CableAsSold ? Hazard.None : Hazard.FixSoon,
            Standing = why == DesignLimit.CableAsSold ? CodeStanding.Advice : CodeStanding.Violation,
            Path = "/method",
            Measured = new Measure(inCable, QuantityUnit.ConductorSize),
            Limit = new Measure(asked, QuantityUnit.ConductorSize),
            Remedy = "use-raceway-or-other-cable",
            Citation = d.Cite(Rules.EquipmentGroundingIncrease),
        });
    }

    private static void RejectForDrop(RuleSet rules, ref Deriving d, BranchCircuitRequest request, in DropWish drop, in SizeChoice size, Figure limit)
    {
        if (!drop.HasLimit || size.Limit != DesignLimit.VoltageDrop)
        {
            return;
        }

        int smaller = size.Size - 1;
        double ohms = ConductorImpedance.Raw(rules, smaller, request.Material, request.Method, ImpedanceMethod.AcImpedance, drop.PowerFactor);
        DropNeed need = drop.Need;
        if (double.IsNaN(ohms))
        {
            return;
        }

        double share = VoltageDrop.RawShare(need.Connection, need.Amperes, need.Volts, ohms, need.Feet, need.Sets);
        d.Rejected(DropTooLarge, share, limit, StepSubject.Conductor(smaller, (int)request.Material));
    }

    private static DropFigures Drop(
        RuleSet rules, ref Deriving d, BranchCircuitRequest request, in DropWish drop, int size, Figure supply, Figure current)
    {
        Figure impedance = ConductorImpedance.Derive(
            rules, ref d, size, request.Material, request.Method, ImpedanceMethod.AcImpedance, drop.PowerFactor, Loads.LoadKinds.IsResistive(rules, request.Load.Kind));
        Figure length = d.Rule(TotalLength, drop.Need.Feet);
        Figure source = request.PanelVoltage is null ? supply : d.Given(PanelVoltage, drop.PanelVolts);
        if (double.IsNaN(impedance.Value))
        {
            d.NotCovered("no-impedance-in-table", Rules.ConductorImpedance, "/route", string.Empty);
        }

        return VoltageDrop.Derive(ref d, request.Load.Connection, current, source, impedance, length, sets: 1);
    }

    private static OvercurrentDeviceChoice DeviceOf(BranchCircuitRequest request, Figure rating) => new()
    {
        Rating = Canonical.Current(rating.Value),
        Poles = CurrentCarrying.Ungrounded(request.Load.Connection),
        Kind = request.DeviceKind,
    };

    private static ConductorChoice ConductorsOf(BranchCircuitRequest request, in SizeChoice size, Figure usable) => new()
    {
        Count = CurrentCarrying.Ungrounded(request.Load.Connection),
        Size = (ConductorSize)size.Size,
        Material = request.Material,
        Insulation = request.Insulation,
        Method = request.Method,
        Ampacity = Canonical.Current(usable.Value),
        Limit = size.Limit,
    };
}
