using ElectroRules.TableCompiler;
using ElectroRules.TableCompiler.Writing;

bool check = args is ["--check"];
if (!check && args.Length > 0)
{
    Console.Error.WriteLine("Usage: ElectroRules.TableCompiler [--check]");
    return 2;
}

string? root = Repository.RootAbove(Directory.GetCurrentDirectory()) ?? Repository.RootAbove(AppContext.BaseDirectory);
if (root is null)
{
    Console.Error.WriteLine("ElectroRules.sln was found neither above the current folder nor above the tool.");
    return 2;
}

DataFolder data = DataFolder.Load(Repository.DataFolder(root));
foreach (DataError error in data.Errors)
{
    Console.Error.WriteLine(error);
}

if (data.Errors.Count > 0)
{
    Console.Error.WriteLine($"{data.Errors.Count} errors; nothing was written.");
    return 1;
}

SortedDictionary<string, string> files = CodeWriter.Write(data);
IReadOnlyList<string> differences = GeneratedFolder.Differences(Repository.GeneratedFolder(root), files);
foreach (string name in differences)
{
    Console.Out.WriteLine((check ? "differs: " : "written: ") + name);
}

if (!check)
{
    GeneratedFolder.Write(Repository.GeneratedFolder(root), files);
}

Console.Out.WriteLine($"{data.Tables.Count} tables, {data.Rules.Count} rules, data version {data.Version}");
return check && differences.Count > 0 ? 1 : 0;
