using System.Globalization;
using ElectroRules.Internal;
using ElectroRules.Tables;

namespace ElectroRules.Amendments;

/// <summary>Checks amendments against an edition and against each other, and finds the value that stands in each changed cell.</summary>
internal sealed class CompositionCheck(RuleSet published, Amendment[] amendments)
{
    private readonly List<AmendmentError> _errors = [];
    private readonly Dictionary<(int Table, int Cell), List<(int Amendment, int Change)>> _claims = [];

    /// <summary>The cells to change, by table.</summary>
    /// <exception cref="AmendmentException">Something is wrong.</exception>
    internal Dictionary<int, Dictionary<int, CellAmendment>> Run()
    {
        for (int i = 0; i < amendments.Length; i++)
        {
            One(i);
        }

        var precedence = new Precedence(amendments);
        foreach (int i in precedence.InCircle())
        {
            Add(i, AmendmentErrorCode.SupersedesCircle, "/supersedes", "The amendments supersede each other in a circle.");
        }

        var cells = new Dictionary<int, Dictionary<int, CellAmendment>>();
        foreach (((int table, int cell), List<(int Amendment, int Change)> claims) in _claims)
        {
            (int winner, int change) = Settle(precedence, table, cell, claims);
            if (!cells.TryGetValue(table, out Dictionary<int, CellAmendment>? changed))
            {
                cells.Add(table, changed = []);
            }

            CellChange won = amendments[winner].Changes[change];
            changed.Add(cell, new CellAmendment(won.Value, amendments[winner].Id, won.Section));
        }

        return _errors.Count == 0
            ? cells
            : throw new AmendmentException([.. _errors.OrderBy(e => e.Amendment, StringComparer.Ordinal).ThenBy(e => e.Pointer, StringComparer.Ordinal)
                .ThenBy(e => e.Code, StringComparer.Ordinal).ThenBy(e => e.Message, StringComparer.Ordinal)]);
    }

    private void One(int index)
    {
        Amendment amendment = amendments[index];
        List<AmendmentError> shape = AmendmentShape.Check(amendment);
        _errors.AddRange(shape);
        if (amendments.Count(a => string.Equals(a.Id, amendment.Id, StringComparison.Ordinal)) > 1)
        {
            Add(index, AmendmentErrorCode.DuplicateId, "/id", $"Another amendment has the id '{amendment.Id}'.");
        }

        if (!amendment.Editions.Contains(published.Edition))
        {
            Add(index, AmendmentErrorCode.OtherEdition, "/editions", $"The amendment is not written for {published.Edition}.");
            return;
        }

        for (int i = 0; i < amendment.Changes.Count; i++)
        {
            Change(index, i, shape);
        }
    }

    private void Change(int index, int place, List<AmendmentError> shape)
    {
        CellChange change = amendments[index].Changes[place];
        string at = $"/changes/{place.ToString(CultureInfo.InvariantCulture)}";
        if (AmendmentShape.Table(change.Table) is null)
        {
            return; // Reported with the shape.
        }

        ReferenceTable table = published.Table(change.Table);
        if (!table.IsPresent)
        {
            Add(index, AmendmentErrorCode.AbsentTable, at + "/table", $"Table {table.Key} is absent in {published.Edition}: {table.AbsentReason}.");
            return;
        }

        int row = table.RowOf(change.Row);
        int column = table.ColumnOf(change.Column);
        if (row < 0)
        {
            Add(index, AmendmentErrorCode.UnknownRow, at + "/row", $"Table {table.Key} has no row '{change.Row}' in {published.Edition}.");
        }

        if (column < 0)
        {
            Add(index, AmendmentErrorCode.UnknownColumn, at + "/column", $"Table {table.Key} has no column '{change.Column}'.");
        }

        if (row < 0 || column < 0 || shape.Exists(e => e.Pointer.Equals(at, StringComparison.Ordinal)))
        {
            return;
        }

        int cell = table.CellIndex(row, column);
        double basis = table.AtCell(cell);
        if (!shape.Exists(e => e.Pointer.Equals(at + "/expects", StringComparison.Ordinal)) && !Matches(basis, change.Expects))
        {
            Add(index, AmendmentErrorCode.WrongExpectation, at + "/expects", $"The edition has {CellText.Of(table, basis)}, not {CellText.Of(table, change.Expects ?? double.NaN)}.");
        }

        if (!shape.Exists(e => e.Pointer.Equals(at + "/value", StringComparison.Ordinal)) && !change.Relaxes && CanRelax(table, basis, change.Value))
        {
            Add(index, AmendmentErrorCode.UnmarkedRelaxation, at + "/relaxes", $"{CellText.Of(table, change.Value)} in place of {CellText.Of(table, basis)} relaxes table {table.Key}, or can; mark it with true.");
        }

        if (!_claims.TryGetValue((table.Index, cell), out List<(int Amendment, int Change)>? claims))
        {
            _claims.Add((table.Index, cell), claims = []);
        }

        claims.Add((index, place));
    }

    private (int Amendment, int Change) Settle(Precedence precedence, int table, int cell, List<(int Amendment, int Change)> claims)
    {
        foreach ((int Amendment, int Change) claim in claims)
        {
            if (claims.TrueForAll(other => other.Amendment == claim.Amendment || precedence.IsAbove(claim.Amendment, other.Amendment)))
            {
                return claim;
            }
        }

        string name = $"{published.Tables[table].CellName(cell)}";
        foreach ((int amendment, int change) in claims)
        {
            string others = string.Join(", ", claims.Where(c => c.Amendment != amendment).Select(c => amendments[c.Amendment].Id));
            Add(amendment, AmendmentErrorCode.Conflict, $"/changes/{change.ToString(CultureInfo.InvariantCulture)}", $"{name} is changed by {others} too, and none supersedes all others.");
        }

        return claims[0];
    }

    private static bool Matches(double basis, double? expects) =>
        expects is { } value ? !double.IsNaN(basis) && Limit.Same(basis, value) : double.IsNaN(basis);

    private static bool CanRelax(ReferenceTable table, double basis, double value) =>
        double.IsNaN(basis) || table.Definition.Stricter switch
        {
            StricterDirection.Up => Limit.Below(value, basis),
            StricterDirection.Down => Limit.Above(value, basis),
            _ => true,
        };

    private void Add(int index, string code, string pointer, string message) =>
        _errors.Add(new AmendmentError(code, amendments[index].Id, pointer, message));
}
