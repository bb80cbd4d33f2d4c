namespace Recipe.RuleApi;

/// <summary>
/// A rule of the shop. A file <c>*.rule.cs</c> holds one or more classes that derive from it, each with a constructor without
/// parameters. The same facts always give the same findings: a rule knows nothing but the facts it is given, and keeps nothing.
/// A new instance examines each part.
/// </summary>
public abstract class HouseRule
{
    /// <summary>Its name in kebab case, the same in no other rule: <c>carbon-cure-warm</c>.</summary>
    public abstract string Name { get; }

    /// <summary>What is wrong, in one short line without numbers.</summary>
    public abstract string Title { get; }

    /// <summary>Why it matters at the bench, in one sentence.</summary>
    public abstract string Reason { get; }

    /// <summary>What to do about it, in one sentence.</summary>
    public abstract string Remedy { get; }

    /// <summary>Where the rule comes from: a handbook with its page, a trial of the shop's own, common practice.</summary>
    public virtual string Source => "a rule of this shop";

    /// <summary>How bad a finding is when the finding itself does not say.</summary>
    public virtual RuleSeverity Severity => RuleSeverity.Warning;

    /// <summary>When the rule stays silent although it looks as if it should speak; empty when there is no such case.</summary>
    public virtual string Exceptions => "";

    /// <summary>A recipe that earns exactly one finding of this rule; empty when none is given.</summary>
    public virtual string BadExample => "";

    /// <summary>The same recipe done right; empty when none is given.</summary>
    public virtual string GoodExample => "";

    /// <summary>Whether the rule has anything to say about a part; it is asked first.</summary>
    /// <param name="part">The part.</param>
    public virtual bool AppliesTo(PartFacts part) => true;

    /// <summary>Looks at a part and reports what it finds.</summary>
    /// <param name="part">The part.</param>
    /// <param name="report">Takes the findings.</param>
    public abstract void Examine(PartFacts part, RuleReport report);
}
