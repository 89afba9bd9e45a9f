using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Loads;
using ElectroRules.Overcurrent;
using UnitsNet;

namespace ElectroRules.Tests.Circuits;

/// <summary>The device, the conductor and the ground of a branch circuit, written as plainly as possible from the data files: slow, no steps, all facts given.</summary>
internal sealed class PlainReference(EditionId edition, BranchCircuitRequest request)
{
    private const double Slack = 1e-9;
    private readonly Load _load = request.Load;

    private double Volts => T("supply.voltages").At(Name(request.System), Name(_load.Connection));

    private string Metal => request.Material switch { ConductorMaterial.Copper => "cu", _ => "al" };

    private string DeviceColumn => request.DeviceKind == OvercurrentDeviceKind.Fuse ? "fuse" : "breaker";

    private bool Kind(string property) => T("load.kinds").At(Name(_load.Kind), property) == 1;

    /// <summary>Null when no circuit is permitted or the tables do not reach.</summary>
    internal (double Device, int Size, int Ground)? Answer()
    {
        double current = Current();
        bool byKind = Kind("continuous");
        bool continuous = _load.Kind == LoadKind.Kiln
            ? _load.Duty != LoadDuty.Noncontinuous
            : byKind || _load.Duty == LoadDuty.Continuous;
        double required = continuous && request.HundredPercentRated != true ? current * T("overcurrent.factors").At("continuous-load", "value") : current;
        double load = current;
        double marked = _load.MinimumCircuitAmpacity?.Amperes ?? 0;
        required = Math.Max(required, marked);
        if (Kind("nameplate-circuit"))
        {
            (required, load) = (marked, marked);
        }

        double device = Device(required, current);
        if (double.IsNaN(device) || request.Route.Any(s => !IsPermitted(s)))
        {
            return null;
        }

        int first = (int)T("conductor.minimum-size").At(Name(request.Material), "size");
        int byAmpacity = Enumerable.Range(first, 31 - first).FirstOrDefault(s => Holds(s, device, required, load));
        int before = Enumerable.Range(first, 31 - first).FirstOrDefault(s => HoldsBefore(s, device, required));
        int size = AsSold(Math.Max(byAmpacity, (int)(request.Preferences.SmallestSize ?? 0)));
        return byAmpacity == 0 || size == 0 ? null : (device, size, Ground(device, size, edition == EditionId.Nec2017 ? Math.Min(before, byAmpacity) : byAmpacity));
    }

    /// <summary>The largest device that protects a size with an ampacity.</summary>
    internal double Protects(int size, double ampacity)
    {
        double[] ratings = [.. Ratings()];
        double above = ratings.FirstOrDefault(r => r >= ampacity * (1 - Slack), double.NaN);
        bool roundsUp = !Kind("several-receptacles") && !request.Preferences.NoNextSizeUp && above <= 800;
        double largest = roundsUp ? above : ratings.LastOrDefault(r => r <= ampacity * (1 + Slack), double.NaN);
        string column = request.Material == ConductorMaterial.CopperCladAluminum ? "cca" : Metal;
        double small = T("overcurrent.small-conductor").At(((ConductorSize)size).Label(), column);
        return double.IsNaN(small) ? largest : Math.Min(largest, small);
    }

    /// <summary>The ampacity of a size where it lies, held to the terminations.</summary>
    internal double Usable(int size, double device)
    {
        double[] each = [.. request.Route.Select(s => OfSegment(s, size))];
        double best = double.NaN;
        foreach (double candidate in each)
        {
            double low = 0;
            double high = 0;
            for (int i = 0; i < each.Length; i++)
            {
                bool isLower = each[i] < candidate * (1 - Slack);
                low += isLower ? request.Route[i].Length!.Value.Feet : 0;
                high += isLower ? 0 : request.Route[i].Length!.Value.Feet;
            }

            // None of the random routes has more than two cables together in insulation, which would bar the short portion.
            if ((low == 0 || low <= Math.Min(10, 0.1 * high) * (1 + Slack)) && !(candidate <= best))
            {
                best = candidate;
            }
        }

        return Math.Min(best, Listed(size, Terminals(device)));
    }

    private double Current()
    {
        bool resistive = Kind("resistance-elements");
        double rated = _load.RatedVoltage?.Volts ?? Volts;
        if (_load.Current is { } amperes)
        {
            return amperes.Amperes * (resistive ? Volts / rated : rated / Volts);
        }

        double watts = (double)_load.Power!.Value.Watts;
        double apparent = resistive ? watts * (Volts / rated) * (Volts / rated) : watts / _load.PowerFactor!.Value.DecimalFractions;
        return apparent / Volts / (_load.Connection == CircuitConnection.ThreePhase ? Math.Sqrt(3) : 1);
    }

    private double Device(double required, double current)
    {
        double marked = _load.MaximumDevice?.Amperes ?? double.PositiveInfinity;
        if (Kind("small-conductor-exempt"))
        {
            double largest = Ratings().LastOrDefault(r => r <= marked * (1 + Slack), double.NaN);
            return largest >= required * (1 - Slack) ? largest : double.NaN;
        }

        double device = Kind("several-receptacles")
            ? T("branch-circuit.outlet-ratings").Up(Math.Max(15, required), "rating")
            : Ratings().FirstOrDefault(r => r >= required * (1 - Slack), double.NaN);
        double ceiling = marked;
        if (double.IsInfinity(marked) && Kind("nonmotor-appliance"))
        {
            ceiling = current <= 13.3 * (1 + Slack) ? 20 : Ratings().FirstOrDefault(r => r >= 1.5 * current * (1 - Slack), double.NaN);
        }

        return device <= ceiling * (1 + Slack) ? device : double.NaN;
    }

