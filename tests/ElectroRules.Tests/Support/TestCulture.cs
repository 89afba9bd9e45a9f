using System.Globalization;
using System.Runtime.CompilerServices;

namespace ElectroRules.Tests.Support;

/// <summary>Puts the whole test assembly under a culture that writes numbers, dates and signs in its own way.</summary>
internal static class TestCulture
{
    internal static IReadOnlyList<string> Names { get; } = ["de-DE", "tr-TR", "ar-SA"];

#pragma warning disable CA2255 // A test assembly is loaded like a program.
    [ModuleInitializer]
#pragma warning restore CA2255
    internal static void Initialize()
    {
        // The whole suite runs under ar-SA; the build also runs it under the others by naming them here.
        CultureInfo culture = CultureInfo.GetCultureInfo(Environment.GetEnvironmentVariable("ELECTRORULES_TEST_CULTURE") ?? "ar-SA");
        CultureInfo.DefaultThreadCurrentCulture = culture;
        CultureInfo.DefaultThreadCurrentUICulture = culture;
        CultureInfo.CurrentCulture = culture;
        CultureInfo.CurrentUICulture = culture;
    }

    /// <summary>Runs something under a culture and puts the old one back.</summary>
    internal static T Under<T>(string name, Func<T> body)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo beforeUi = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentCulture = name.Length == 0 ? CultureInfo.InvariantCulture : CultureInfo.GetCultureInfo(name);
            CultureInfo.CurrentUICulture = CultureInfo.CurrentCulture;
            return body();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.CurrentUICulture = beforeUi;
        }
    }
}

/// <summary>The cultures that a theory runs under.</summary>
public sealed class Cultures : TheoryData<string>
{
    /// <summary>All of them.</summary>
    public Cultures()
    {
        foreach (string name in TestCulture.Names)
        {
            Add(name);
        }
    }
}

/// <summary>The editions whose tables are verified.</summary>
public sealed class VerifiedEditions : TheoryData<EditionId>
{
    /// <summary>All of them.</summary>
    public VerifiedEditions()
    {
        foreach (EditionId edition in List)
        {
            Add(edition);
        }
    }

    internal static IReadOnlyList<EditionId> List { get; } =
        [EditionId.Nec2014, EditionId.Nec2017, EditionId.Nec2020, EditionId.Nec2023];
}
