using System.Globalization;
using System.Text.Json;
using System.Text.Unicode;

namespace ElectroRules.Operations.Json;

/// <summary>Parses a document so that nothing in it can throw later.</summary>
internal static class JsonText
{
    internal static JsonDocument? Parse(ReadOnlyMemory<byte> json, RequestErrors errors)
    {
        if (json.Span.StartsWith("\uFEFF"u8))
        {
            json = json[3..];
        }

        try
        {
            if (!Utf8.IsValid(json.Span))
            {
                throw new JsonException("The text is not UTF-8.", path: null, lineNumber: null, bytePositionInLine: null);
            }

            CheckTexts(json.Span);
            return JsonDocument.Parse(json, OperationJson.Document);
        }
        catch (JsonException e)
        {
            errors.Add(string.Empty, OperationErrorCode.NotJson, e.LineNumber is { } line
                ? string.Create(CultureInfo.InvariantCulture, $"The text is not JSON, or is nested more than {OperationJson.MaxDepth} deep: line {line + 1}, byte {e.BytePositionInLine + 1}.")
                : "The text is not JSON: it holds what is not Unicode.");
            return null;
        }
    }

    /// <summary>Finds escapes that are no characters, such as half a surrogate pair: the parser lets them pass and fails when they are read.</summary>
    private static void CheckTexts(ReadOnlySpan<byte> json)
    {
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = OperationJson.MaxDepth });
        while (reader.Read())
        {
            if (reader.TokenType is not (JsonTokenType.String or JsonTokenType.PropertyName) || !reader.ValueIsEscaped)
            {
                continue;
            }

            try
            {
                _ = reader.GetString();
            }
            catch (InvalidOperationException e)
            {
                throw new JsonException("The text is not Unicode.", e);
            }
        }
    }
}
