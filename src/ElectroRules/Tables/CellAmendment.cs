namespace ElectroRules.Tables;

/// <summary>What an amendment sets a cell to, and where in the local law it says so.</summary>
internal sealed record CellAmendment(double Value, string Amendment, string Section);
