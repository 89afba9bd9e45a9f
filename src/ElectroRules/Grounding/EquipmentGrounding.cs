using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Grounding;

/// <summary>The equipment grounding conductor of a circuit: operation <c>grounding.equipment-conductor</c>.</summary>
public static class EquipmentGrounding
{
    private static readonly StepDefinition Device = new(Rules.EquipmentGroundingConductor, "device", StepOperation.Given, QuantityUnit.Ampere);
    private static readonly StepDefinition TableSize = new(Rules.EquipmentGroundingConductor, "table-size", StepOperation.Table, QuantityUnit.ConductorSize, GroundingEquipmentConductorTable.Index);
    private static readonly StepDefinition Basis = new(Rules.EquipmentGroundingIncrease, "basis", StepOperation.Table, QuantityUnit.Count, GroundingUpsizingBasisTable.Index);
    private static readonly StepDefinition InstalledArea = new(Rules.EquipmentGroundingIncrease, "installed-area", StepOperation.Table, QuantityUnit.CircularMil, ConductorAreaTable.Index);
    private static readonly StepDefinition NeededArea = new(Rules.EquipmentGroundingIncrease, "needed-area", StepOperation.Table, QuantityUnit.CircularMil, ConductorAreaTable.Index);
    private static readonly StepDefinition GroundArea = new(Rules.EquipmentGroundingIncrease, "table-ground-area", StepOperation.Table, QuantityUnit.CircularMil, ConductorAreaTable.Index);
    private static readonly StepDefinition Ratio = new(Rules.EquipmentGroundingIncrease, "ratio", StepOperation.Quotient, QuantityUnit.One);
    private static readonly StepDefinition RequiredArea = new(Rules.EquipmentGroundingIncrease, "required-area", StepOperation.Product, QuantityUnit.CircularMil);
    private static readonly StepDefinition Increased = new(Rules.EquipmentGroundingIncrease, "increased-size", StepOperation.NextUp, QuantityUnit.CircularMil, ConductorAreaTable.Index);
    private static readonly StepDefinition Ceiling = new(Rules.EquipmentGroundingCeiling, "size-of-circuit-conductors", StepOperation.Rule, QuantityUnit.ConductorSize);

    /// <summary>The equipment grounding conductor of a circuit.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A number of the request is out of its range, or a choice is not a defined one.</exception>
    public static Determination<EquipmentGroundingResult> Size(RuleSet rules, EquipmentGroundingRequest request)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(request);
        request.Check(RequestCheck.Throwing);
        var d = new Deriving(rules.Resolver);
        if (!Covered(rules, ref d))
        {
            return d.Finish<EquipmentGroundingResult>(value: null);
        }

        Ask(rules, ref d, request);
        if (d.IsStopped)
        {
            return d.Finish<EquipmentGroundingResult>(value: null);
        }

