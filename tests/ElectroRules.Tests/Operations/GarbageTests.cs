using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FsCheck.Xunit;
using ElectroRules.Operations;

namespace ElectroRules.Tests.Operations;

public class GarbageTests
{
    private static readonly string[] Scraps =
        ["null", "true", "-1", "0", "1e-300", "1e308", "1e999", "\"\"", "\"6 AWG\"", "\"\\udc00\"", "[]", "{}", "[null]", "{\"value\":1,\"unit\":\"A\"}", "{\"a\":1,\"a\":1}", "99999999999"];

    [Property(MaxTest = 200)]
    public void Any_text_is_answered_with_JSON(string? text)
    {
        foreach (Operation operation in OperationCatalog.All)
        {
            AssertAnswer(OperationCatalog.Run(operation.Id, text ?? string.Empty));
        }
    }

    [Property(MaxTest = 200)]
    public void Any_bytes_are_answered_with_JSON(byte[] bytes)
    {
        var output = new System.Buffers.ArrayBufferWriter<byte>();
        bool answered = OperationCatalog.Run("conductor.ampacity", bytes, output);
        Assert.False(answered);
        AssertAnswer(Encoding.UTF8.GetString(output.WrittenSpan));
    }

    [Property(MaxTest = 500)]
    public void An_example_with_scraps_in_it_is_answered_with_JSON(int which, int[] places, int scrap)
    {
        Operation operation = OperationCatalog.All[(int)((uint)which % OperationCatalog.All.Count)];
        JsonNode document = JsonNode.Parse(operation.ExampleRequest())!;
        string text = document.ToJsonString();
        foreach (int place in places ?? [])
        {
            // Replaces one value of the text: between a colon and the next comma or brace.
            int colon = text.IndexOf(':', (int)((uint)place % text.Length));
            int end = colon < 0 ? -1 : text.IndexOfAny([',', '}'], colon);
            if (end > 0)
            {
                text = string.Concat(text.AsSpan(0, colon + 1), Scraps[(int)((uint)(scrap + place) % Scraps.Length)], text.AsSpan(end));
            }
        }

        AssertAnswer(OperationCatalog.Run(operation.Id, text));
    }

    private static void AssertAnswer(string answer)
    {
        using JsonDocument document = JsonDocument.Parse(answer);
        Assert.True(document.RootElement.TryGetProperty("operation", out _));
        Assert.True(
            document.RootElement.TryGetProperty("status", out _)
            || (document.RootElement.TryGetProperty("errors", out JsonElement errors) && errors.GetArrayLength() > 0));
    }
}
