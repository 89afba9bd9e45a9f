using System.Buffers;
using System.Text;
using BenchmarkDotNet.Attributes;
using ElectroRules.Operations;

namespace ElectroRules.Benchmarks;

/// <summary>The design of a branch circuit from JSON to JSON: one request, and a batch of a thousand lines on all cores.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class JsonOperations
{
    private const string Id = "branch-circuit.design";
    private const int LinesOfBatch = 1000;
    private readonly ArrayBufferWriter<byte> _output = new(1 << 16);
    private byte[] _request = [];
    private string _lines = string.Empty;

    [GlobalSetup]
    public void MakeRequests()
    {
        string request = OperationCatalog.Find(Id)!.ExampleRequest().ReplaceLineEndings(" ");
        _request = Encoding.UTF8.GetBytes(request);
        _lines = string.Concat(Enumerable.Repeat(request + "\n", LinesOfBatch));
        if (!OperationCatalog.Run(Id, _request, _output))
        {
            throw new InvalidOperationException(Encoding.UTF8.GetString(_output.WrittenSpan));
        }
    }

    [Benchmark]
    public int JsonRoundTrip()
    {
        _output.ResetWrittenCount();
        OperationCatalog.Run(Id, _request, _output);
        return _output.WrittenCount;
    }

    [Benchmark(OperationsPerInvoke = LinesOfBatch)]
    public int JsonBatchPerLine()
    {
        using var requests = new StringReader(_lines);
        using var answers = new StringWriter();
        OperationCatalog.RunBatch(Id, requests, answers);
        return answers.GetStringBuilder().Length;
    }
}
