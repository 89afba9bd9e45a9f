using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules.Conductors;

/// <summary>A run whose facts have been resolved into factors. It gives the ampacity of any size: bare for a search, or with its steps.</summary>
internal readonly struct ResolvedRun
{
    private static readonly StepDefinition Base = new(Rules.BaseAmpacity, "table-ampacity", StepOperation.Table, QuantityUnit.Ampere, ConductorAmpacityTable.Index);
    private static readonly StepDefinition Corrected = new(Rules.Adjustment, "corrected-ampacity", StepOperation.Product, QuantityUnit.Ampere);
    private static readonly StepDefinition CapAmpacity = new(Rules.CableTemperature, "cable-limit", StepOperation.Table, QuantityUnit.Ampere, ConductorAmpacityTable.Index);
    private static readonly StepDefinition Capped = new(Rules.CableTemperature, "ampacity-within-cable-limit", StepOperation.Minimum, QuantityUnit.Ampere);
    private static readonly StepDefinition Least = new(Rules.LowerAmpacityPortion, "least-of-the-route", StepOperation.Minimum, QuantityUnit.Ampere);
    private static readonly StepDefinition LowLength = new(Rules.LowerAmpacityPortion, "length-of-lower-ampacity", StepOperation.Rule, QuantityUnit.Foot);
    private static readonly StepDefinition HighLength = new(Rules.LowerAmpacityPortion, "length-of-higher-ampacity", StepOperation.Rule, QuantityUnit.Foot);
    private static readonly StepDefinition Share = new(Rules.LowerAmpacityPortion, "largest-share", StepOperation.Table, QuantityUnit.One, ConductorLowerAmpacityShareTable.Index);
    private static readonly StepDefinition ShareLength = new(Rules.LowerAmpacityPortion, "share-of-length", StepOperation.Product, QuantityUnit.Foot);
    private static readonly StepDefinition Longest = new(Rules.LowerAmpacityPortion, "longest-portion", StepOperation.Table, QuantityUnit.Foot, ConductorLowerAmpacityLengthTable.Index);
    private static readonly StepDefinition Allowed = new(Rules.LowerAmpacityPortion, "length-left-out-at-most", StepOperation.Minimum, QuantityUnit.Foot);
    private static readonly StepDefinition Fits = new(Rules.LowerAmpacityPortion, "short-portion", StepOperation.Holds, QuantityUnit.Foot);
    private static readonly StepDefinition LeftOut = new(Rules.LowerAmpacityPortion, "ampacity-without-short-portion", StepOperation.Same, QuantityUnit.Ampere);
    private static readonly StepDefinition Sets = new(Rules.ParallelConductors, "sets", StepOperation.Given, QuantityUnit.Count);
    private static readonly StepDefinition AllSets = new(Rules.ParallelConductors, "ampacity-of-all-sets", StepOperation.Product, QuantityUnit.Ampere);

    private readonly ReferenceTable _ampacity;
    private readonly SegmentFactors[] _segments;
    private readonly double _longest;
    private readonly double _share;

    internal ResolvedRun(RuleSet rules, ConductorRun run, SegmentFactors[] segments)
    {
        RuleSet = rules;
        _ampacity = rules.Table(ConductorAmpacityTable.Index);
        _longest = rules.Table(ConductorLowerAmpacityLengthTable.Index).At(0, ConductorLowerAmpacityLengthTable.Column.Length);
        _share = rules.Table(ConductorLowerAmpacityShareTable.Index).At(0, ConductorLowerAmpacityShareTable.Column.Share);
        _segments = segments;
        Material = run.Material;
        ParallelSets = run.ParallelSets;
    }

    internal RuleSet RuleSet { get; }

    internal ConductorMaterial Material { get; }

    internal int ParallelSets { get; }

    internal ReadOnlySpan<SegmentFactors> Segments => _segments;

    /// <summary>The room of the factors, to be used again once this run is done with.</summary>
    internal SegmentFactors[] Room => _segments;

    /// <summary>The ampacity of a size at a temperature column, all sets together; NaN when the table has none.</summary>
    internal double Listed(int size, int column) =>
        _ampacity.At(size - 1, TemperatureColumn.InTable(Material, column)) * ParallelSets;

    /// <summary>The ampacity at a column, but not above what the insulation and the kind of cable allow anywhere on the route.</summary>
    internal double ListedWithinCable(int size, int column)
    {
        int least = column;
        foreach (ref readonly SegmentFactors segment in _segments.AsSpan())
        {
            least = Math.Min(least, segment.Column);
            if (segment.CapColumn >= 0 && size <= segment.CapLargestSize && segment.CapColumn < least)
            {
                least = segment.CapColumn;
            }
        }

        return Listed(size, least);
    }

    /// <summary>The ampacity of a size after correction, adjustment and the limits of the cable, all sets together.</summary>
    internal double CorrectedAmpacity(int size)
    {
        if (_segments.Length == 1)
        {
            return OfSegment(size, in _segments[0]) * ParallelSets;
        }

        int governing = Governing(size, out _, out _);
        return OfSegment(size, in _segments[governing]) * ParallelSets;
    }

    /// <summary>The ampacity after correction, with every step.</summary>
    internal Figure Derive(ref Deriving d, int size, scoped Span<double> perSegment)
    {
        Span<Figure> figures = stackalloc Figure[_segments.Length];
        Figure listed = default;
        Figure? cap = null;
        ushort subject = StepSubject.Conductor(size, (int)Material);
        for (int i = 0; i < _segments.Length; i++)
        {
            if (i > 0 && _segments[i].SameColumns(in _segments[i - 1]))
            {
                figures[i] = DeriveSegment(ref d, in _segments[i], listed, cap);
            }
            else
            {
                (listed, cap) = ReadSegment(ref d, size, in _segments[i], subject);
                figures[i] = DeriveSegment(ref d, in _segments[i], listed, cap);
            }

            perSegment[i] = figures[i].Value * ParallelSets;
        }

        Figure result = _segments.Length == 1 ? figures[0] : Combine(ref d, size, figures);
        if (ParallelSets > 1)
        {
            result = d.Product(AllSets, result, d.Given(Sets, ParallelSets));
        }

        return result;
    }

    /// <summary>The segment whose ampacity holds for the whole, the short portions left out where that is allowed.</summary>
    internal int Governing(int size, out double lowLength, out double highLength)
    {
        int best = -1;
        double bestAmpacity = double.NegativeInfinity;
        lowLength = 0;
        highLength = 0;
        for (int i = 0; i < _segments.Length; i++)
        {
            double ampacity = OfSegment(size, in _segments[i]);
            if (ampacity <= bestAmpacity)
            {
                continue;
            }

            double low = 0;
            double high = 0;
            bool barred = false;
            foreach (ref readonly SegmentFactors other in _segments.AsSpan())
            {
                bool isLower = Limit.Below(OfSegment(size, in other), ampacity);
                low += isLower ? other.LengthFeet : 0;
                high += isLower ? 0 : other.LengthFeet;
                barred |= isLower && other.MustCount;
            }

            if (low == 0 || (!barred && Limit.AtMost(low, Math.Min(_longest, _share * high))))
            {
                best = i;
                bestAmpacity = ampacity;
                lowLength = low;
                highLength = high;
            }
        }

        return best;
    }

    private double OfSegment(int size, in SegmentFactors segment)
    {
        double ampacity = _ampacity.At(size - 1, TemperatureColumn.InTable(Material, segment.Column)) * segment.Factor;
        return segment.CapColumn >= 0 && size <= segment.CapLargestSize
            ? Math.Min(ampacity, _ampacity.At(size - 1, TemperatureColumn.InTable(Material, segment.CapColumn)))
            : ampacity;
    }

    private (Figure Listed, Figure? Cap) ReadSegment(ref Deriving d, int size, in SegmentFactors segment, ushort subject)
    {
        Figure listed = _ampacity.Read(ref d, Base, size - 1, TemperatureColumn.InTable(Material, segment.Column), subject);
        Figure? cap = segment.CapColumn >= 0 && size <= segment.CapLargestSize
            ? _ampacity.Read(ref d, CapAmpacity, size - 1, TemperatureColumn.InTable(Material, segment.CapColumn), subject)
            : null;
        return (listed, cap);
    }

    private static Figure DeriveSegment(ref Deriving d, in SegmentFactors segment, Figure listed, Figure? cap)
    {
        Figure corrected = d.Product(Corrected, listed, segment.Ambient, segment.Adjustment);
        return cap is { } most ? d.Minimum(Capped, corrected, most) : corrected;
    }

    private Figure Combine(ref Deriving d, int size, scoped ReadOnlySpan<Figure> figures)
    {
        int governing = Governing(size, out double lowLength, out double highLength);
        if (lowLength > 0)
        {
            Figure low = d.Rule(LowLength, lowLength);
            Figure high = d.Rule(HighLength, highLength);
            Figure share = RuleSet.Table(ConductorLowerAmpacityShareTable.Index).Read(ref d, Share, 0, ConductorLowerAmpacityShareTable.Column.Share);
            Figure ofLength = d.Product(ShareLength, high, share);
            Figure longest = RuleSet.Table(ConductorLowerAmpacityLengthTable.Index).Read(ref d, Longest, 0, ConductorLowerAmpacityLengthTable.Column.Length);
            Figure allowed = d.Minimum(Allowed, ofLength, longest);
            d.Holds(Fits, low.Value, allowed, StepSubject.None);
            return d.Same(LeftOut, figures[governing]);
        }

        Figure least = figures[0];
        for (int i = 1; i < figures.Length; i++)
        {
            least = d.Minimum(Least, least, figures[i]);
        }

        return least;
    }
}
