using ElectroRules.Results;

namespace ElectroRules.Reports.Answers;

/// <summary>Writes one kind of answer as labels and values.</summary>
internal interface IAnswer
{
    /// <summary>The name of the result type; part of the keys of the words.</summary>
    string Name { get; }

    bool Handles(Determination determination);

    void Write(object value, AnswerWriter writer);
}

/// <summary>Writes the answer of one result type.</summary>
internal sealed class Answer<T>(string name, Action<T, AnswerWriter> write) : IAnswer
    where T : class
{
    public string Name => name;

    public bool Handles(Determination determination) => determination is Determination<T>;

    public void Write(object value, AnswerWriter writer) => write((T)value, writer);
}
