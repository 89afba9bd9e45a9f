using System.Text.Json;
using System.Text.Json.Nodes;
using ElectroRules.Operations;

namespace ElectroRules.Tests.Operations;

/// <summary>Documents for tests: the examples, changed in one place.</summary>
internal static class OperationDocuments
{
    internal static JsonNode Example(string id) => JsonNode.Parse(OperationCatalog.Find(id)!.ExampleRequest())!;

    internal static string With(string id, Action<JsonNode> change)
    {
        JsonNode document = Example(id);
        change(document);
        return document.ToJsonString();
    }

    /// <summary>The pointers and codes of the errors of a document.</summary>
    internal static string[] Errors(string id, string document)
    {
        using JsonDocument answer = JsonDocument.Parse(OperationCatalog.Run(id, document));
        return !answer.RootElement.TryGetProperty("errors", out JsonElement errors)
            ? []
            : [.. errors.EnumerateArray().Select(e => $"{e.GetProperty("pointer").GetString()} {e.GetProperty("code").GetString()}")];
    }

    internal static string Status(string answer)
    {
        using JsonDocument document = JsonDocument.Parse(answer);
        return document.RootElement.TryGetProperty("status", out JsonElement status) ? status.GetString()! : "errors";
    }
}
