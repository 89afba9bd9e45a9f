using System.Buffers;
using System.Text;
using ElectroRules.Operations;

// Answers JSON with JSON, for programs in any language. Exit code: 0 answered, 1 the document was bad, 2 wrong usage.
const string Usage = """
    operations   the ids of all operations, one a line
    schema ID    the JSON Schema of the document that an operation takes
    example ID   a document that can be run as it is
    run ID       reads one document, writes the determination or the errors
    batch ID     reads one document a line, writes one line for each
    """;

switch (args)
{
    case ["operations"]:
        foreach (Operation operation in OperationCatalog.All)
        {
            Console.WriteLine(operation.Id);
        }

        return 0;
    case ["schema", var id] when OperationCatalog.Find(id) is { } operation:
        Console.WriteLine(operation.RequestSchema());
        return 0;
    case ["example", var id] when OperationCatalog.Find(id) is { } operation:
        Console.WriteLine(operation.ExampleRequest());
        return 0;
    case ["run", var id]:
        return Run(id);
    case ["batch", var id]:
        Batch(id);
        return 0;
    default:
        Console.Error.WriteLine(Usage);
        return 2;
}

static int Run(string id)
{
    using var request = new MemoryStream();
    using Stream input = Console.OpenStandardInput();
    input.CopyTo(request);
    var answer = new ArrayBufferWriter<byte>();
    bool answered = OperationCatalog.Run(id, request.ToArray(), answer);
    using Stream output = Console.OpenStandardOutput();
    output.Write(answer.WrittenSpan);
    output.Write("\n"u8);
    return answered ? 0 : 1;
}

static void Batch(string id)
{
    var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
    using var requests = new StreamReader(Console.OpenStandardInput(), utf8);
    using var answers = new StreamWriter(Console.OpenStandardOutput(), utf8);
    OperationCatalog.RunBatch(id, requests, answers);
}
