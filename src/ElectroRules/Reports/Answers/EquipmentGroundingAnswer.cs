using ElectroRules.Conductors;
using ElectroRules.Grounding;
using ElectroRules.Wording;

namespace ElectroRules.Reports.Answers;

internal static class EquipmentGroundingAnswer
{
    internal static void Write(EquipmentGroundingResult answer, AnswerWriter writer)
    {
        string material = writer.Words.Text(MaterialKey(answer.Material));
        writer.Add(nameof(answer.Size), writer.Words.Fill("subject.conductor", ("size", answer.Size.Label()), ("material", material)));
        if (answer.HeldToCircuitConductors)
        {
            writer.AddLimit("answer.EquipmentGroundingResult.held");
        }

        writer.Add(nameof(answer.TableSize), answer.TableSize);
        writer.AddFactor(nameof(answer.Increase), answer.Increase);
    }

    internal static string MaterialKey(ConductorMaterial material) => material switch
    {
        ConductorMaterial.Copper => "material.copper",
        ConductorMaterial.Aluminum => "material.aluminum",
        _ => "material.copperCladAluminum",
    };
}
