using System.Buffers;
using System.Text.Json;
using ElectroRules.Operations.Json;
using ElectroRules.Results;
using ElectroRules.Tables;

namespace ElectroRules.Operations;

/// <summary>Two answers to one request, with what differs between them and between the rules and tables that they used.</summary>
internal sealed class ComparedAnswers(RuleOperation operation, RuleSet firstRules, Determination first, RuleSet secondRules, Determination second)
{
    internal void Write(Utf8JsonWriter writer, string id)
    {
        writer.WriteStartObject();
        writer.WriteString("operation"u8, id);
        writer.WriteString("status"u8, ChoiceNames.Of(DeterminationStatus.Determined));
        writer.WriteStartObject("value"u8);
        writer.WriteString("operation"u8, operation.Id);
        writer.WriteStartArray("answers"u8);
        WriteAnswer(writer, first);
        WriteAnswer(writer, second);
        writer.WriteEndArray();
        WriteChanges(writer);
        WriteRuleDifferences(writer);
        writer.WriteEndObject();
        foreach (string none in (ReadOnlySpan<string>)["findings", "needs"])
        {
            writer.WriteStartArray(none);
            writer.WriteEndArray();
        }

        writer.WriteNull("notCovered"u8);
        writer.WriteStartArray("derivation"u8);
        writer.WriteEndArray();
        writer.WriteNull("stamp"u8);
        writer.WriteEndObject();
    }

    private void WriteAnswer(Utf8JsonWriter writer, Determination determination)
    {
        writer.WriteStartObject();
        DeterminationWriter.WriteAnswer(writer, determination, operation.ResultType, cited: true);
        DeterminationWriter.WriteStamp(writer, determination.Stamp);
        writer.WriteEndObject();
    }

    /// <summary>The places at which the answers differ. That every citation names its edition is no change.</summary>
    private void WriteChanges(Utf8JsonWriter writer)
    {
        using JsonDocument from = Plain(first);
        using JsonDocument to = Plain(second);
        writer.WriteStartArray("changes"u8);
        JsonDifferences.Write(writer, from.RootElement, to.RootElement, string.Empty);
        writer.WriteEndArray();
    }

    private JsonDocument Plain(Determination determination)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer))
        {
            writer.WriteStartObject();
            DeterminationWriter.WriteAnswer(writer, determination, operation.ResultType, cited: false);
            writer.WriteEndObject();
        }

        return JsonDocument.Parse(buffer.WrittenMemory);
    }

    private void WriteRuleDifferences(Utf8JsonWriter writer)
    {
        HashSet<string> used = new(StringComparer.Ordinal);
        AddUsed(used, first);
        AddUsed(used, second);
        writer.WriteStartArray("ruleDifferences"u8);
        foreach (RuleSetDifference difference in RuleSet.Diff(firstRules, secondRules))
        {
            if (!used.Contains(difference.Key))
            {
                continue;
            }

            writer.WriteStartObject();
            writer.WriteString("kind"u8, ChoiceNames.Of(difference.Kind));
            writer.WriteString("key"u8, difference.Key);
            writer.WriteString("row"u8, difference.Row);
            writer.WriteString("column"u8, difference.Column);
            writer.WriteString("from"u8, difference.From);
            writer.WriteString("to"u8, difference.To);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    /// <summary>Notes the codes of the rules and the keys of the tables that an answer rests on.</summary>
    private static void AddUsed(HashSet<string> used, Determination determination)
    {
        foreach (Step step in determination.Derivation)
        {
            used.Add(step.Rule.Code);
            if (step.Cell is { } cell)
            {
                used.Add(cell.Table);
            }
        }

        foreach (Finding finding in determination.Findings)
        {
            used.Add(finding.Rule.Code);
        }

        foreach (Need need in determination.Needs)
        {
            used.Add(need.Rule.Code);
        }

        if (determination.NotCovered is { } reason)
        {
            used.Add(reason.Rule.Code);
            used.Add(reason.Detail);
        }
    }
}
