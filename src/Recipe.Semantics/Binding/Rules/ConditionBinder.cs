using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Binding;

/// <summary>
/// Binds the conditions of a rule. A condition is a fact or an expression in parentheses and its bounds; a word or yes and no; or things of a kind
/// with conditions of their own in a block.
/// </summary>
internal static class ConditionBinder
{
    private const string Example = "must every ply { areal-weight at-most 300 g/m2 }";

    /// <summary>The condition behind the first word of a line; null after the reason has been reported.</summary>
    /// <param name="entry">The line.</param>
    /// <param name="from">The first value that belongs to the condition; -1 when its head does.</param>
    /// <param name="scope">What words mean.</param>
    /// <param name="context">Where it stands.</param>
    public static RuleCondition? Bind(EntrySyntax entry, int from, RuleScope scope, LineContext context)
    {
        var values = new ConditionWords(entry, from, context);
        var where = context.At(entry.LineSpan);
        if (values.AtEnd)
        {
            context.Sink.Report(MissingValue.Create(context.At(entry.Head.Span), entry.Head.Text, "a condition", Example));
            return null;
        }

        switch (values.Word)
        {
            case "either" or "not":
                var either = values.Take() is WordSyntax { Text: "either" };
                return values.Done() && Block(entry, scope, context) is { } of ? either ? new RuleEither(of.Conditions, where) : new RuleNot(of.Conditions, where) : null;
            case { } word when RuleSchema.Quantifiers.FirstOrDefault(q => q.Word == word) is { Word: not null } quantifier:
                values.Take();
                return Quantified(entry, quantifier.Quantifier, values, scope, context);
            case { } word when scope.FindFact(word) is { Fact.IsNumeric: false } found:
                values.Take();
                return NoBlock(entry, context) ? OfWord(found.Fact, found.Level, values, where, context) : null;
            case { } word when scope.FindFact(word) is { } found && values.WordAfter is "known" or "unknown":
                values.Take();
                return NoBlock(entry, context) ? Known(found.Fact, found.Level, values, where) : null;
            default:
                return Comparison(entry, values, scope, where, context);
        }
    }

    /// <summary>A value of a rule: an expression, or a number taken of all things of a kind.</summary>
    public static (RuleExpression Expression, RuleType Type)? BindValue(EntrySyntax entry, ConditionWords values, RuleScope scope, LineContext context)
    {
        if (values.Word is not { } word || RuleSchema.Gatherings.FirstOrDefault(g => g.Word == word) is not { Word: not null } gathering || scope.FindFact(word) is not null)
        {
            return NoBlock(entry, context) ? RuleExpressionBinder.Bind(values.Take(), scope, context) : null;
        }

        var head = values.Take();
        if (Group(values, word, context) is not { } group)
        {
            return null;
        }

        if (scope.IsDeepest)
        {
            context.Sink.Report(NotUnderstood.NotHere(context.At(head.Span), $"`{word}`", "no more than three kinds of things stand inside each other"));
            return null;
        }

        var inside = scope.Within(group);
        (RuleExpression Expression, RuleType Type)? of = null;
        if (gathering.Gathering != RuleGathering.Count)
        {
            if (values.AtEnd)
            {
                context.Sink.Report(MissingValue.Create(context.At(head.Span), word, $"a fact of the {group.Word}", $"{word} {group.Word} {group.Facts.First(f => f.IsNumeric).Word}"));
                return null;
            }

            of = RuleExpressionBinder.Bind(values.Take(), inside, context);
            if (of is null)
            {
                return null;
            }

            if (gathering.Gathering == RuleGathering.Sum && of.Value.Type.IsTemperature)
            {
                context.Sink.Report(DimensionClash.Temperature(context.At(head.Span), word));
                return null;
            }
        }

        if ((entry.Block is null ? new Lines([], []) : Block(entry, inside, context)) is not { } lines)
        {
            return null;
        }

        return (
            new RuleGather(gathering.Gathering, group, of?.Expression, [.. lines.Among, .. lines.Conditions], context.At(entry.LineSpan)),
            of?.Type ?? new RuleType(Text.Units.Dimension.None, false, null));
    }

