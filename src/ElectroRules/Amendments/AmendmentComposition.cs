using ElectroRules.Tables;

namespace ElectroRules.Amendments;

/// <summary>Lays amendments over a rule set.</summary>
/// <remarks>
/// Every change is compared with the edition as published, and the order of the amendments never decides: given one after the
/// other or all at once, the same amendments give the same rule set. Where several change one cell, the one that supersedes all
/// others, directly or through one that is present, stands; amendments that belong together are therefore best given at once.
/// </remarks>
public static class AmendmentComposition
{
    /// <summary>The rule set with one more amendment. The rule set itself stays as it is.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="amendment">The amendment.</param>
    /// <exception cref="AmendmentException">The amendment does not fit; all errors are in it.</exception>
    public static RuleSet With(this RuleSet rules, Amendment amendment)
    {
        ArgumentNullException.ThrowIfNull(amendment);
        return With(rules, [amendment]);
    }

    /// <summary>The rule set with more amendments. The rule set itself stays as it is.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="amendments">The amendments, in any order.</param>
    /// <exception cref="ArgumentException">One of them is null.</exception>
    /// <exception cref="AmendmentException">They do not fit; all errors are in it.</exception>
    public static RuleSet With(this RuleSet rules, IReadOnlyList<Amendment> amendments)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(amendments);
        if (amendments.Contains(null))
        {
            throw new ArgumentException("An amendment in the list is null.", nameof(amendments));
        }

        if (amendments.Count == 0)
        {
            return rules;
        }

        Amendment[] all = [.. rules.Amendments.Concat(amendments).Select(Freeze).OrderBy(a => a.Id, StringComparer.Ordinal)];
        RuleSet published = RuleSet.For(rules.Edition);
        var check = new CompositionCheck(published, all);
        Dictionary<int, Dictionary<int, CellAmendment>> cells = check.Run();
        ReferenceTable[] tables = [.. published.Tables.Select(t => cells.TryGetValue(t.Index, out var changed) ? t.With(changed) : t)];
        return published.With(tables, all);
    }

    /// <summary>A copy whose lists nobody else holds.</summary>
    private static Amendment Freeze(Amendment amendment) => amendment with
    {
        Editions = Array.AsReadOnly(amendment.Editions.ToArray()),
        Supersedes = Array.AsReadOnly(amendment.Supersedes.ToArray()),
        Changes = Array.AsReadOnly(amendment.Changes.ToArray()),
        Remarks = Array.AsReadOnly(amendment.Remarks.ToArray()),
    };
}
