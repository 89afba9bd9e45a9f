using ElectroRules;
using ElectroRules.Circuits;
using ElectroRules.Results;
using KilnWorkshop;

// A kiln of 11.5 kW took the place of a smaller one in a detached workshop. The old 50 A breaker trips after an hour.
RuleSet rules = RuleSet.For(EditionId.Nec2023);

Printer.Title("1. What the cable that is there allows (6 AWG copper NM-B, 50 A breaker)");
Printer.Print(ConductorLimits.Determine(rules, Scenario.Existing));

Printer.Title("2. The circuit for the new kiln");
Determination<BranchCircuitDesign> design = BranchCircuit.Design(rules, Scenario.Wanted);
Printer.Print(design);

Printer.Title("3. What would differ under the 2020 edition");
Printer.Compare(BranchCircuit.Design(RuleSet.For(EditionId.Nec2020), Scenario.Wanted), design);

Printer.Title("4. If nobody knew how long the kiln fires");
Printer.Print(BranchCircuit.Design(rules, Scenario.Wanted with { Load = Scenario.Kiln with { Duty = null } }));