    private static RuleQuantified? Quantified(EntrySyntax entry, RuleQuantifier quantifier, ConditionWords values, RuleScope scope, LineContext context)
    {
        var word = RuleSchema.Quantifiers.First(q => q.Quantifier == quantifier).Word;
        if (Group(values, word, context) is not { } group || !values.Done())
        {
            return null;
        }

        if (scope.IsDeepest)
        {
            context.Sink.Report(NotUnderstood.NotHere(context.At(entry.Head.Span), $"`{word} {group.Word}`", "no more than three kinds of things stand inside each other"));
            return null;
        }

        if ((entry.Block is null ? new Lines([], []) : Block(entry, scope.Within(group), context)) is not { } lines)
        {
            return null;
        }

        if (quantifier == RuleQuantifier.Every && lines.Conditions.IsEmpty)
        {
            context.Sink.Report(MissingValue.Create(context.At(entry.Head.Span), $"every {group.Word}", "what each must keep, in a block", Example));
            return null;
        }

        return new RuleQuantified(quantifier, group, lines.Among, lines.Conditions, context.At(entry.LineSpan));
    }

    private static FactGroup? Group(ConditionWords values, string word, LineContext context)
    {
        var words = FactTable.Elements.Select(g => g.Word).ToArray();
        if (values.AtEnd)
        {
            context.Sink.Report(MissingValue.Create(values.End, word, "what it is of", $"{word} ply"));
            return null;
        }

        var value = values.Take();
        if (value is WordSyntax named && FactTable.Find(named.Text) is { } group)
        {
            return group;
        }

        context.Sink.Report(value is WordSyntax other
            ? NotUnderstood.Choice(context.At(other.Span), other.Text, word, words)
            : NotUnderstood.Shape(context.At(value.Span), word, Numbers.Or(words), $"{word} ply"));
        return null;
    }

    private static RuleCondition? OfWord(FactWord fact, int level, ConditionWords values, SourceSpan where, LineContext context)
    {
        if (values.Word is "known" or "unknown")
        {
            return Known(fact, level, values, where);
        }

        if (values.Word is not ("is" or "is-not"))
        {
            context.Sink.Report(MissingValue.Create(values.End, fact.Word, "`is` or `is-not`", fact.Kind == FactKind.YesNo ? $"{fact.Word} is yes" : $"{fact.Word} is standard-carbon"));
            return null;
        }

        var isNot = values.Take() is WordSyntax { Text: "is-not" };
        var first = values.Peek;
        var words = ImmutableArray.CreateBuilder<string>();
        while (!values.AtEnd)
        {
            var value = values.Take();
            if (value is WordSyntax or TextSyntax)
            {
                var word = value is WordSyntax plain ? plain.Text : ((TextSyntax)value).Text;
                words.Add(word);
                CheckWord(fact, word, context.At(value.Span), context);
            }
            else if (fact.Kind == FactKind.Text)
            {
                words.Add(context.At(value.Span).Text);
            }
            else
            {
                context.Sink.Report(NotUnderstood.Shape(context.At(value.Span), fact.Word, "words", $"{fact.Word} is standard-carbon"));
                return null;
            }
        }

        if (words.Count == 0)
        {
            context.Sink.Report(MissingValue.Create(values.End, fact.Word, "what it is", $"{fact.Word} is {(fact.Kind == FactKind.YesNo ? "yes" : "carbon")}"));
            return null;
        }

        if (fact.Kind != FactKind.YesNo)
        {
            return new RuleChoice(fact, level, words.ToImmutable(), isNot, where);
        }

        if (words is ["yes" or "no"])
        {
            return new RuleYesNo(fact, level, words[0] == "yes" != isNot, where);
        }

        var said = context.At(first!.Span.Union(values.Before.Span));
        context.Sink.Report(NotUnderstood.Choice(said, said.Text, fact.Word, ["yes", "no"]));
        return null;
    }

    // A word that can never be is a slip. The name of a material may stand in a file that this one does not use.
    private static void CheckWord(FactWord fact, string word, SourceSpan where, LineContext context)
    {
        if (!fact.Choices.IsEmpty && !fact.Choices.Contains(word, StringComparer.Ordinal))
        {
            context.Sink.Report(NotUnderstood.Choice(where, word, fact.Word, fact.Choices));
        }
        else if (fact.NamesMaterial && context.Scope.FindMaterial(word) is null)
        {
            context.Sink.Report(UnknownName.Create(where, word, "the name of a material", context.Scope.NamesOf(NameKind.Material)) with { Severity = Text.Findings.Severity.Warning });
        }
    }

