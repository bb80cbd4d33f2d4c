using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Values;
using Recipe.Syntax;

namespace Recipe.Semantics.Binding;

/// <summary>Works out named values.</summary>
internal static class LetBinder
{
    /// <summary>Named values that wait for each other in a longer row than this are refused, so that no text can exhaust the stack.</summary>
    private const int LongestChain = 200;

    public static Bound<NamedValue?> Bind(LetDeclaration let)
    {
        var sink = new FindingSink();
        var context = let.Context with { Sink = sink };
        sink.Use(NameKind.Value, let.Name, let.Where, let.Where);
        if (!IsSafe(let, context))
        {
            return new(null, sink.Findings, sink.Names);
        }

        if (let.Expression is TextSyntax or DateSyntax or RatioSyntax or PlusMinusSyntax or RangeSyntax or ToleranceSyntax)
        {
            sink.Report(NotUnderstood.Shape(context.At(let.Expression.Span), "let", "one number or quantity", "let lap = 20 mm"));
            return new(null, sink.Findings, sink.Names);
        }

        var value = Evaluator.Evaluate(let.Expression, context);
        var written = let.Expression switch
        {
            QuantitySyntax or CompoundSyntax or SignedSyntax or PairSyntax => context.Source.Slice(let.Expression.Span),
            WordSyntax word => context.Scope.FindLet(word.Text)?.Value?.Written,
            _ => null,
        };
        return new(value is { } v ? new NamedValue(v, written) : null, sink.Findings, sink.Names);
    }

    /// <summary>
    /// Whether the value can be worked out: it is not on a circle, and the names below it are not too deep. Found by walking the
    /// text, so that the answer does not depend on who asked first.
    /// </summary>
    private static bool IsSafe(LetDeclaration let, LineContext context)
    {
        var depths = new Dictionary<LetDeclaration, int>();
        var path = new List<LetDeclaration> { let };
        var pending = new Stack<(LetDeclaration From, IEnumerator<LetDeclaration> Next)>();
        pending.Push((let, Needs(let).GetEnumerator()));
        depths[let] = 0;
        var safe = true;
        while (pending.TryPeek(out var top))
        {
            if (!top.Next.MoveNext())
            {
                pending.Pop();
                path.RemoveAt(path.Count - 1);
                continue;
            }

            var needed = top.Next.Current;
            if (ReferenceEquals(needed, let))
            {
                context.Sink.Report(ValueCycle.Create(let.Where, let.Name, [.. path.Skip(1).Select(l => l.Name)]));
                return false;
            }

            if (path.Contains(needed))
            {
                // A circle further down: reported there, and this value has none either.
                safe = false;
                continue;
            }

            if (path.Count >= LongestChain)
            {
                context.Sink.Report(NotUnderstood.NotHere(let.Where, $"A row of more than {LongestChain} named values", "give one of them a figure"));
                return false;
            }

            if (depths.TryAdd(needed, path.Count))
            {
                path.Add(needed);
                pending.Push((needed, Needs(needed).GetEnumerator()));
            }
        }

        return safe;
    }

    private static IEnumerable<LetDeclaration> Needs(LetDeclaration let) =>
        Words(let.Expression).Select(w => let.Context.Scope.FindLet(w)).OfType<LetDeclaration>();

    private static IEnumerable<string> Words(ValueSyntax value)
    {
        var pending = new Stack<ValueSyntax>();
        pending.Push(value);
        while (pending.TryPop(out var node))
        {
            switch (node)
            {
                case WordSyntax word:
                    yield return word.Text;
                    break;
                case BinarySyntax binary:
                    pending.Push(binary.Right);
                    pending.Push(binary.Left);
                    break;
                case ParenthesisSyntax parenthesis:
                    pending.Push(parenthesis.Inner);
                    break;
                case NegateSyntax negate:
                    pending.Push(negate.Operand);
                    break;
            }
        }
    }
}
