using System.Collections.Concurrent;
using System.Reflection;
using ElectroRules.Amendments;
using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Tables;
using ElectroRules.Tables.Generated;

namespace ElectroRules;

/// <summary>One edition with zero or more amendments laid over it. Immutable and safe to share between threads.</summary>
public sealed partial class RuleSet
{
    private static readonly ConcurrentDictionary<EditionId, RuleSet> BaseEditions = new();
    private readonly ReferenceTable[] _tables;

    private RuleSet(EditionId edition, ReferenceTable[] tables, IReadOnlyList<Amendment> amendments)
    {
        Edition = edition;
        _tables = tables;
        Amendments = amendments;
        Remarks = [.. amendments.SelectMany(a => a.Remarks)];
        Stamp = new Stamp(edition, [.. amendments.Select(a => a.Id)], GeneratedTables.DataVersion, LibraryVersion);
        Resolver = new RuleSetResolver(this);
    }

    /// <summary>The edition.</summary>
    public EditionId Edition { get; }

    /// <summary>What every determination of this rule set carries.</summary>
    public Stamp Stamp { get; }

    /// <summary>The tables of this rule set, those that the edition does not have included.</summary>
    public IReadOnlyList<ReferenceTable> Tables => _tables;

    /// <summary>The amendments, in the order of their ids.</summary>
    public IReadOnlyList<Amendment> Amendments { get; }

    internal StepResolver Resolver { get; }

    /// <summary>The local findings of the amendments, in the order of the amendments.</summary>
    internal IReadOnlyList<AmendmentRemark> Remarks { get; }

    private static string LibraryVersion { get; } =
        typeof(RuleSet).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "0";

    /// <summary>The rule set of an edition as published, with no amendment.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The edition is not one of <see cref="Editions.All"/>.</exception>
    public static RuleSet For(EditionId edition) =>
        Editions.IsKnown(edition)
            ? BaseEditions.GetOrAdd(edition, static e => Create(e))
            : throw new ArgumentOutOfRangeException(nameof(edition), edition, $"The edition must be one of {string.Join(", ", Editions.All)}.");

    /// <summary>The table with a key.</summary>
    /// <exception cref="ArgumentException">There is no such table.</exception>
    public ReferenceTable Table(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        foreach (ReferenceTable table in _tables)
        {
            if (string.Equals(table.Key, key, StringComparison.Ordinal))
            {
                return table;
            }
        }

        throw new ArgumentException($"There is no table '{key}'.", nameof(key));
    }

    internal ReferenceTable Table(int index) => _tables[index];

    internal RuleSet With(ReferenceTable[] tables, IReadOnlyList<Amendment> amendments) => new(Edition, tables, amendments);

    /// <summary>Says in the derivation that a table is missing in this edition, if it is.</summary>
    /// <returns>Whether the table is present.</returns>
    internal bool Has(ref Deriving d, int table, RuleId rule)
    {
        ReferenceTable found = _tables[table];
        if (!found.IsPresent)
        {
            d.NotCovered("table-absent", rule, found.Key, found.AbsentReason ?? string.Empty);
        }

        return found.IsPresent;
    }

    private static RuleSet Create(EditionId edition)
    {
        TableDefinition[] definitions = GeneratedTables.All();
        var tables = new ReferenceTable[definitions.Length];
        for (int i = 0; i < tables.Length; i++)
        {
            tables[i] = new ReferenceTable(definitions[i], i, edition);
        }

        return new RuleSet(edition, tables, []);
    }
}
