using System.Globalization;
using ElectroRules;
using ElectroRules.Tables;

// A program outside the repository that knows the library only as a package.
RuleSet rules = RuleSet.For(EditionId.Nec2023);
ReferenceTable ampacity = rules.Table("conductor.ampacity");
double? amperes = ampacity.Value("6 AWG", "cu60");
Console.WriteLine(amperes?.ToString(CultureInfo.InvariantCulture) ?? "no value");
