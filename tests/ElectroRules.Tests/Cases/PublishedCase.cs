using System.Globalization;
using System.Text.Json;
using ElectroRules.Conductors;

namespace ElectroRules.Tests.Cases;

/// <summary>A published worked example: its facts, what its source says comes out, and where it was seen.</summary>
internal sealed class PublishedCase
{
    private readonly JsonElement _case;

    private PublishedCase(JsonElement element)
    {
        _case = element;
    }

    internal string Id => _case.GetProperty("id").GetString()!;

    internal string SourceTitle => _case.GetProperty("source").GetProperty("title").GetString()!;

    internal string SourceAddress => _case.GetProperty("source").GetProperty("address").GetString()!;

    internal static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "Cases");

    internal static IReadOnlyList<PublishedCase> Read(string topic)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(Path.Combine(Folder, topic + ".json")));
        return [.. document.RootElement.EnumerateArray().Select(e => new PublishedCase(e.Clone()))];
    }

    internal double In(string name) => Number(_case.GetProperty("inputs").GetProperty(name));

    internal IReadOnlyList<double> InMany(string name) => Many(_case.GetProperty("inputs").GetProperty(name));

    internal ConductorSize InSize(string name) => Size(_case.GetProperty("inputs").GetProperty(name).GetString()!);

    internal double Out(string name) => Number(_case.GetProperty("expected").GetProperty(name));

    internal bool OutYes(string name) => _case.GetProperty("expected").GetProperty(name).GetBoolean();

    internal IReadOnlyList<double> OutMany(string name) => Many(_case.GetProperty("expected").GetProperty(name));

    internal ConductorSize OutSize(string name) => Size(_case.GetProperty("expected").GetProperty(name).GetString()!);

    internal IReadOnlyList<ConductorSize> OutSizes(string name) =>
        [.. _case.GetProperty("expected").GetProperty(name).EnumerateArray().Select(e => Size(e.GetString()!))];

    /// <summary>Reads "1/0 AWG Cu THHN", "12", "12/2" (a cable) or "500 kcmil Cu".</summary>
    internal static ConductorSize Size(string text)
    {
        string[] parts = text.Split(' ');
        string gauge = parts[0].EndsWith("/2", StringComparison.Ordinal) ? parts[0][..^2] : parts[0];
        string unit = parts.Contains("kcmil") ? "kcmil" : "AWG";
        Assert.True(ConductorSizes.TryParse(string.Create(CultureInfo.InvariantCulture, $"{gauge} {unit}"), out ConductorSize size), text);
        return size;
    }

    private static double[] Many(JsonElement list) => [.. list.EnumerateArray().Select(Number)];

    private static double Number(JsonElement element) => (double)element.GetDecimal();
}

/// <summary>The runners of the cases of a topic, by the id of the case.</summary>
internal sealed class CaseRunners(string topic, IReadOnlyDictionary<string, Action<PublishedCase, RuleSet>> runners)
{
    internal string Topic { get; } = topic;

    internal IEnumerable<string> Ids => runners.Keys;

    /// <summary>Each case under each edition that it is to hold in.</summary>
    internal TheoryData<string, EditionId> Data(params EditionId[] editions)
    {
        var data = new TheoryData<string, EditionId>();
        foreach (string id in runners.Keys)
        {
            foreach (EditionId edition in editions.Length == 0 ? Support.VerifiedEditions.List : editions)
            {
                data.Add(id, edition);
            }
        }

        return data;
    }

    internal void Run(string id, EditionId edition) =>
        runners[id](PublishedCase.Read(Topic).Single(c => c.Id == id), RuleSet.For(edition));
}
