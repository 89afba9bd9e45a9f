using System.Reflection;
using System.Text.Json;

namespace ElectroRules.Wording;

/// <summary>The words of one language: texts by key, with named placeholders. Immutable and safe to share between threads.</summary>
public sealed class WordingSet
{
    private const string Resource = "ElectroRules.Wording.en.json";
    private static readonly Lazy<WordingSet> LazyEnglish = new(ReadEnglish);
    private readonly Dictionary<string, string> _texts;
    private readonly WordingSet? _fallback;

    private WordingSet(Dictionary<string, string> texts, WordingSet? fallback)
    {
        _texts = texts;
        _fallback = fallback;
    }

    /// <summary>The English words that come with the library.</summary>
    public static WordingSet English => LazyEnglish.Value;

    /// <summary>Every key that a text can be given for.</summary>
    public IReadOnlyCollection<string> Keys => (_fallback ?? this)._texts.Keys;

    /// <summary>Reads the words of another language: an object with a text for each key. A key that is left out keeps its English text.</summary>
    /// <exception cref="ArgumentNullException">The text is null.</exception>
    /// <exception cref="WordingException">It is not an object of texts, or a key or a placeholder is unknown. All faults are listed.</exception>
    public static WordingSet FromJson(string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        var faults = new List<string>();
        Dictionary<string, string> texts = Read(json, faults);
        foreach ((string key, string text) in texts)
        {
            if (!English._texts.TryGetValue(key, out string? english))
            {
                faults.Add($"'{key}' is not a known key.");
                continue;
            }

            List<string> known = Template.Placeholders(english);
            foreach (string name in Template.Placeholders(text))
            {
                if (!known.Contains(name, StringComparer.Ordinal))
                {
                    faults.Add($"'{key}' has no placeholder '{{{name}}}'.");
                }
            }
        }

        return faults.Count == 0 ? new WordingSet(texts, English) : throw new WordingException(faults);
    }

    /// <summary>Whether there is a text for a key.</summary>
    public bool Has(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return _texts.ContainsKey(key) || (_fallback?.Has(key) ?? false);
    }

    /// <summary>The text of a key; the key itself when there is none, so that nothing is lost.</summary>
    public string Text(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return _texts.TryGetValue(key, out string? text) ? text : _fallback?.Text(key) ?? key;
    }

    /// <summary>The text of a key with its placeholders filled in.</summary>
    internal string Fill(string key, params ReadOnlySpan<(string Name, string Value)> values) => Template.Fill(Text(key), values);

    private static WordingSet ReadEnglish()
    {
        using Stream stream = typeof(WordingSet).GetTypeInfo().Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The resource '{Resource}' is missing.");
        using var reader = new StreamReader(stream);
        var faults = new List<string>();
        Dictionary<string, string> texts = Read(reader.ReadToEnd(), faults);
        return faults.Count == 0 ? new WordingSet(texts, fallback: null) : throw new WordingException(faults);
    }

    private static Dictionary<string, string> Read(string json, List<string> faults)
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        try
        {
            using JsonDocument document = JsonDocument.Parse(json);
            if (document.RootElement.ValueKind != JsonValueKind.Object)
            {
                faults.Add("The words must be an object.");
                return texts;
            }

            foreach (JsonProperty property in document.RootElement.EnumerateObject())
            {
                if (property.Value.ValueKind != JsonValueKind.String)
                {
                    faults.Add($"'{property.Name}' must be a text.");
                }
                else if (!texts.TryAdd(property.Name, property.Value.GetString()!))
                {
                    faults.Add($"'{property.Name}' stands twice.");
                }
            }
        }
        catch (JsonException exception)
        {
            faults.Add($"The words are not JSON: {exception.Message}");
        }

        return texts;
    }
}
