using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Syntax;
using Recipe.Text.Units;

namespace Recipe.Semantics.Values;

/// <summary>
/// Works out arithmetic with units. A temperature (<c>20 degC</c>) and a difference (<c>5 K</c>) are told apart: the sum of two
/// temperatures means nothing, their difference does (NIST SP 811, section 8.5).
/// </summary>
internal static class Evaluator
{
    /// <summary>The value, or null when it has none; then the reason has been reported.</summary>
    public static Value? Evaluate(ValueSyntax node, LineContext context)
    {
        switch (node)
        {
            case QuantitySyntax q:
                return Finite(Value.Of(q.Number, q.Unit), q, context);
            case CompoundSyntax c:
                return EvaluateCompound(c, context);
            case SignedSyntax s:
                return Evaluate(s.Quantity, context) is { } unsigned ? Signed(unsigned, s) : null;
            case PairSyntax p:
                return EvaluateFraction(p, context);
            case ParenthesisSyntax p:
                return EvaluateParenthesis(p, context);
            case NegateSyntax n:
                return EvaluateNegation(n, context);
            case BinarySyntax b:
                return EvaluateBinary(b, context);
            case WordSyntax w:
                return EvaluateName(w, context);
            default:
                context.Sink.Report(NotUnderstood.NotANumber(context.At(node.Span)));
                return null;
        }
    }

    /// <summary>The value of a number that borrows the unit of its neighbour: the low end of a range.</summary>
    public static Value? EvaluateWithUnit(ValueSyntax node, Unit? borrowed, LineContext context)
    {
        var lone = node switch
        {
            QuantitySyntax { Unit: null } q => q.Number,
            SignedSyntax { Quantity.Unit: null } s => s.Negative ? -s.Quantity.Number : s.Quantity.Number,
            _ => (double?)null,
        };
        return lone is { } number && borrowed is not null
            ? Finite(Value.Of(number, borrowed), node, context)
            : Evaluate(node, context);
    }

    /// <summary>The tolerance behind <c>+/-</c>: a temperature scale stands for a difference there.</summary>
    public static Value? EvaluateTolerance(ValueSyntax node, LineContext context)
    {
        var value = Evaluate(node, context);
        return value is { IsAbsoluteTemperature: true, Unit: { } unit } v
            ? v with { Si = unit.DifferenceToSi(unit.FromSi(v.Si)), IsAbsoluteTemperature = false }
            : value;
    }

    private static Value Signed(Value value, SignedSyntax s)
    {
        if (!s.Negative)
        {
            return value;
        }

        // -5 degC is five below the zero of its scale, not the opposite of 278 K.
        return value is { IsAbsoluteTemperature: true, Unit: { } unit }
            ? value with { Si = unit.ToSi(-s.Quantity.Number) }
            : value with { Si = -value.Si };
    }

    private static Value? EvaluateCompound(CompoundSyntax compound, LineContext context)
    {
        var first = Value.Of(compound.Parts[0].Number, compound.Parts[0].Unit);
        if (first.IsAbsoluteTemperature)
        {
            context.Sink.Report(NotUnderstood.NotANumber(context.At(compound.Span)));
            return null;
        }

        var si = 0.0;
        foreach (var part in compound.Parts)
        {
            si += part.Unit?.ToSi(part.Number) ?? part.Number;
        }

        return Finite(first with { Si = si }, compound, context);
    }

    private static Value? EvaluateFraction(PairSyntax pair, LineContext context)
    {
        if (pair.Right == 0)
        {
            context.Sink.Report(OutOfRange.DividedByZero(context.At(pair.Span)));
            return null;
        }

        return Finite(Value.Of(pair.Left / pair.Right, pair.Unit), pair, context);
    }

    private static Value? EvaluateParenthesis(ParenthesisSyntax node, LineContext context)
    {
        var inner = Evaluate(node.Inner, context);
        if (inner is not { } value || node.Unit is null)
        {
            return inner;
        }

        if (!value.IsBare)
        {
            context.Sink.Report(DimensionClash.UnitTwice(context.At(node.Span), Describe(value), node.Unit.Symbol));
            return null;
        }

        return Finite(Value.Of(value.Si, node.Unit), node, context);
    }

    private static Value? EvaluateNegation(NegateSyntax node, LineContext context)
    {
        var value = Evaluate(node.Operand, context);
        if (value is { IsAbsoluteTemperature: true })
        {
            context.Sink.Report(DimensionClash.Temperature(context.At(node.Span), "-"));
            return null;
        }

        return value is { } v ? v with { Si = -v.Si } : null;
    }

