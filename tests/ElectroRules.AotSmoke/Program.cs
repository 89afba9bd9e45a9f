using System.Globalization;
using ElectroRules;
using ElectroRules.Operations;
using ElectroRules.Tables;

// Prints the same answers under the JIT and as a native program; .ci/run compares the two.
string[] keys = ["conductor.ampacity", "conductor.minimum-size", "overcurrent.factors", "supply.voltages", "wiring.methods"];

foreach (EditionId edition in Editions.All)
{
    RuleSet rules = RuleSet.For(edition);
    Console.WriteLine($"{edition}: {rules.Tables.Count} tables, data {rules.Stamp.DataVersion}");
    foreach (string key in keys)
    {
        PrintCorners(rules.Table(key));
    }
}

// Every operation through JSON: reading, computing, the derivation and writing, and the schema of its request.
foreach (Operation operation in OperationCatalog.All)
{
    Console.WriteLine(OperationCatalog.Run(operation.Id, operation.ExampleRequest()));
    Console.WriteLine(OperationCatalog.Run(operation.Id, "{ \"edition\": \"nec1999\", \"request\": { \"size\": 6 } }"));
    Console.WriteLine(operation.RequestSchema());
}

static void PrintCorners(ReferenceTable table)
{
    if (!table.IsPresent)
    {
        Console.WriteLine($"  {table.Key}: absent, {table.AbsentReason}");
        return;
    }

    PrintCell(table, table.Rows[0], table.Columns[0]);
    PrintCell(table, table.Rows[^1], table.Columns[^1]);
}

static void PrintCell(ReferenceTable table, string row, string column)
{
    string value = table.Value(row, column)?.ToString("R", CultureInfo.InvariantCulture) ?? "no value";
    Console.WriteLine($"  {table.Key} [{row}, {column}]: {value} ({table.ConfidenceOf(row, column)}, {table.Section})");
}
