using Microsoft.Extensions.DependencyInjection;

namespace ElectroRules.Tests.Operations;

public class DependencyInjectionTests
{
    [Fact]
    public void The_first_rule_set_stands()
    {
        using ServiceProvider services = new ServiceCollection()
            .AddElectroRules(RuleSet.For(EditionId.Nec2023))
            .AddElectroRules(RuleSet.For(EditionId.Nec2014))
            .BuildServiceProvider();
        Assert.Same(RuleSet.For(EditionId.Nec2023), services.GetRequiredService<RuleSet>());
    }

    [Fact]
    public void Rule_sets_are_kept_by_key()
    {
        using ServiceProvider services = new ServiceCollection()
            .AddElectroRules("springfield", RuleSet.For(EditionId.Nec2017))
            .AddElectroRules("shelbyville", RuleSet.For(EditionId.Nec2020))
            .BuildServiceProvider();
        Assert.Equal(EditionId.Nec2017, services.GetRequiredKeyedService<RuleSet>("springfield").Edition);
        Assert.Equal(EditionId.Nec2020, services.GetRequiredKeyedService<RuleSet>("shelbyville").Edition);
        Assert.Null(services.GetService<RuleSet>());
    }
}
