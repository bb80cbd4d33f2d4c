using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.Model;

/// <summary>Something that is so or not, or cannot be told because a fact is unknown.</summary>
/// <param name="Where">The line that says it.</param>
public abstract record RuleCondition(SourceSpan Where);

/// <summary>How a number is held against another.</summary>
public enum RuleRelation
{
    /// <summary>No less.</summary>
    AtLeast,

    /// <summary>No more.</summary>
    AtMost,

    /// <summary>More.</summary>
    Above,

    /// <summary>Less.</summary>
    Below,

    /// <summary>The same, to ten digits.</summary>
    Same,
}

/// <summary>One bound of a comparison.</summary>
/// <param name="Relation">How.</param>
/// <param name="Value">Against what.</param>
/// <param name="Written">That, as the author wrote it.</param>
public sealed record RuleBound(RuleRelation Relation, RuleExpression Value, string Written);

/// <summary>A number is held against one or more bounds.</summary>
/// <param name="Subject">The number.</param>
/// <param name="Bounds">The bounds; all of them have to be kept.</param>
/// <param name="Written">The number, as the author wrote it.</param>
/// <param name="Unit">The unit that messages show it in, or null.</param>
/// <param name="Where">The line.</param>
public sealed record RuleComparison(RuleExpression Subject, ImmutableArray<RuleBound> Bounds, string Written, Recipe.Text.Units.Unit? Unit, SourceSpan Where) : RuleCondition(Where);

/// <summary>A word or text is one of some, or none of them.</summary>
/// <param name="Fact">The fact.</param>
/// <param name="Level">Where it is asked, as of <see cref="RuleFact"/>.</param>
/// <param name="Words">The words.</param>
/// <param name="IsNot">Whether it must be none of them.</param>
/// <param name="Where">The line.</param>
public sealed record RuleChoice(FactWord Fact, int Level, ImmutableArray<string> Words, bool IsNot, SourceSpan Where) : RuleCondition(Where);

/// <summary>Something is yes, or no.</summary>
/// <param name="Fact">The fact.</param>
/// <param name="Level">Where it is asked, as of <see cref="RuleFact"/>.</param>
/// <param name="Wanted">What it must be.</param>
/// <param name="Where">The line.</param>
public sealed record RuleYesNo(FactWord Fact, int Level, bool Wanted, SourceSpan Where) : RuleCondition(Where);

/// <summary>Something is known, or is not.</summary>
/// <param name="Fact">The fact.</param>
/// <param name="Level">Where it is asked, as of <see cref="RuleFact"/>.</param>
/// <param name="Wanted">Whether it must be known.</param>
/// <param name="Where">The line.</param>
public sealed record RuleKnown(FactWord Fact, int Level, bool Wanted, SourceSpan Where) : RuleCondition(Where);

/// <summary>How many things of a kind must keep conditions.</summary>
public enum RuleQuantifier
{
    /// <summary>One at least.</summary>
    Any,

    /// <summary>All of them; true of none.</summary>
    Every,

    /// <summary>None.</summary>
    No,
}

/// <summary>Things of a kind keep conditions.</summary>
/// <param name="Quantifier">How many.</param>
/// <param name="Group">Of what kind.</param>
/// <param name="Among">What picks the things that are spoken of; empty for all of the kind.</param>
/// <param name="Conditions">What they must keep.</param>
/// <param name="Where">The line.</param>
public sealed record RuleQuantified(RuleQuantifier Quantifier, FactGroup Group, ImmutableArray<RuleCondition> Among, ImmutableArray<RuleCondition> Conditions, SourceSpan Where) : RuleCondition(Where);

/// <summary>One of some conditions at least is kept.</summary>
/// <param name="Conditions">The conditions.</param>
/// <param name="Where">The line.</param>
public sealed record RuleEither(ImmutableArray<RuleCondition> Conditions, SourceSpan Where) : RuleCondition(Where);

/// <summary>Not all of some conditions are kept.</summary>
/// <param name="Conditions">The conditions.</param>
/// <param name="Where">The line.</param>
public sealed record RuleNot(ImmutableArray<RuleCondition> Conditions, SourceSpan Where) : RuleCondition(Where);
