using Microsoft.CodeAnalysis.Text;

namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>Something in the source of a rule that a rule may not do.</summary>
internal sealed class Violation(string code, TextSpan span, string message)
{
    /// <summary>A name that is not on the list.</summary>
    public const string Name = "RULE001";

    /// <summary>A construct of the language that a rule may not use.</summary>
    public const string Construct = "RULE002";

    /// <summary>Something that would be kept from one part to the next.</summary>
    public const string State = "RULE003";

    /// <summary>A format that is not a plain one.</summary>
    public const string Format = "RULE004";

    /// <summary>The kind, one of the constants.</summary>
    public string Code { get; } = code;

    /// <summary>Where.</summary>
    public TextSpan Span { get; } = span;

    /// <summary>What is not allowed, why, and what to write instead.</summary>
    public string Message { get; } = message;
}
