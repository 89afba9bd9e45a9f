using ElectroRules.Results;

namespace ElectroRules.Tests.Support;

/// <summary>Takes determinations apart: every answer that a test takes is replayed on the way.</summary>
internal static class Answer
{
    internal static T Of<T>(RuleSet rules, Determination<T> determination)
        where T : class
    {
        Assert.True(
            determination.Status == DeterminationStatus.Determined,
            $"{determination.Status}: {string.Join(", ", determination.Needs.Select(n => n.Path))} {determination.NotCovered}");
        Assert.Empty(determination.Needs);
        Assert.Null(determination.NotCovered);
        Assert.Same(determination.Value, determination.ValueOrNull);
        DerivationReplay.Verify(rules, determination);
        return determination.Value;
    }

    internal static string[] Needs(Determination determination)
    {
        Assert.Equal(DeterminationStatus.NeedsInput, determination.Status);
        Assert.Null(determination.ValueOrNull);
        Assert.Null(determination.NotCovered);
        return [.. determination.Needs.Select(n => n.Path)];
    }

    internal static NotCoveredReason NotCovered(Determination determination)
    {
        Assert.Equal(DeterminationStatus.NotCovered, determination.Status);
        Assert.Null(determination.ValueOrNull);
        Assert.Empty(determination.Needs);
        return determination.NotCovered!;
    }

    /// <summary>Checks that something is not permitted, and returns the finding that says so.</summary>
    internal static Finding Refused(Determination determination, string code)
    {
        NotCoveredReason reason = NotCovered(determination);
        Assert.Equal("not-permitted", reason.Code);
        Assert.Equal(code, reason.Reason);
        Finding finding = Assert.Single(determination.Findings, f => f.Code == code);
        Assert.Equal(CodeStanding.Violation, finding.Standing);
        Assert.Equal(reason.Detail, finding.Path);
        return finding;
    }

    internal static double Step(Determination determination, string name) =>
        Assert.Single(determination.Derivation, s => s.Name == name).Value;

    internal static double StepOf(Determination determination, string slug, string name) =>
        Assert.Single(determination.Derivation, s => s.Name == name && s.Rule.Slug == slug).Value;
}
