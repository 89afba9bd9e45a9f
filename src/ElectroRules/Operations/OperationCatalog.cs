using System.Buffers;
using System.Text;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Internal;
using ElectroRules.Overcurrent;
using ElectroRules.Results;

namespace ElectroRules.Operations;

/// <summary>All operations, by id, with JSON in and out.</summary>
/// <remarks>
/// A document is <c>{"edition": "nec2023", "amendments": [], "request": {}}</c>; the amendments may be left out. The answer is a
/// determination, or <c>{"operation": "...", "errors": []}</c> with everything that is wrong with the document at once, each with a
/// JSON pointer and a code of <see cref="OperationErrorCode"/>. Nothing in a document makes a method throw.
/// </remarks>
public static class OperationCatalog
{
    /// <summary>All operations, in the order in which they are listed to people.</summary>
    /// <remarks>To add one: a line here, its two types in the serializer's context, an example; a prototype if a member has a default.</remarks>
    public static IReadOnlyList<Operation> All { get; } =
    [
        Of<AmpacityRequest, ConductorAmpacity>("conductor.ampacity", "The ampacity of a conductor where it lies.", Ampacity.Determine, static (r, c) => r.Check(c), OperationExamples.Ampacity),
        Of<SmallestConductorRequest, SmallestConductorResult>("conductor.smallest", "The smallest conductor for a load.", SmallestConductor.Determine, static (r, c) => r.Check(c), OperationExamples.Smallest),
        Of<ConductorLimitsRequest, ConductorLimitsResult>("conductor.limits-of-existing", "What a conductor that is there allows.", ConductorLimits.Determine, static (r, c) => r.Check(c), OperationExamples.ConductorLimits),
        Of<OvercurrentRequest, OvercurrentSelection>("overcurrent.select", "The overcurrent device of a load.", OvercurrentDevice.Select, static (r, c) => r.Check(c), OperationExamples.Overcurrent),
        Of<VoltageDropRequest, VoltageDropResult>("voltage-drop.compute", "The voltage drop of a run, and the longest run for a limit.", VoltageDrop.Compute, static (r, c) => r.Check(c), OperationExamples.VoltageDrop),
        Of<EquipmentGroundingRequest, EquipmentGroundingResult>("grounding.equipment-conductor", "The equipment grounding conductor of a circuit.", EquipmentGrounding.Size, static (r, c) => r.Check(c), OperationExamples.EquipmentGrounding),
        Of<BranchCircuitRequest, BranchCircuitDesign>("branch-circuit.design", "The branch circuit of one load.", BranchCircuit.Design, static (r, c) => r.Check(c), OperationExamples.BranchCircuit),
        new EditionComparison(),
    ];

    /// <summary>The operation with an id; null when there is none.</summary>
    public static Operation? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        foreach (Operation operation in All)
        {
            if (string.Equals(operation.Id, id, StringComparison.Ordinal))
            {
                return operation;
            }
        }

        return null;
    }

    /// <summary>Runs a document.</summary>
    /// <param name="id">The id of the operation.</param>
    /// <param name="requestJson">The document: edition, amendments and request.</param>
    /// <returns>The determination or the errors, as JSON on one line.</returns>
    public static string Run(string id, string requestJson)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(requestJson);
        return OperationBatch.RunLine(id, requestJson, new RuleSetCache());
    }

    /// <summary>Runs a document in UTF-8.</summary>
    /// <param name="id">The id of the operation.</param>
    /// <param name="utf8Json">The document: edition, amendments and request.</param>
    /// <param name="output">Takes the determination or the errors.</param>
    /// <returns>Whether there is a determination; if not, there are errors.</returns>
    public static bool Run(string id, ReadOnlyMemory<byte> utf8Json, IBufferWriter<byte> output)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(output);
        return OperationRunner.Run(id, utf8Json, new RuleSetCache(), output);
    }

    /// <summary>Runs a request under a rule set of the host.</summary>
    /// <param name="id">The id of the operation.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="requestJson">The request alone, without an edition around it.</param>
    /// <returns>The determination or the errors, as JSON on one line.</returns>
    public static string Run(string id, RuleSet rules, string requestJson)
    {
        ArgumentNullException.ThrowIfNull(requestJson);
        var output = new ArrayBufferWriter<byte>();
        Run(id, rules, Encoding.UTF8.GetBytes(requestJson), output);
        return Encoding.UTF8.GetString(output.WrittenSpan);
    }

    /// <summary>Runs a request in UTF-8 under a rule set of the host.</summary>
    /// <param name="id">The id of the operation.</param>
    /// <param name="rules">The rule set.</param>
    /// <param name="utf8Json">The request alone, without an edition around it.</param>
    /// <param name="output">Takes the determination or the errors.</param>
    /// <returns>Whether there is a determination; if not, there are errors.</returns>
    public static bool Run(string id, RuleSet rules, ReadOnlyMemory<byte> utf8Json, IBufferWriter<byte> output)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(output);
        return OperationRunner.Run(id, rules, utf8Json, output);
    }

    /// <summary>Runs many documents, one a line, on all cores; any number of lines in bounded memory.</summary>
    /// <param name="id">The id of the operation.</param>
    /// <param name="requests">The documents, each on one line.</param>
    /// <param name="answers">Takes one line for each line read, in the same order: the determination or the errors.</param>
    public static void RunBatch(string id, TextReader requests, TextWriter answers)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(requests);
        ArgumentNullException.ThrowIfNull(answers);
        OperationBatch.Run(id, requests, answers);
    }

    private static RuleOperation<TRequest, TResult> Of<TRequest, TResult>(
        string id,
        string summary,
        Func<RuleSet, TRequest, Determination<TResult>> run,
        Action<TRequest, RequestCheck> check,
        Func<TRequest> example)
        where TRequest : class
        where TResult : class => new(id, summary, run, check, example);
}
