using ElectroRules;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace Microsoft.Extensions.DependencyInjection;

/// <summary>Gives rule sets to a host's services.</summary>
public static class ElectroRulesServiceCollectionExtensions
{
    /// <summary>Adds a rule set as a singleton, unless one is there.</summary>
    /// <param name="services">The services.</param>
    /// <param name="ruleSet">The rule set: an edition, with its amendments if any. Nothing picks an edition by itself.</param>
    /// <returns>The services.</returns>
    public static IServiceCollection AddElectroRules(this IServiceCollection services, RuleSet ruleSet)
    {
        ArgumentNullException.ThrowIfNull(services);
        ArgumentNullException.ThrowIfNull(ruleSet);
        services.TryAddSingleton(ruleSet);
        return services;
    }

    /// <summary>Adds a rule set as a singleton under a key, such as the name of a city, unless one is there under that key.</summary>
    /// <param name="services">The services.</param>
    /// <param name="key">The key.</param>
    /// <param name="ruleSet">The rule set.</param>
    /// <returns>The services.</returns>
    public static IServiceCollection AddElectroRules(this IServiceCollection services, string key, RuleSet ruleSet)
    {
        ArgumentNullException.ThrowIfNull(services);
        ArgumentNullException.ThrowIfNull(key);
        ArgumentNullException.ThrowIfNull(ruleSet);
        services.TryAddKeyedSingleton(key, ruleSet);
        return services;
    }
}