    private static RuleKnown? Known(FactWord fact, int level, ConditionWords values, SourceSpan where)
    {
        var known = values.Take() is WordSyntax { Text: "known" };
        return values.Done() ? new RuleKnown(fact, level, known, where) : null;
    }

    private static RuleComparison? Comparison(EntrySyntax entry, ConditionWords values, RuleScope scope, SourceSpan where, LineContext context)
    {
        var first = values.Peek!;
        if (BindValue(entry, values, scope, context) is not { } subject)
        {
            return null;
        }

        var written = context.At(TextSpan.FromBounds(first.Span.Start, values.Before.Span.End)).Text;
        var bounds = ImmutableArray.CreateBuilder<RuleBound>();

        // A fact has a unit of its own; what is reckoned is told in that of its first bound.
        var unit = subject.Expression is RuleArithmetic ? null : subject.Type.Unit;
        while (!values.AtEnd)
        {
            if (values.Word is not { } word || RuleSchema.Relations.FirstOrDefault(r => r.Word == word) is not { Word: not null } relation)
            {
                var value = values.Take();
                context.Sink.Report(value is WordSyntax stray
                    ? NotUnderstood.Choice(context.At(stray.Span), stray.Text, written, [.. RuleSchema.Relations.Select(r => r.Word)])
                    : ExtraValue.Create(context.At(value.Span), context.At(value.Span).Text, written, $"{written} at-most ..."));
                return null;
            }

            values.Take();
            if (values.AtEnd)
            {
                context.Sink.Report(MissingValue.Create(values.End, word, "a value", $"{word} 300 g/m2"));
                return null;
            }

            var node = values.Take();
            if (RuleExpressionBinder.Bind(node, scope, context) is not { } bound)
            {
                return null;
            }

            values.SkipByWeight(node);
            if (bound.Type.Dimension != subject.Type.Dimension || bound.Type.IsTemperature != subject.Type.IsTemperature)
            {
                context.Sink.Report(WrongKindOfUnit.Create(context.At(node.Span), written, Numbers.A(subject.Type.Name), Units(subject.Type), context.At(node.Span).Text, bound.Type.Name));
                return null;
            }

            unit ??= bound.Type.Unit;
            bounds.Add(new RuleBound(relation.Relation, bound.Expression, context.At(node.Span).Text));
        }

        if (bounds.Count == 0)
        {
            context.Sink.Report(MissingValue.Create(values.End, written, "a bound, such as `at-least` and a value", Example));
            return null;
        }

        return new RuleComparison(subject.Expression, bounds.ToImmutable(), written, unit ?? subject.Type.Unit, where);
    }

    private static ImmutableArray<string> Units(RuleType type) => type.Unit is { } unit ? [unit.Symbol] : ["without a unit"];

    /// <summary>The conditions in the block of a line; null after the reason has been reported.</summary>
    private static Lines? Block(EntrySyntax entry, RuleScope scope, LineContext context)
    {
        if (entry.Block is not { } block)
        {
            context.Sink.Report(MissingValue.Create(context.At(entry.Head.Span), entry.Head.Text, "conditions, in a block", Example));
            return null;
        }

        var among = ImmutableArray.CreateBuilder<RuleCondition>();
        var conditions = ImmutableArray.CreateBuilder<RuleCondition>();
        var whole = true;
        foreach (var statement in block.Statements)
        {
            if (BlockReader.EntryOf(statement) is not { HalfRead: false } line)
            {
                whole = false;
                continue;
            }

            var isWhere = line.Entry.Head.Text == "where";
            var bound = Bind(line.Entry, isWhere || line.Entry.Head.Text == "keep" ? 0 : -1, scope, context);
            whole &= bound is not null;
            if (bound is not null)
            {
                (isWhere ? among : conditions).Add(bound);
            }
        }

        return whole ? new Lines(among.ToImmutable(), conditions.ToImmutable()) : null;
    }

    private static bool NoBlock(EntrySyntax entry, LineContext context)
    {
        if (entry.Block is { } block)
        {
            context.Sink.Report(NotUnderstood.NoBlock(context.At(block.OpenBrace), entry.Head.Text));
        }

        return entry.Block is null;
    }

    private sealed record Lines(ImmutableArray<RuleCondition> Among, ImmutableArray<RuleCondition> Conditions);
}
