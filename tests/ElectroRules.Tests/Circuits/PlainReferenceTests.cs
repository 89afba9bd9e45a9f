using ElectroRules.Circuits;
using ElectroRules.Conductors;
using ElectroRules.Results;

namespace ElectroRules.Tests.Circuits;

public sealed class PlainReferenceTests
{
    private const int Blocks = 8;
    private const int PerBlock = 1500;

    public static TheoryData<int> Starts => [.. Enumerable.Range(0, Blocks)];

    [Theory]
    [MemberData(nameof(Starts))]
    public void A_design_is_what_the_plain_reference_says(int block)
    {
        int answered = 0;
        List<string> wrong = [];
        for (int seed = block * PerBlock; seed < (block + 1) * PerBlock; seed++)
        {
            BranchCircuitRequest request = RandomRequests.Next(seed);
            EditionId edition = RandomRequests.Edition(seed);
            (double Device, int Size, int Ground)? expected = new PlainReference(edition, request).Answer();
            if (expected is { } answer && !HasImpedance(answer.Size))
            {
                // A size without an impedance in the table has a test of its own.
                continue;
            }

            Determination<BranchCircuitDesign> found = BranchCircuit.Design(RuleSet.For(edition), request);
            Assert.NotEqual(DeterminationStatus.NeedsInput, found.Status);
            (double, int, int)? actual = found.TryGetValue(out BranchCircuitDesign? design)
                ? (design.Device.Rating.Amperes, (int)design.Conductors.Size, (int)design.EquipmentGround.Size)
                : null;
            answered += actual is null ? 0 : 1;
            if (actual != expected)
            {
                wrong.Add($"{seed} {edition}: expected {expected}, was {actual} {Sample.Describe(found)}");
            }
        }

        Assert.True(wrong.Count == 0, $"{wrong.Count} differ:\n{string.Join('\n', wrong.Take(20))}");
        Assert.True(answered > PerBlock / 3, $"Only {answered} requests had an answer.");
    }

    private static bool HasImpedance(int size) =>
        !double.IsNaN(PlainTable.Of("conductor.reactance", EditionId.Nec2023).At(((ConductorSize)size).Label(), "steel"));
}
