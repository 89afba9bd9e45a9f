namespace ElectroRules.Results;

/// <summary>Where a fact that an answer rests on comes from.</summary>
public enum AssumptionOrigin
{
    /// <summary>The caller gave it: measured, or read off a nameplate or a drawing.</summary>
    Given = 1,

    /// <summary>The caller did not know it, and the code itself sets what to take then.</summary>
    CodeDefault,

    /// <summary>Common practice of the trade; no published source.</summary>
    CommonPractice,
}

/// <summary>A fact that an answer rests on, and that would change it if it were otherwise.</summary>
/// <param name="Step">The step of the derivation that holds it.</param>
/// <param name="Origin">Where it comes from.</param>
public sealed record Assumption(int Step, AssumptionOrigin Origin);