    /// <summary>Long sums lean to the left: the spine is walked in a loop, so that no text can exhaust the stack.</summary>
    private static Value? EvaluateBinary(BinarySyntax node, LineContext context)
    {
        var spine = new Stack<BinarySyntax>();
        ValueSyntax leftmost = node;
        while (leftmost is BinarySyntax inner)
        {
            spine.Push(inner);
            leftmost = inner.Left;
        }

        var left = Evaluate(leftmost, context);
        while (spine.TryPop(out var step))
        {
            var right = Evaluate(step.Right, context);
            left = left is { } l && right is { } r ? Combine(step, l, r, context) : null;
        }

        return left;
    }

    private static Value? Combine(BinarySyntax node, Value left, Value right, LineContext context)
    {
        var where = context.At(node.Span);
        if (node.Operator is '+' or '-')
        {
            return Add(node, left, right, context);
        }

        if (left.IsAbsoluteTemperature || right.IsAbsoluteTemperature)
        {
            context.Sink.Report(DimensionClash.Temperature(where, node.Operator.ToString()));
            return null;
        }

        if (node.Operator == '/' && right.Si == 0)
        {
            context.Sink.Report(OutOfRange.DividedByZero(where));
            return null;
        }

        if (left.Currency is { } ours && right.Currency is { } theirs && ours != theirs)
        {
            context.Sink.Report(DimensionClash.Create(where, node.Operator, Describe(left), ours, Describe(right), theirs));
            return null;
        }

        var product = node.Operator == '*';
        var dimension = product ? left.Dimension * right.Dimension : left.Dimension / right.Dimension;
        return Finite(
            new Value(product ? left.Si * right.Si : left.Si / right.Si, dimension)
            {
                // `2 * lap` is shown in lap's unit; `45 % * 80 g` in grams; a plain ratio of two lengths has none.
                Unit = left.Unit is { } l && l.Dimension == dimension && !(product && right.Unit is not null) ? left.Unit
                    : right.Unit is { } r && r.Dimension == dimension && product ? right.Unit : null,
                Currency = dimension.Money == 0 ? null : left.Currency ?? right.Currency,
            },
            node,
            context);
    }

    private static Value? Add(BinarySyntax node, Value left, Value right, LineContext context)
    {
        var where = context.At(node.Span);
        if (left.Dimension != right.Dimension)
        {
            context.Sink.Report(DimensionClash.Create(where, node.Operator, Describe(left), left.Dimension.Name, Describe(right), right.Dimension.Name));
            return null;
        }

        if (left.Currency != right.Currency)
        {
            context.Sink.Report(DimensionClash.Create(where, node.Operator, Describe(left), left.Currency ?? "no money", Describe(right), right.Currency ?? "no money"));
            return null;
        }

        var minus = node.Operator == '-';
        if (right.IsAbsoluteTemperature && !(minus && left.IsAbsoluteTemperature))
        {
            context.Sink.Report(DimensionClash.Temperature(where, node.Operator.ToString()));
            return null;
        }

        var si = minus ? left.Si - right.Si : left.Si + right.Si;
        var isDifference = left.IsAbsoluteTemperature && right.IsAbsoluteTemperature;
        return Finite(
            left with
            {
                Si = si,
                IsAbsoluteTemperature = left.IsAbsoluteTemperature && !isDifference,
                Unit = isDifference ? UnitTable.Get("K") : left.Unit ?? right.Unit,
            },
            node,
            context);
    }

    private static Value? EvaluateName(WordSyntax word, LineContext context)
    {
        var where = context.At(word.Span);
        var declaration = context.Scope.FindLet(word.Text);
        context.Sink.Use(NameKind.Value, word.Text, where, declaration?.Where);
        if (declaration is null)
        {
            context.Sink.Report(UnknownName.Create(where, word.Text, "a named value", context.Scope.NamesOf(NameKind.Value)));
            return null;
        }

        return declaration.Value?.Value;
    }

    private static Value? Finite(Value value, ValueSyntax node, LineContext context)
    {
        if (double.IsFinite(value.Si))
        {
            return value;
        }

        context.Sink.Report(OutOfRange.TooLarge(context.At(node.Span)));
        return null;
    }

    private static string Describe(Value value) => Numbers.Format(value, []);
}
