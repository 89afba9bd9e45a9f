using System.Globalization;
using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Wording;

namespace ElectroRules.Reports.Answers;

internal static class BranchCircuitAnswer
{
    internal static void Write(BranchCircuitDesign answer, AnswerWriter writer)
    {
        WordingSet words = writer.Words;
        writer.Add(nameof(answer.Device), words.Fill(
            "answer.BranchCircuitDesign.deviceText",
            ("rating", writer.Text(answer.Device.Rating)),
            ("poles", answer.Device.Poles.ToString(CultureInfo.InvariantCulture)),
            ("kind", words.Text("deviceKind." + answer.Device.Kind.ToString()))));
        writer.Add(nameof(answer.DeviceLimit), Limit(words, answer.DeviceLimit));
        writer.Add(nameof(answer.Conductors), words.Fill(
            "answer.BranchCircuitDesign.conductorsText",
            ("count", answer.Conductors.Count.ToString(CultureInfo.InvariantCulture)),
            ("conductor", Conductor(words, answer.Conductors.Size, answer.Conductors.Material))));
        writer.Add("conductorLimit", Limit(words, answer.Conductors.Limit));
        writer.Add(nameof(answer.Conductors.Method), Method(words, answer.Conductors.Method));
        writer.Add(nameof(answer.Conductors.Ampacity), answer.Conductors.Ampacity);
        writer.Add(nameof(answer.Neutral), Neutral(words, answer.Neutral));
        writer.Add(nameof(answer.EquipmentGround), Conductor(words, answer.EquipmentGround.Size, answer.EquipmentGround.Material));
        writer.Add("groundLimit", Limit(words, answer.EquipmentGround.Limit));
        if (answer.Cable is { } cable)
        {
            string ground = answer.EquipmentGround.InCable is { } inCable ? inCable.Label() : words.Text("answer.BranchCircuitDesign.groundUnknown");
            writer.Add(nameof(answer.Cable), words.Fill("answer.BranchCircuitDesign.cableText", ("size", cable.TradeSize), ("ground", ground)));
        }

        writer.Add(nameof(answer.SupplyVoltage), answer.SupplyVoltage);
        writer.Add(nameof(answer.LoadCurrent), answer.LoadCurrent);
        writer.Add(nameof(answer.Continuous), words.Text(answer.Continuous ? "word.yes" : "word.no"));
        writer.Add(nameof(answer.Required), answer.Required);
        writer.Add(nameof(answer.LargestDevice), answer.LargestDevice);
        writer.AddPercent(nameof(answer.Drop), answer.Drop.Share);
        writer.Add(nameof(answer.Drop.VoltageAtLoad), answer.Drop.VoltageAtLoad);
        writer.Add(nameof(answer.ReserveAtDevice), answer.ReserveAtDevice);
        writer.Add(nameof(answer.ReserveOfConductors), answer.ReserveOfConductors);
        Alternatives(answer.Alternatives, writer);
    }

    private static void Alternatives(IReadOnlyList<AlternativeCircuit> alternatives, AnswerWriter writer)
    {
        if (alternatives.Count == 0)
        {
            return;
        }

        WordingSet words = writer.Words;
        writer.AddTable(
            ["alternative", "alternativeMetal", "alternativeSize"],
            [.. alternatives.Select(a => (IReadOnlyList<string>)
            [
                Method(words, a.Method),
                Material(words, a.Material),
                a.Size is { } size ? size.Label() : WhyNot(words, a.WhyNot ?? string.Empty),
            ]),]);
    }

    private static string WhyNot(WordingSet words, string code)
    {
        foreach (string key in words.Keys)
        {
            if (key.StartsWith("finding.", StringComparison.Ordinal) && key.EndsWith("." + code, StringComparison.Ordinal))
            {
                return words.Text(key);
            }
        }

        string own = "whyNot." + code;
        return words.Text(words.Has(own) ? own : "notCovered." + code);
    }

    private static string Neutral(WordingSet words, NeutralChoice neutral) => neutral.Size is { } size
        ? words.Fill(neutral.Spare ? "answer.BranchCircuitDesign.neutralSpare" : "answer.BranchCircuitDesign.neutralText", ("size", size.Label()))
        : words.Text("word.none");

    private static string Conductor(WordingSet words, ConductorSize size, ConductorMaterial material) =>
        words.Fill("subject.conductor", ("size", size.Label()), ("material", Material(words, material)));

    private static string Material(WordingSet words, ConductorMaterial material) => words.Text(EquipmentGroundingAnswer.MaterialKey(material));

    private static string Method(WordingSet words, WiringMethod method) => words.Text("method." + method.ToString());

    private static string Limit(WordingSet words, DesignLimit limit) => words.Text("designLimit." + limit.ToString());
}
