using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Values;
using Recipe.Syntax;
using Recipe.Text.Units;

namespace Recipe.Semantics.Binding;

/// <summary>
/// Binds an expression of a rule: names are found and dimensions fit, so that nothing but an unknown fact can go wrong when it is worked out. A
/// temperature and a difference of two are told apart, as <see cref="Evaluator"/> does it.
/// </summary>
internal static class RuleExpressionBinder
{
    /// <summary>The expression and what it is; null after the reason has been reported.</summary>
    public static (RuleExpression Expression, RuleType Type)? Bind(ValueSyntax node, RuleScope scope, LineContext context) => node switch
    {
        WordSyntax word => BindName(word, scope, context),
        ParenthesisSyntax { Unit: null } parenthesis => Bind(parenthesis.Inner, scope, context),
        NegateSyntax negate => BindNegation(negate, scope, context),
        BinarySyntax binary => BindBinary(binary, scope, context),
        _ => BindConstant(node, context),
    };

    private static (RuleExpression, RuleType)? BindConstant(ValueSyntax node, LineContext context) =>
        Evaluator.Evaluate(node, context) is { } value
            ? (new RuleConstant(value.Si, value.Currency, context.At(node.Span)), new RuleType(value.Dimension, value.IsAbsoluteTemperature, value.Unit))
            : null;

    private static (RuleExpression, RuleType)? BindName(WordSyntax word, RuleScope scope, LineContext context)
    {
        var where = context.At(word.Span);
        if (scope.FindFact(word.Text) is { } found)
        {
            if (found.Fact.IsNumeric)
            {
                return (new RuleFact(found.Fact, found.Level, where), new RuleType(found.Fact.Dimension, found.Fact.IsTemperature, found.Fact.Unit));
            }

            context.Sink.Report(NotUnderstood.NotHere(where, $"`{word.Text}` is no number, so it", $"compare it with `is`, as in `{Sample(found.Fact)}`"));
            return null;
        }

        if (scope.FindFigure(word.Text) is { } figure)
        {
            return (new RuleFigureUse(figure.Index, where), figure.Type);
        }

        if (context.Scope.FindLet(word.Text) is not null)
        {
            return BindConstant(word, context);
        }

        context.Sink.Report(UnknownName.Create(where, word.Text, $"a fact of the {scope.Groups[0].Word}", scope.Words.Concat(context.Scope.NamesOf(NameKind.Value))));
        return null;
    }

    private static (RuleExpression, RuleType)? BindNegation(NegateSyntax node, RuleScope scope, LineContext context)
    {
        if (Bind(node.Operand, scope, context) is not { } operand)
        {
            return null;
        }

        var where = context.At(node.Span);
        if (operand.Type.IsTemperature)
        {
            context.Sink.Report(DimensionClash.Temperature(where, "-"));
            return null;
        }

        return (new RuleArithmetic('*', new RuleConstant(-1, null, where), operand.Expression, where), operand.Type);
    }

    private static (RuleExpression, RuleType)? BindBinary(BinarySyntax node, RuleScope scope, LineContext context)
    {
        var left = Bind(node.Left, scope, context);
        var right = Bind(node.Right, scope, context);
        if (left is not { } l || right is not { } r)
        {
            return null;
        }

        var where = context.At(node.Span);
        var type = node.Operator is '+' or '-' ? Sum(node, l.Type, r.Type, context) : Product(node, l.Type, r.Type, context);
        return type is { } known ? (new RuleArithmetic(node.Operator, l.Expression, r.Expression, where), known) : null;
    }

    private static RuleType? Sum(BinarySyntax node, RuleType left, RuleType right, LineContext context)
    {
        var where = context.At(node.Span);
        if (left.Dimension != right.Dimension)
        {
            context.Sink.Report(DimensionClash.Create(where, node.Operator, context.At(node.Left.Span).Text, left.Name, context.At(node.Right.Span).Text, right.Name));
            return null;
        }

        var minus = node.Operator == '-';
        if (right.IsTemperature && !(minus && left.IsTemperature))
        {
            context.Sink.Report(DimensionClash.Temperature(where, node.Operator.ToString()));
            return null;
        }

        return left.IsTemperature && right.IsTemperature
            ? new RuleType(left.Dimension, false, UnitTable.Get("K"))
            : left with { Unit = left.Unit ?? right.Unit };
    }

    private static RuleType? Product(BinarySyntax node, RuleType left, RuleType right, LineContext context)
    {
        if (left.IsTemperature || right.IsTemperature)
        {
            context.Sink.Report(DimensionClash.Temperature(context.At(node.Span), node.Operator.ToString()));
            return null;
        }

        var dimension = node.Operator == '*' ? left.Dimension * right.Dimension : left.Dimension / right.Dimension;
        var unit = left.Unit is { } l && l.Dimension == dimension && dimension != Dimension.None ? l
            : right.Unit is { } r && node.Operator == '*' && r.Dimension == dimension && dimension != Dimension.None ? r
            : Together(node.Operator, left.Unit, right.Unit, dimension);
        return new RuleType(dimension, false, unit);
    }

    // `mass / area` in g/m2; what no two units say so is told in the first unit of its dimension, where there is one.
    private static Unit? Together(char sign, Unit? left, Unit? right, Dimension dimension)
    {
        if (dimension == Dimension.None)
        {
            return null;
        }

        var isPlain = sign == '/' && left is not null && right is not null && $"{left.Symbol}{right.Symbol}".AsSpan().IndexOfAny('/', '.') < 0;
        return isPlain && UnitTable.TryParse($"{left!.Symbol}/{right!.Symbol}", out var both) && both.Dimension == dimension
            ? both
            : UnitTable.All.FirstOrDefault(unit => unit.Dimension == dimension && unit is { Scale: UnitScale.Proportional, Currency: null });
    }

    private static string Sample(FactWord fact) => fact.Kind == FactKind.YesNo ? $"{fact.Word} is yes" : $"{fact.Word} is ...";
}
