using System.Text.Json;
using System.Text.Json.Nodes;
using ElectroRules.Internal;
using ElectroRules.Operations.Json;
using ElectroRules.Results;

namespace ElectroRules.Operations;

/// <summary>An operation that applies the rules of one edition to a request.</summary>
internal abstract class RuleOperation(string id, string summary) : Operation(id, summary)
{
    /// <summary>Reads a request once, to be answered under any rule set; null when something is wrong with it.</summary>
    internal abstract Func<RuleSet, Determination>? Read(JsonElement request, string pointer, RequestErrors errors);

    internal sealed override Action<Utf8JsonWriter>? Answer(
        RuleSet? given, RuleSource source, JsonElement request, string pointer, RequestErrors errors)
    {
        Func<RuleSet, Determination>? run = Read(request, pointer, errors);
        if (given is null || run is null)
        {
            return null;
        }

        Determination determination = run(given);
        return writer => DeterminationWriter.Write(writer, Id, determination, ResultType);
    }
}

/// <summary>An operation with its C# types.</summary>
internal sealed class RuleOperation<TRequest, TResult>(
    string id,
    string summary,
    Func<RuleSet, TRequest, Determination<TResult>> run,
    Action<TRequest, RequestCheck> check,
    Func<TRequest> example) : RuleOperation(id, summary)
    where TRequest : class
    where TResult : class
{
    public override Type RequestType => typeof(TRequest);

    public override Type ResultType => typeof(TResult);

    internal override JsonNode ExampleNode() => JsonSerializer.SerializeToNode(example(), OperationJson.Of(typeof(TRequest)))!;

    internal override Func<RuleSet, Determination>? Read(JsonElement request, string pointer, RequestErrors errors) =>
        RequestReader.Read(request, pointer, check, errors) is { } read ? rules => run(rules, read) : null;

    private protected override JsonNode RequestNode() => SchemaNodes.Of(typeof(TRequest));
}