        Figure device = d.Given(Device, Canonical.Amperes(request.Device!.Value));
        var circuit = new GroundedCircuit(
            request.Material, (int)request.InstalledSize!.Value, request.InstalledMaterial, NeededSize(rules, request));
        GroundChoice choice = Derive(rules, ref d, device, in circuit);
        return d.IsStopped ? d.Finish<EquipmentGroundingResult>(value: null) : d.Finish(Describe(request.Material, choice));
    }

    internal static bool Covered(RuleSet rules, ref Deriving d) =>
        rules.Has(ref d, GroundingEquipmentConductorTable.Index, Rules.EquipmentGroundingConductor)
        && rules.Has(ref d, GroundingUpsizingBasisTable.Index, Rules.EquipmentGroundingIncrease)
        && rules.Has(ref d, ConductorAreaTable.Index, Rules.EquipmentGroundingIncrease);

    /// <summary>Whether the increase is counted from the size before correction and adjustment.</summary>
    internal static bool CountsFromBeforeCorrection(RuleSet rules) =>
        rules.Table(GroundingUpsizingBasisTable.Index).At(0, GroundingUpsizingBasisTable.Column.Basis) > 0;

    internal static GroundChoice Derive(RuleSet rules, ref Deriving d, Figure device, in GroundedCircuit circuit)
    {
        ReferenceTable table = rules.Table(GroundingEquipmentConductorTable.Index);
        int row = table.RowNotBelow(device.Value);
        if (row < 0)
        {
            d.NotCovered("device-above-table", Rules.EquipmentGroundingConductor, "/device", string.Empty);
            return default;
        }

        int column = circuit.Material == ConductorMaterial.Copper ? GroundingEquipmentConductorTable.Column.Cu : GroundingEquipmentConductorTable.Column.Al;
        Figure listed = table.Read(ref d, TableSize, row, column, device, StepSubject.Conductor((int)table.At(row, column), (int)circuit.Material));
        int size = (int)listed.Value;
        double ratio = 1;
        if (circuit.InstalledSize > circuit.NeededSize)
        {
            size = Increase(rules, ref d, size, in circuit, out ratio);
        }

        bool held = circuit.Material == circuit.InstalledMaterial && size > circuit.InstalledSize;
        if (held)
        {
            size = circuit.InstalledSize;
            d.Rule(Ceiling, size, listed, StepSubject.Conductor(size, (int)circuit.Material));
        }

        return new GroundChoice(size, (int)listed.Value, ratio, held);
    }

    private static int Increase(RuleSet rules, ref Deriving d, int tableSize, in GroundedCircuit circuit, out double ratio)
    {
        rules.Table(GroundingUpsizingBasisTable.Index).Read(ref d, Basis, 0, GroundingUpsizingBasisTable.Column.Basis);
        ReferenceTable areas = rules.Table(ConductorAreaTable.Index);
        int area = ConductorAreaTable.Column.Area;
        Figure installed = areas.Read(ref d, InstalledArea, circuit.InstalledSize - 1, area, StepSubject.Conductor(circuit.InstalledSize, (int)circuit.InstalledMaterial));
        Figure needed = areas.Read(ref d, NeededArea, circuit.NeededSize - 1, area, StepSubject.Conductor(circuit.NeededSize, (int)circuit.InstalledMaterial));
        Figure share = d.Quotient(Ratio, installed, needed);
        Figure ground = areas.Read(ref d, GroundArea, tableSize - 1, area, StepSubject.Conductor(tableSize, (int)circuit.Material));
        Figure required = d.Product(RequiredArea, ground, share);
        ratio = share.Value;
        for (int row = 0; row < areas.RowCount; row++)
        {
            if (Limit.AtLeast(areas.At(row, area), required.Value))
            {
                areas.Read(ref d, Increased, row, area, required, StepSubject.Conductor(row + 1, (int)circuit.Material));
                return row + 1;
            }
        }

        d.NotCovered("no-size-large-enough", Rules.EquipmentGroundingIncrease, "/installedSize", string.Empty);
        return tableSize;
    }

    private static void Ask(RuleSet rules, ref Deriving d, EquipmentGroundingRequest request)
    {
        if (request.Device is null)
        {
            d.Needs(Rules.EquipmentGroundingConductor, "/device");
        }

        if (request.InstalledSize is null)
        {
            d.Needs(Rules.EquipmentGroundingCeiling, "/installedSize");
        }

        bool before = CountsFromBeforeCorrection(rules);
        if ((before ? request.SmallestBeforeCorrection : request.SmallestAfterCorrection) is null)
        {
            d.Needs(Rules.EquipmentGroundingIncrease, before ? "/smallestBeforeCorrection" : "/smallestAfterCorrection");
        }
    }

    private static int NeededSize(RuleSet rules, EquipmentGroundingRequest request) =>
        (int)(CountsFromBeforeCorrection(rules) ? request.SmallestBeforeCorrection : request.SmallestAfterCorrection)!.Value;

    private static EquipmentGroundingResult Describe(ConductorMaterial material, in GroundChoice choice) => new()
    {
        Size = (ConductorSize)choice.Size,
        Material = material,
        TableSize = (ConductorSize)choice.TableSize,
        Increase = Canonical.Ratio(choice.Ratio),
        HeldToCircuitConductors = choice.Held,
    };
}

/// <summary>The circuit that an equipment grounding conductor is for.</summary>
internal readonly record struct GroundedCircuit(ConductorMaterial Material, int InstalledSize, ConductorMaterial InstalledMaterial, int NeededSize);

/// <summary>The size that was chosen and how.</summary>
internal readonly record struct GroundChoice(int Size, int TableSize, double Ratio, bool Held);
