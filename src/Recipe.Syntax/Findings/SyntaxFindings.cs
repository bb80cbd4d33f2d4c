using System.Collections.Immutable;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>The kinds of trouble a text can have before anybody asks what it means.</summary>
public static class SyntaxFindings
{
    /// <summary>All of them, in order of code.</summary>
    public static ImmutableArray<FindingDescriptor> All { get; } =
    [
        DecimalComma.Descriptor,
        UnclosedText.Descriptor,
        BadCharacter.Descriptor,
        UnknownDate.Descriptor,
        NestedTooDeep.Descriptor,
        UnclosedBlock.Descriptor,
        StrayBrace.Descriptor,
        UnreadableLine.Descriptor,
        UnclearNumber.Descriptor,
        NumberOutOfRange.Descriptor,
        LeadingPoint.Descriptor,
        UnknownEscape.Descriptor,
        BraceOnOwnLine.Descriptor,
        HeadlessBlock.Descriptor,
        LineWithoutWord.Descriptor,
        UnclosedParenthesis.Descriptor,
        BareArithmetic.Descriptor,
        IncompleteLet.Descriptor,
        EqualsWithoutLet.Descriptor,
        UnfinishedValue.Descriptor,
        EntryAfterBlock.Descriptor,
        StrayParenthesis.Descriptor,
        PlusMinusWithoutSlash.Descriptor,
        InchMark.Descriptor,
        DateOrder.Descriptor,
        MoneySign.Descriptor,
        NotUtf8.Descriptor,
    ];
}
