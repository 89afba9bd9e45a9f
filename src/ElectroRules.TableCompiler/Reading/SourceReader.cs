using ElectroRules.TableCompiler.Json;
using ElectroRules.TableCompiler.Model;

namespace ElectroRules.TableCompiler.Reading;

/// <summary>Reads the sources of a table.</summary>
internal static class SourceReader
{
    internal static List<SourceData> Read(DataNode map, FileErrors errors)
    {
        var sources = new List<SourceData>();
        foreach (DataMember member in map.Members)
        {
            ObjectReader? source = ObjectReader.Open(member.Value, $"the source '{member.Name}'", errors);
            if (source is null)
            {
                continue;
            }

            DataNode? kind = source.TakeText("kind");
            DataNode? title = source.TakeText("title");
            DataNode? address = source.Take("address", NodeKind.Text);
            source.Close();
            if (address is not null && !IsAddress(address.Text))
            {
                errors.Add(DataErrorCode.MalformedAddress, address.Line, $"'{address.Text}' is neither empty nor an http or https address");
            }

            sources.Add(new SourceData(
                member.Name, member.Line, kind?.Text ?? string.Empty, title?.Text ?? string.Empty, address?.Text ?? string.Empty));
        }

        return sources;
    }

    private static bool IsAddress(string text) =>
        text.Length == 0
        || (Uri.TryCreate(text, UriKind.Absolute, out Uri? uri)
            && (string.Equals(uri.Scheme, "http", StringComparison.Ordinal) || string.Equals(uri.Scheme, "https", StringComparison.Ordinal)));
}
