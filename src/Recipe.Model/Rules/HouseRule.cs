using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Model;

/// <summary>A rule that a shop wrote down in the language: what every part must keep.</summary>
public sealed record HouseRule
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Where its name is declared.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>What is wrong when it is broken, in one short line.</summary>
    public required string Title { get; init; }

    /// <summary>Why it matters.</summary>
    public string? Reason { get; init; }

    /// <summary>What to do about it.</summary>
    public string? Remedy { get; init; }

    /// <summary>Where it comes from.</summary>
    public string? Source { get; init; }

    /// <summary>When it stays silent although it looks as if it should speak.</summary>
    public string? Exceptions { get; init; }

    /// <summary>How bad it is.</summary>
    public Severity Severity { get; init; } = Severity.Warning;

    /// <summary>Whether a written reason can silence it.</summary>
    public bool CanBeAccepted { get; init; } = true;

    /// <summary>Values that it gives a name to, in order; each may use those before it.</summary>
    public ImmutableArray<RuleFigure> Figures { get; init; } = [];

    /// <summary>The parts that it speaks of: those that keep all of these.</summary>
    public ImmutableArray<RuleCondition> When { get; init; } = [];

    /// <summary>What they must keep; each that is broken is a finding.</summary>
    public ImmutableArray<RuleCondition> Musts { get; init; } = [];

    /// <summary>What it says, or null for words of our own.</summary>
    public RuleMessage? Message { get; init; }

    /// <summary>What could be changed.</summary>
    public ImmutableArray<RuleFix> Fixes { get; init; } = [];

    /// <summary>Recipes that must earn it, and recipes that must not.</summary>
    public ImmutableArray<RuleExample> Examples { get; init; } = [];

    /// <summary>Whether all of it was understood. One that was not is not applied: half a rule says what nobody meant.</summary>
    public bool IsWhole { get; init; }
}

/// <summary>What a rule says: texts and values in turn.</summary>
/// <param name="Pieces">The pieces.</param>
public sealed record RuleMessage(ImmutableArray<RuleMessagePiece> Pieces);

/// <summary>A piece of a message: a text, or what is asked of the thing that the finding speaks of, or else of the part.</summary>
/// <param name="Text">The text; empty for a value.</param>
/// <param name="Word">The word of a fact or a figure; null for a text.</param>
/// <param name="Unit">The unit in which it is shown, or null for its usual one.</param>
public sealed record RuleMessagePiece(string Text, string? Word, Recipe.Text.Units.Unit? Unit);

/// <summary>A change that a rule offers.</summary>
/// <param name="Word">The fact whose written value is replaced, or the block that a line is added to.</param>
/// <param name="NewText">What is written.</param>
/// <param name="AddsLine">Whether a line is added at the end of a block; else a value is replaced.</param>
/// <param name="Where">The line.</param>
public sealed record RuleFix(string Word, string NewText, bool AddsLine, SourceSpan Where);

/// <summary>A recipe that tells what a rule means.</summary>
/// <param name="MustFire">Whether it must earn the rule, or must not.</param>
/// <param name="Inside">What stands between its braces.</param>
/// <param name="Where">The word before them.</param>
public sealed record RuleExample(bool MustFire, SourceSpan Inside, SourceSpan Where);
