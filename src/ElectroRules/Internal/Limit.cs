namespace ElectroRules.Internal;

/// <summary>The only place where a value is compared with a limit.</summary>
/// <remarks>Numbers within one part in 10^9 of each other count as equal: far below any real tolerance, far above rounding of doubles.</remarks>
internal static class Limit
{
    internal const double RelativeTolerance = 1e-9;

    /// <summary>Whether a value does not exceed a limit.</summary>
    internal static bool AtMost(double value, double limit) => value <= limit + Slack(limit);

    /// <summary>Whether a value is not below a limit.</summary>
    internal static bool AtLeast(double value, double limit) => value >= limit - Slack(limit);

    /// <summary>Whether a value exceeds a limit.</summary>
    internal static bool Above(double value, double limit) => !AtMost(value, limit);

    /// <summary>Whether a value is below a limit.</summary>
    internal static bool Below(double value, double limit) => !AtLeast(value, limit);

    /// <summary>Whether two values are the same.</summary>
    internal static bool Same(double a, double b) => AtMost(a, b) && AtLeast(a, b);

    private static double Slack(double limit) => Math.Abs(limit) * RelativeTolerance;
}
