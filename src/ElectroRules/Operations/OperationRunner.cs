using System.Buffers;
using System.Text.Json;
using ElectroRules.Operations.Json;

namespace ElectroRules.Operations;

/// <summary>Takes one document through reading, running and writing.</summary>
internal static class OperationRunner
{
    private static readonly string[] WithEdition = ["edition", "amendments", "request"];
    private static readonly string[] WithoutEdition = ["amendments", "request"];

    /// <summary>Runs a document of edition, amendments and request.</summary>
    /// <returns>Whether it could be run; if not, the errors were written.</returns>
    internal static bool Run(string id, ReadOnlyMemory<byte> json, RuleSetCache cache, IBufferWriter<byte> output) =>
        Run(id, json, output, (operation, root, errors) => Envelope(operation, root, cache, errors));

    /// <summary>Runs a document that is the request alone.</summary>
    /// <returns>Whether it could be run; if not, the errors were written.</returns>
    internal static bool Run(string id, RuleSet rules, ReadOnlyMemory<byte> json, IBufferWriter<byte> output) =>
        Run(id, json, output, (operation, root, errors) => operation.Answer(rules, new HostRules(rules), root, string.Empty, errors));

    private static bool Run(
        string id,
        ReadOnlyMemory<byte> json,
        IBufferWriter<byte> output,
        Func<Operation, JsonElement, RequestErrors, Action<Utf8JsonWriter>?> answer)
    {
        var errors = new RequestErrors();
        using var writer = new Utf8JsonWriter(output, OperationJson.Compact);
        Operation? operation = OperationCatalog.Find(id);
        if (operation is null)
        {
            errors.Add(string.Empty, OperationErrorCode.UnknownOperation, $"There is no such operation; the operations are {string.Join(", ", OperationCatalog.All.Select(o => o.Id))}.");
        }

        using JsonDocument? document = JsonText.Parse(json, errors);
        Action<Utf8JsonWriter>? write = operation is null || document is null ? null : answer(operation, document.RootElement, errors);
        bool good = write is not null && errors.Count == 0;
        if (good)
        {
            write!(writer);
        }
        else
        {
            errors.Write(writer, id);
        }

        return good;
    }

    private static Action<Utf8JsonWriter>? Envelope(Operation operation, JsonElement root, RuleSetCache cache, RequestErrors errors)
    {
        string[] known = operation.TakesEdition ? WithEdition : WithoutEdition;
        string[] required = [.. known.Where(name => !string.Equals(name, "amendments", StringComparison.Ordinal))];
        if (JsonValues.Properties(root, string.Empty, known, required, errors) is not { } found)
        {
            return null;
        }

        EditionId? edition = null;
        if (found.TryGetValue("edition", out JsonElement written)
            && Vocabulary.Editions.Check(written, "/edition", errors)
            && Vocabulary.Editions.TryFind(written.GetString(), out EditionId named))
        {
            edition = named;
        }

        var source = new DocumentRules(cache, found.GetValueOrDefault("amendments"), errors);
        RuleSet? rules = edition is { } year ? source.Of(year, errors) : null;
        return found.TryGetValue("request", out JsonElement request) ? operation.Answer(rules, source, request, "/request", errors) : null;
    }
}
