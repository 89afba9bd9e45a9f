using System.Globalization;
using System.Text.Json.Nodes;
using ElectroRules.Operations;

namespace ElectroRules.Tests.Operations;

public class OperationBatchTests
{
    private const int Lines = 5000;

    [Fact]
    public void A_batch_keeps_the_order_and_goes_on_after_a_bad_line()
    {
        string[] lines = [.. Enumerable.Range(1, Lines).Select(Line)];
        using var answers = new StringWriter(CultureInfo.InvariantCulture);
        using var requests = new StringReader(string.Join('\n', lines));
        OperationCatalog.RunBatch("voltage-drop.compute", requests, answers);
        string[] written = answers.ToString().Split('\n');
        Assert.Equal(Lines + 1, written.Length);
        Assert.Empty(written[^1]);
        for (int i = 0; i < Lines; i += 7)
        {
            Assert.Equal(OperationCatalog.Run("voltage-drop.compute", lines[i]), written[i]);
        }
    }

    private static string Line(int number) => number % 10 == 0
        ? "{ bad"
        : OperationDocuments.With("voltage-drop.compute", d => d["request"]!["length"]!["value"] = JsonValue.Create(number));
}
