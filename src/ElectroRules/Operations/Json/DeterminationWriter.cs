using System.Text.Json;
using ElectroRules.Results;

namespace ElectroRules.Operations.Json;

/// <summary>Writes determinations as JSON.</summary>
internal static class DeterminationWriter
{
    internal static void Write(Utf8JsonWriter writer, string operation, Determination determination, Type result)
    {
        writer.WriteStartObject();
        writer.WriteString("operation"u8, operation);
        WriteAnswer(writer, determination, result, cited: true);
        writer.WriteStartArray("derivation"u8);
        foreach (Step step in determination.Derivation)
        {
            WriteStep(writer, step);
        }

        writer.WriteEndArray();
        WriteAssumptions(writer, determination.Assumptions);
        WriteStamp(writer, determination.Stamp);
        writer.WriteEndObject();
    }

    private static void WriteAssumptions(Utf8JsonWriter writer, IReadOnlyList<Assumption> assumptions)
    {
        writer.WriteStartArray("assumptions"u8);
        foreach (Assumption assumption in assumptions)
        {
            writer.WriteStartObject();
            writer.WriteNumber("step"u8, assumption.Step);
            writer.WriteString("origin"u8, ChoiceNames.Of(assumption.Origin));
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }

    /// <summary>Writes the properties that say what the answer is, without those that say where it comes from.</summary>
    internal static void WriteAnswer(Utf8JsonWriter writer, Determination determination, Type result, bool cited)
    {
        writer.WriteString("status"u8, ChoiceNames.Of(determination.Status));
        writer.WritePropertyName("value"u8);
        if (determination.ValueOrNull is { } value)
        {
            JsonSerializer.Serialize(writer, value, OperationJson.Of(result));
        }
        else
        {
            writer.WriteNullValue();
        }

        writer.WriteStartArray("findings"u8);
        foreach (Finding finding in determination.Findings)
        {
            WriteFinding(writer, finding, cited);
        }

        writer.WriteEndArray();
        writer.WriteStartArray("needs"u8);
        foreach (Need need in determination.Needs)
        {
            writer.WriteStartObject();
            writer.WriteString("path"u8, need.Path);
            WriteRule(writer, need.Rule);
            WriteTexts(writer, "stillPossible"u8, need.StillPossible);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        WriteNotCovered(writer, determination.NotCovered);
    }

    internal static void WriteStamp(Utf8JsonWriter writer, Stamp stamp)
    {
        writer.WriteStartObject("stamp"u8);
        writer.WriteString("edition"u8, ChoiceNames.Of(stamp.Edition));
        WriteTexts(writer, "amendments"u8, stamp.Amendments);
        writer.WriteString("dataVersion"u8, stamp.DataVersion);
        writer.WriteString("libraryVersion"u8, stamp.LibraryVersion);
        writer.WriteEndObject();
    }

    private static void WriteNotCovered(Utf8JsonWriter writer, NotCoveredReason? reason)
    {
        if (reason is null)
        {
            writer.WriteNull("notCovered"u8);
            return;
        }

        writer.WriteStartObject("notCovered"u8);
        writer.WriteString("code"u8, reason.Code);
        WriteRule(writer, reason.Rule);
        writer.WriteString("detail"u8, reason.Detail);
        writer.WriteString("reason"u8, reason.Reason);
        writer.WriteEndObject();
    }

    private static void WriteFinding(Utf8JsonWriter writer, Finding finding, bool cited)
    {
        writer.WriteStartObject();
        WriteRule(writer, finding.Rule);
        writer.WriteString("code"u8, finding.Code);
        writer.WriteString("hazard"u8, ChoiceNames.Of(finding.Hazard));
        writer.WriteString("standing"u8, ChoiceNames.Of(finding.Standing));
        writer.WriteString("path"u8, finding.Path);
        WriteMeasure(writer, "measured"u8, finding.Measured);
        WriteMeasure(writer, "limit"u8, finding.Limit);
        writer.WriteString("remedy"u8, finding.Remedy);
        if (cited)
        {
            WriteCitation(writer, finding.Citation);
        }

        writer.WriteEndObject();
    }

    private static void WriteStep(Utf8JsonWriter writer, Step step)
    {
        writer.WriteStartObject();
        writer.WriteNumber("index"u8, step.Index);
        WriteRule(writer, step.Rule);
        writer.WriteString("name"u8, step.Name);
        writer.WriteString("operation"u8, ChoiceNames.Of(step.Operation));
        writer.WriteStartArray("inputs"u8);
        foreach (int input in step.Inputs)
        {
            writer.WriteNumberValue(input);
        }

        writer.WriteEndArray();
        OperationJson.WriteNumber(writer, "value"u8, step.Value);
        writer.WriteString("unit"u8, step.Unit.Code());
        WriteCell(writer, step.Cell);
        WriteSubject(writer, step.Subject);
        WriteCitation(writer, step.Citation);
        writer.WriteEndObject();
    }

    private static void WriteCell(Utf8JsonWriter writer, TableCell? cell)
    {
        if (cell is null)
        {
            writer.WriteNull("cell"u8);
            return;
        }

        writer.WriteStartObject("cell"u8);
        writer.WriteString("table"u8, cell.Table);
        writer.WriteString("row"u8, cell.Row);
        writer.WriteString("column"u8, cell.Column);
        writer.WriteEndObject();
    }

    private static void WriteSubject(Utf8JsonWriter writer, Subject? subject)
    {
        if (subject is null)
        {
            writer.WriteNull("subject"u8);
            return;
        }

        writer.WriteStartObject("subject"u8);
        writer.WriteString("conductorSize"u8, subject.ConductorSize);
        writer.WriteString("material"u8, subject.Material);
        if (subject.Item is { } item)
        {
            writer.WriteNumber("item"u8, item);
        }
        else
        {
            writer.WriteNull("item"u8);
        }

        writer.WriteEndObject();
    }

    private static void WriteCitation(Utf8JsonWriter writer, Citation citation)
    {
        writer.WriteStartObject("citation"u8);
        writer.WriteString("kind"u8, ChoiceNames.Of(citation.Kind));
        writer.WriteString("edition"u8, ChoiceNames.Of(citation.Edition));
        writer.WriteString("section"u8, citation.Section);
        writer.WriteString("confidence"u8, ChoiceNames.Of(citation.Confidence));
        writer.WriteString("amendment"u8, citation.Amendment);
        writer.WriteEndObject();
    }

    private static void WriteMeasure(Utf8JsonWriter writer, ReadOnlySpan<byte> name, Measure? measure)
    {
        if (measure is null)
        {
            writer.WriteNull(name);
            return;
        }

        writer.WriteStartObject(name);
        OperationJson.WriteNumber(writer, "value"u8, measure.Value);
        writer.WriteString("unit"u8, measure.Unit.Code());
        writer.WriteEndObject();
    }

    private static void WriteRule(Utf8JsonWriter writer, RuleId rule)
    {
        writer.WriteStartObject("rule"u8);
        writer.WriteString("code"u8, rule.Code);
        writer.WriteString("slug"u8, rule.Slug);
        writer.WriteEndObject();
    }

    private static void WriteTexts(Utf8JsonWriter writer, ReadOnlySpan<byte> name, IReadOnlyList<string> texts)
    {
        writer.WriteStartArray(name);
        foreach (string text in texts)
        {
            writer.WriteStringValue(text);
        }

        writer.WriteEndArray();
    }
}
