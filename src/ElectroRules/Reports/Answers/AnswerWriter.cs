using ElectroRules.Conductors;
using ElectroRules.Internal;
using ElectroRules.Results;
using ElectroRules.Wording;
using UnitsNet;

namespace ElectroRules.Reports.Answers;

/// <summary>Gathers what an answer says. Labels come from the keys "answer.(result type).(label)".</summary>
internal sealed class AnswerWriter(WordingSet words, string name)
{
    private readonly List<LabelledValue> _pairs = [];
    private readonly List<ReportBlock> _more = [];

    internal WordingSet Words => words;

    internal void Add(string label, string value) => _pairs.Add(new LabelledValue(Label(label), value));

    internal void Add(string label, ElectricCurrent value) => Add(label, Text(value));

    internal void Add(string label, ElectricPotential value) =>
        Add(label, NumberWording.Write(words, Canonical.Volts(value), QuantityUnit.Volt));

    internal void Add(string label, Length value) => Add(label, NumberWording.Write(words, Canonical.Feet(value), QuantityUnit.Foot));

    internal void Add(string label, Temperature value) =>
        Add(label, NumberWording.Write(words, Canonical.Celsius(value), QuantityUnit.Celsius));

    internal void Add(string label, ConductorSize? value) => Add(label, value is { } size ? size.Label() : words.Text("word.none"));

    internal void AddPercent(string label, Ratio value) =>
        Add(label, NumberWording.Write(words, Canonical.Fraction(value), QuantityUnit.One, percent: true));

    internal void AddFactor(string label, Ratio value) => Add(label, Text(value));

    /// <summary>Says what limited the answer.</summary>
    internal void AddLimit(string key) => AddLimitText(words.Text(key));

    internal void AddLimitText(string text) => _pairs.Add(new LabelledValue(words.Text("report.limit"), text));

    internal void AddTable(IReadOnlyList<string> labels, IReadOnlyList<IReadOnlyList<string>> rows) =>
        _more.Add(new TableBlock([.. labels.Select(Label)], rows));

    internal void AddTo(List<ReportBlock> blocks)
    {
        blocks.Add(new PairsBlock(_pairs));
        blocks.AddRange(_more);
    }

    internal string Text(ElectricCurrent value) => NumberWording.Write(words, Canonical.Amperes(value), QuantityUnit.Ampere);

    internal string Text(Ratio value) => NumberWording.Write(words, Canonical.Fraction(value), QuantityUnit.One);

    internal string Own(string label) => Label(label);

    private string Label(string label) => words.Text("answer." + name + "." + label);
}
