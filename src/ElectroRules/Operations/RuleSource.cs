using System.Collections.Concurrent;
using System.Text.Json;
using ElectroRules.Amendments;
using ElectroRules.Operations.Json;

namespace ElectroRules.Operations;

/// <summary>Where an operation gets its rule sets from.</summary>
internal abstract class RuleSource
{
    /// <summary>An edition under the amendments of the document; null when they do not fit.</summary>
    internal abstract RuleSet? Of(EditionId edition, RequestErrors errors);
}

/// <summary>The editions under the amendments of a rule set that the host gave.</summary>
internal sealed class HostRules(RuleSet rules) : RuleSource
{
    internal override RuleSet? Of(EditionId edition, RequestErrors errors) =>
        edition == rules.Edition ? rules : DocumentRules.Compose(edition, rules.Amendments, errors);
}

/// <summary>The editions under the amendments written in the document.</summary>
internal sealed class DocumentRules : RuleSource
{
    private readonly RuleSetCache _cache;
    private readonly string _text;
    private readonly Amendment[]? _amendments;

    internal DocumentRules(RuleSetCache cache, JsonElement amendments, RequestErrors errors)
    {
        _cache = cache;
        _text = string.Empty;
        _amendments = [];
        if (amendments.ValueKind is not (JsonValueKind.Undefined or JsonValueKind.Null))
        {
            _text = amendments.GetRawText();
            _amendments = Read(amendments, errors);
        }
    }

    internal override RuleSet? Of(EditionId edition, RequestErrors errors)
    {
        if (_amendments is null)
        {
            return null;
        }

        RuleSet? found = _cache.Find(edition, _text);
        if (found is null && (found = Compose(edition, _amendments, errors)) is not null)
        {
            _cache.Keep(edition, _text, found);
        }

        return found;
    }

    internal static RuleSet? Compose(EditionId edition, IReadOnlyList<Amendment> amendments, RequestErrors errors)
    {
        try
        {
            return RuleSet.For(edition).With(amendments);
        }
        catch (AmendmentException e)
        {
            foreach (AmendmentError error in e.Errors)
            {
                int index = 0;
                while (!string.Equals(amendments[index].Id, error.Amendment, StringComparison.Ordinal))
                {
                    index++;
                }

                errors.Add(JsonValues.Child("/amendments", index) + error.Pointer, error.Code, error.Message);
            }

            return null;
        }
    }

    private static Amendment[]? Read(JsonElement list, RequestErrors errors)
    {
        const string Place = "/amendments";
        if (!JsonValues.Is(list, JsonValueKind.Array, "a list", Place, errors))
        {
            return null;
        }

        int before = errors.Count;
        var amendments = new List<Amendment>();
        int index = 0;
        foreach (JsonElement item in list.EnumerateArray())
        {
            try
            {
                amendments.Add(AmendmentReader.Read(item.GetRawText()));
            }
            catch (AmendmentException e)
            {
                foreach (AmendmentError error in e.Errors)
                {
                    errors.Add(JsonValues.Child(Place, index) + error.Pointer, error.Code, error.Message);
                }
            }

            index++;
        }

        return errors.Count == before ? [.. amendments] : null;
    }
}

/// <summary>Keeps the rule sets of one batch by edition and text of the amendments; a bounded number of them.</summary>
internal sealed class RuleSetCache
{
    private const int Most = 64;
    private readonly ConcurrentDictionary<(EditionId Edition, string Amendments), RuleSet> _kept = new();

    internal RuleSet? Find(EditionId edition, string amendments) => _kept.GetValueOrDefault((edition, amendments));

    internal void Keep(EditionId edition, string amendments, RuleSet rules)
    {
        if (_kept.Count < Most)
        {
            _kept[(edition, amendments)] = rules;
        }
    }
}
