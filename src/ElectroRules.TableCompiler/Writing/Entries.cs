using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Writing;

/// <summary>Writes the lists of editions that tables and rules have in common.</summary>
internal static class Entries
{
    internal static string Section(EditionText entry) => $"new EditionSection(EditionId.{entry.Edition}, {Code.Literal(entry.Text)})";

    internal static string Reason(EditionText entry) => $"new EditionReason(EditionId.{entry.Edition}, {Code.Literal(entry.Text)})";

    /// <summary>A member that is a list, one entry a line.</summary>
    internal static void WriteList(Code code, string member, IEnumerable<string> entries)
    {
        string[] all = [.. entries];
        if (all.Length == 0)
        {
            code.Line($"{member} = [],");
            return;
        }

        code.Line($"{member} =");
        code.Open("[");
        foreach (string entry in all)
        {
            code.Line(entry + ",");
        }

        code.Close("],");
    }
}