    private bool IsPermitted(RouteSegment s) =>
        T("wiring.methods").At(Name(request.Method), Name(s.Location!.Value)) == 1
        && !double.IsNaN(InsulationOf(s))
        && !double.IsNaN(Ambient(s));

    private double InsulationOf(RouteSegment s)
    {
        PlainTable cables = T("conductor.cable-temperature");
        string place = Name(s.Location!.Value);
        bool fixedByCable = !double.IsNaN(cables.At(Name(request.Method), "ampacity-limit"));
        return fixedByCable || request.Insulation is null
            ? cables.At(Name(request.Method), place)
            : T("conductor.insulation").At(RandomRequests.Letters(request.Insulation!.Value), place);
    }

    private double Ambient(RouteSegment s) =>
        T("conductor.ambient-correction").Up(s.Ambient!.Value.DegreesCelsius, FormattableString.Invariant($"c{InsulationOf(s)}"));

    private double OfSegment(RouteSegment s, int size)
    {
        bool isCable = T("wiring.methods").At(Name(request.Method), "cable") == 1;
        int others = s.OtherCurrentCarryingConductors!.Value;
        double together = request.Route.Where(x => x.OtherCurrentCarryingConductors > 0).Sum(x => x.Length!.Value.Feet);
        bool nipple = !isCable && request.Route.Sum(x => x.Length!.Value.Feet) <= 2 * (1 + Slack);
        bool count = together > 2 * (1 + Slack) && (!isCable || s.Grouping == CableGrouping.Bundled);
        bool wye = request.System is SupplySystem.Wye120V208V or SupplySystem.Wye277V480V;
        int own = _load.Connection switch
        {
            CircuitConnection.LineToNeutral => 2,
            CircuitConnection.LineToLine => wye && HasNeutral ? 3 : 2,
            _ => 3,
        };
        double factor = T("conductor.adjustment").Up(nipple ? 0 : own + (count ? others : 0), "factor");
        return Math.Min(Listed(size, InsulationOf(s)) * Ambient(s) * factor, Listed(size, Cap(s, size)));
    }

    private bool HasNeutral => _load.NeedsNeutral == true || request.Preferences.SpareNeutral || _load.Connection == CircuitConnection.LineToNeutral;

    private double Cap(RouteSegment s, int size)
    {
        double limit = T("conductor.cable-temperature").At(Name(request.Method), "ampacity-limit");
        double largest = T("conductor.cable-in-insulation").At(Name(request.Method), "largest-size");
        return !double.IsNaN(limit) ? limit : s.InThermalInsulation == true && size <= largest ? 60 : 90;
    }

    private double Terminals(double device) => Math.Min(End(request.SupplyTermination, device), End(request.LoadTermination, device));

    private static double End(TerminationRating? marking, double device) => marking switch
    {
        TerminationRating.C60 => 60,
        null => device <= 100 ? 60 : 75,
        _ => 75,
    };

    private double BeforeCorrection(int size, double device) =>
        Listed(size, Math.Min(Terminals(device), request.Route.Min(s => Math.Min(InsulationOf(s), Cap(s, size)))));

    private bool Holds(int size, double device, double required, double load) =>
        BeforeCorrection(size, device) >= required * (1 - Slack)
        && Usable(size, device) >= load * (1 - Slack)
        && (Kind("small-conductor-exempt") || Protects(size, Usable(size, device)) >= device);

    private bool HoldsBefore(int size, double device, double required) =>
        BeforeCorrection(size, device) >= required * (1 - Slack)
        && (Kind("small-conductor-exempt") || Protects(size, BeforeCorrection(size, device)) >= device);

    private int AsSold(int size)
    {
        if (request.Method != WiringMethod.NonmetallicSheathedCable || size == 0)
        {
            return size;
        }

        int hots = (int)_load.Connection;
        bool third = hots + (HasNeutral ? 1 : 0) == 3;
        return request.Material != ConductorMaterial.Copper ? 0 : Enumerable.Range(size, 31 - size).FirstOrDefault(s =>
            T("cable.nonmetallic-makes").At(((ConductorSize)s).Label(), "three") == 1
            || (!third && T("cable.nonmetallic-makes").At(((ConductorSize)s).Label(), "two") == 1));
    }

    private int Ground(double device, int size, int needed)
    {
        int table = (int)T("grounding.equipment-conductor").Up(device, Metal);
        double area = Area(table) * (size > needed ? Area(size) / Area(needed) : 1);
        int ground = Enumerable.Range(1, 30).First(s => Area(s) >= area * (1 - Slack));
        return Math.Min(ground, size);
    }

    private double Area(int size) => T("conductor.area").At(((ConductorSize)size).Label(), "area");

    private double Listed(int size, double celsius) => T("conductor.ampacity").At(((ConductorSize)size).Label(), FormattableString.Invariant($"{Metal}{celsius}"));

    private IEnumerable<double> Ratings() => T("overcurrent.standard-ratings").Column(DeviceColumn).Select(r => r.Value);

    private PlainTable T(string key) => PlainTable.Of(key, edition);

    private static string Name<T>(T choice)
        where T : struct, Enum
    {
        string name = choice.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
