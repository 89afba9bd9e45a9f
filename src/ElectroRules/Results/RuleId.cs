namespace ElectroRules.Results;

/// <summary>The permanent name of a rule. Sections move between editions; the id of a rule never does.</summary>
public sealed class RuleId
{
    internal RuleId(string code, string slug, int index)
    {
        Code = code;
        Slug = slug;
        Index = index;
    }

    /// <summary>The code, for example "ER2010". Never reused and never renumbered.</summary>
    public string Code { get; }

    /// <summary>The readable name, for example "overcurrent.continuous-load".</summary>
    public string Slug { get; }

    internal int Index { get; }

    /// <inheritdoc />
    public override string ToString() => Code;
}
