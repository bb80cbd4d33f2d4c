using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Model;

/// <summary>Something that a house rule reckons with. It was checked when the rule was read: dimensions fit, names are known.</summary>
/// <param name="Where">Where it stands.</param>
public abstract record RuleExpression(SourceSpan Where);

/// <summary>A number that stands in the rule, or the value of a <c>let</c>.</summary>
/// <param name="Si">Its value in SI.</param>
/// <param name="Currency">ISO 4217 code when it is money.</param>
/// <param name="Where">Where it stands.</param>
public sealed record RuleConstant(double Si, string? Currency, SourceSpan Where) : RuleExpression(Where);

/// <summary>A fact that can be reckoned with.</summary>
/// <param name="Fact">The fact.</param>
/// <param name="Level">How many things further out it is asked of: 0 for the thing the line speaks of, 1 for the one round it, and so on out to the part.</param>
/// <param name="Where">Where it stands.</param>
public sealed record RuleFact(FactWord Fact, int Level, SourceSpan Where) : RuleExpression(Where);

/// <summary>A <c>figure</c> of the rule.</summary>
/// <param name="Index">Which of the rule's figures.</param>
/// <param name="Where">Where it stands.</param>
public sealed record RuleFigureUse(int Index, SourceSpan Where) : RuleExpression(Where);

/// <summary>Two expressions put together.</summary>
/// <param name="Operator">One of + - * /.</param>
/// <param name="Left">The left one.</param>
/// <param name="Right">The right one.</param>
/// <param name="Where">Where it stands.</param>
public sealed record RuleArithmetic(char Operator, RuleExpression Left, RuleExpression Right, SourceSpan Where) : RuleExpression(Where);

/// <summary>What is taken of all things of a kind.</summary>
public enum RuleGathering
{
    /// <summary>How many there are.</summary>
    Count,

    /// <summary>The sum of something over them; nought of none.</summary>
    Sum,

    /// <summary>The least; unknown of none.</summary>
    Least,

    /// <summary>The most; unknown of none.</summary>
    Most,
}

/// <summary>A number taken of all things of a kind that keep some conditions.</summary>
/// <param name="Gathering">What is taken.</param>
/// <param name="Group">Of what.</param>
/// <param name="Of">What is summed or compared; null for a count.</param>
/// <param name="Conditions">What they must keep to be counted.</param>
/// <param name="Where">Where it stands.</param>
public sealed record RuleGather(RuleGathering Gathering, FactGroup Group, RuleExpression? Of, ImmutableArray<RuleCondition> Conditions, SourceSpan Where) : RuleExpression(Where);

/// <summary>A value that a rule gives a name to.</summary>
/// <param name="Name">The name.</param>
/// <param name="Value">The value, asked of the part.</param>
/// <param name="Unit">The unit that messages show it in, or null.</param>
public sealed record RuleFigure(string Name, RuleExpression Value, Unit? Unit);
