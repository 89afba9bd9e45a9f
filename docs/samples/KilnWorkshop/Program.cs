using ElectroRules;
using ElectroRules.Circuits;
using ElectroRules.Reports;
using ElectroRules.Results;
using ElectroRules.Wording;
using KilnWorkshop;

// A kiln of 11.5 kW took the place of a smaller one in a detached workshop. The old 50 A breaker trips.
RuleSet rules = RuleSet.For(EditionId.Nec2023);

Chapter("1. The new circuit for the kiln, under the 2023 edition");
Determination<BranchCircuitDesign> design = BranchCircuit.Design(rules, Scenario.Wanted);
Console.Write(PlainTextReport.Write(design, WordingSet.English));

Chapter("2. What the old cable allows: 6 AWG copper NM-B on a 50 A breaker");
Determination<ConductorLimitsResult> existing = ConductorLimits.Determine(rules, Scenario.Existing);
Console.Write(PlainTextReport.Write(existing, WordingSet.English));
if (existing.Value.MostContinuousLoad.Amperes < design.Value.LoadCurrent.Amperes)
{
    Console.WriteLine();
    Console.WriteLine("The kiln draws more, for hours, than this cable may carry for hours: a larger breaker on it is no answer.");
}

Chapter("3. What differs under the 2020 edition");
foreach (string line in Differences.Between(BranchCircuit.Design(RuleSet.For(EditionId.Nec2020), Scenario.Wanted), design))
{
    Console.WriteLine(line);
}

Chapter("4. What is asked when nobody knows how long the kiln fires");
Determination<BranchCircuitDesign> unknown = BranchCircuit.Design(rules, Scenario.Wanted with { Load = Scenario.Kiln with { Duty = null } });
foreach (Need need in unknown.Needs)
{
    Console.WriteLine($"{unknown.Status}: {need.Path} decides between {string.Join(" and ", need.StillPossible)}");
}

static void Chapter(string title)
{
    Console.WriteLine();
    Console.WriteLine($"##### {title} #####");
    Console.WriteLine();
}
