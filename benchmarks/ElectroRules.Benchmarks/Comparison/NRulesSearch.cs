using ElectroRules.Conductors;
using NRules;
using NRules.Fluent;
using NRules.Fluent.Dsl;

namespace ElectroRules.Benchmarks.Comparison;

/// <summary>The search in NRules: the sizes are facts, one rule offers every size that meets the query. The session is kept.</summary>
internal sealed class NRulesSearch
{
    private readonly ISession _session;

    internal NRulesSearch(SizeRow[] rows)
    {
        var repository = new RuleRepository();
        repository.Load(x => x.From(typeof(SizeMeetsQuery)));
        _session = repository.Compile().CreateSession();
        _session.InsertAll(rows);
    }

    internal ConductorSize? Smallest(SearchQuery query)
    {
        var question = new Question(query);
        _session.Insert(question);
        _session.Fire();
        _session.Retract(question);
        return question.Smallest;
    }
}

/// <summary>A query as a fact, with the answer so far.</summary>
public sealed class Question(SearchQuery query)
{
    public SearchQuery Query { get; } = query;

    public ConductorSize? Smallest { get; private set; }

    public void Offer(ConductorSize size)
    {
        if (Smallest is not { } smallest || size < smallest)
        {
            Smallest = size;
        }
    }
}

/// <summary>Offers every size that meets a query.</summary>
/// <remarks>Not nested: NRules leaves nested rules out.</remarks>
public sealed class SizeMeetsQuery : Rule
{
    public override void Define()
    {
        Question question = null!;
        SizeRow row = null!;
        When()
            .Match<Question>(() => question)
            .Match<SizeRow>(() => row, r => r.Material == question.Query.Material, r => r.Meets(question.Query));
        Then().Do(_ => question.Offer(row.Size));
    }
}
