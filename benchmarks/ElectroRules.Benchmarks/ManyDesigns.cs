using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;
using ElectroRules.Circuits;
using ElectroRules.Results;

namespace ElectroRules.Benchmarks;

/// <summary>A million designs on all cores, of loads and lengths that differ. The requests are made beforehand.</summary>
[MemoryDiagnoser]
[SimpleJob(RunStrategy.Monitoring, iterationCount: 3, warmupCount: 1)]
public class ManyDesigns
{
    private const int Designs = 1_000_000;
    private const int Loads = 64;
    private const int Lengths = 64;
    private readonly RuleSet _rules = Inputs.Rules;
    private readonly BranchCircuitRequest[] _requests = new BranchCircuitRequest[Loads * Lengths];

    /// <summary>Loads from 1.5 kW to 12.6 kW, and runs from 20 ft to 209 ft with most of the way from 20 °C to 50 °C.</summary>
    [GlobalSetup]
    public void MakeRequests()
    {
        for (int i = 0; i < _requests.Length; i++)
        {
            int load = i % Loads;
            int length = i / Loads;
            _requests[i] = Inputs.Circuit(
                1.5 + (load * 0.175), Inputs.Stretch(10 + length, 25), Inputs.Stretch(10 + (2 * length), 20 + (length % 31)));
            if (BranchCircuit.Design(_rules, _requests[i]).Status != DeterminationStatus.Determined)
            {
                throw new InvalidOperationException($"Request {i} has no answer.");
            }
        }
    }

    [Benchmark]
    public long MillionDesigns()
    {
        long sizes = 0;
        Parallel.For(
            0,
            Designs,
            static () => 0L,
            (i, _, sum) => sum + (long)BranchCircuit.Design(_rules, _requests[i % _requests.Length]).Value.Conductors.Size,
            sum => Interlocked.Add(ref sizes, sum));
        return sizes;
    }
}
