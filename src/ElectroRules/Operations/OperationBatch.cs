using System.Buffers;
using System.Text;

namespace ElectroRules.Operations;

/// <summary>Runs one request a line: a chunk of lines at a time on all cores, the answers written in the order of the lines.</summary>
internal static class OperationBatch
{
    private const int LinesOfChunk = 1024;

    internal static void Run(string id, TextReader requests, TextWriter answers)
    {
        var cache = new RuleSetCache();
        var lines = new List<string>(LinesOfChunk);
        string[] results = new string[LinesOfChunk];
        while (Fill(requests, lines))
        {
            Parallel.For(0, lines.Count, i => results[i] = RunLine(id, lines[i], cache));
            for (int i = 0; i < lines.Count; i++)
            {
                answers.Write(results[i]);
                answers.Write('\n');
            }
        }

        answers.Flush();
    }

    internal static string RunLine(string id, string line, RuleSetCache cache)
    {
        var output = new ArrayBufferWriter<byte>();
        OperationRunner.Run(id, Encoding.UTF8.GetBytes(line), cache, output);
        return Encoding.UTF8.GetString(output.WrittenSpan);
    }

    private static bool Fill(TextReader requests, List<string> lines)
    {
        lines.Clear();
        while (lines.Count < LinesOfChunk && requests.ReadLine() is { } line)
        {
            lines.Add(line);
        }

        return lines.Count > 0;
    }
}
