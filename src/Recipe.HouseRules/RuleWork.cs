using Recipe.Model;

namespace Recipe.HouseRules;

/// <summary>
/// Works a rule out on one part. It always ends: things of a kind are walked once for each condition, at most four deep, and after so many steps
/// the rule is left open, and says so.
/// </summary>
internal sealed class RuleWork
{
    /// <summary>Steps that one rule may take on one part.</summary>
    public const int MostSteps = 2_000_000;

    private readonly HouseRule _rule;
    private readonly FactNode _part;
    private readonly RuleNumber?[] _figures;
    private int _steps;

    public RuleWork(HouseRule rule, FactNode part)
    {
        (_rule, _part) = (rule, part);
        _figures = new RuleNumber?[rule.Figures.Length];
    }

    /// <summary>Whether the rule took too many steps; all it says from then on is unknown.</summary>
    public bool IsExhausted => _steps > MostSteps;

    /// <summary>The part, asked by itself.</summary>
    public FactNode[] AtPart => [_part];

    /// <summary>All of several conditions: no as soon as one is broken.</summary>
    public RuleTruth All(IEnumerable<RuleCondition> conditions, FactNode[] at)
    {
        var all = RuleTruth.Yes;
        foreach (var condition in conditions)
        {
            all = all.And(Of(condition, at));
            if (all.Answer == false)
            {
                return all;
            }
        }

        return all;
    }

    /// <summary>Whether a condition is kept by a thing.</summary>
    /// <param name="condition">The condition.</param>
    /// <param name="at">The thing, then what is round it, out to the part.</param>
    public RuleTruth Of(RuleCondition condition, FactNode[] at)
    {
        if (++_steps > MostSteps)
        {
            return RuleTruth.Unknown("an answer: it takes more steps than a rule may");
        }

        switch (condition)
        {
            case RuleComparison comparison:
                return Compare(comparison, at);
            case RuleChoice choice:
                return at[choice.Level].Find(choice.Fact.Word) is { Word: { } word } said
                    ? RuleTruth.Of(Is(choice.Words, word) != choice.IsNot, said)
                    : Missing(choice.Fact, at[choice.Level]);
            case RuleYesNo yesNo:
                return at[yesNo.Level].Find(yesNo.Fact.Word) is { Yes: { } yes } answer
                    ? RuleTruth.Of(yes == yesNo.Wanted, answer)
                    : Missing(yesNo.Fact, at[yesNo.Level]);
            case RuleKnown known:
                return RuleTruth.Of(at[known.Level].Find(known.Fact.Word) is not null == known.Wanted);
            case RuleEither either:
                return either.Conditions.Aggregate(RuleTruth.No, (any, one) => any.Answer == true ? any : any.Or(Of(one, at)));
            case RuleNot not:
                return All(not.Conditions, at).Not();
            case RuleQuantified quantified:
                return Quantify(quantified, at);
            default:
                throw new ArgumentOutOfRangeException(nameof(condition), condition, "No such condition.");
        }
    }

    /// <summary>The things that a condition speaks of, each with what it keeps.</summary>
    public IEnumerable<(FactNode Thing, RuleTruth Kept)> Each(RuleQuantified quantified, FactNode[] at)
    {
        foreach (var thing in _part.All(quantified.Group))
        {
            if (IsExhausted)
            {
                yield break;
            }

            FactNode[] inside = [thing, .. at];
            var among = All(quantified.Among, inside);
            if (among.Answer != false)
            {
                var kept = All(quantified.Conditions, inside);
                yield return (thing, quantified.Quantifier == RuleQuantifier.Every ? among.Not().Or(kept) : among.And(kept));
            }
        }
    }

    /// <summary>The value of an expression; null when a fact of it is unknown, which <paramref name="missing"/> then says.</summary>
    public RuleNumber? Value(RuleExpression expression, FactNode[] at, out string? missing)
    {
        missing = null;
        _steps++;
        switch (expression)
        {
            case RuleConstant constant:
                return new RuleNumber(constant.Si, constant.Currency, Grounds.None);
            case RuleFact fact:
                if (at[fact.Level].Find(fact.Fact.Word) is { } known && double.IsFinite(known.Si))
                {
                    return new RuleNumber(known.Si, known.Currency, Grounds.Of(known)) { Where = known.Where };
                }

                missing = NameOf(fact.Fact, at[fact.Level]);
                return null;
            case RuleFigureUse use:
                return Figure(use.Index, out missing);
            case RuleArithmetic arithmetic:
                return Reckon(arithmetic, at, out missing);
            case RuleGather gather:
                return Gather(gather, at, out missing);
            default:
                throw new ArgumentOutOfRangeException(nameof(expression), expression, "No such expression.");
        }
    }

    /// <summary>A figure of the rule.</summary>
    public RuleNumber? Figure(int index, out string? missing)
    {
        missing = null;
        return _figures[index] ??= Value(_rule.Figures[index].Value, AtPart, out missing);
    }

    private RuleTruth Compare(RuleComparison comparison, FactNode[] at)
    {
        if (Value(comparison.Subject, at, out var missing) is not { } subject)
        {
            return RuleTruth.Unknown(missing);
        }

        var all = RuleTruth.Yes;
        foreach (var bound in comparison.Bounds)
        {
            if (Value(bound.Value, at, out missing) is not { } value)
            {
                all = all.And(RuleTruth.Unknown(missing));
            }
            else if (subject.Currency is { } ours && value.Currency is { } theirs && ours != theirs)
            {
                all = all.And(RuleTruth.Unknown(InOtherMoney(ours, theirs)));
            }
            else
            {
                all = all.And(new RuleTruth(Holds(bound.Relation, subject.Si, value.Si), null, subject.Grounds.And(value.Grounds)));
            }
        }

        return all;
    }

    // To ten digits, so that sums that were added up in another order are the same.
    private static bool Holds(RuleRelation relation, double left, double right)
    {
        var same = Math.Abs(left - right) <= 1e-10 * Math.Max(Math.Abs(left), Math.Abs(right));
        return relation switch
        {
            RuleRelation.AtLeast => same || left > right,
            RuleRelation.AtMost => same || left < right,
            RuleRelation.Above => !same && left > right,
            RuleRelation.Below => !same && left < right,
            _ => same,
        };
    }

    private RuleTruth Quantify(RuleQuantified quantified, FactNode[] at)
    {
        var every = quantified.Quantifier == RuleQuantifier.Every;
        var all = every ? RuleTruth.Yes : RuleTruth.No;
        foreach (var (_, kept) in Each(quantified, at))
        {
            all = every ? all.And(kept) : all.Or(kept);
            if (all.Answer == !every)
            {
                break;
            }
        }

        if (IsExhausted)
        {
            return RuleTruth.Unknown("an answer: it takes more steps than a rule may");
        }

        return quantified.Quantifier == RuleQuantifier.No ? all.Not() : all;
    }

    private RuleNumber? Gather(RuleGather gather, FactNode[] at, out string? missing)
    {
        missing = null;
        var grounds = Grounds.None;
        var (count, sum, least, most) = (0, 0.0, double.PositiveInfinity, double.NegativeInfinity);
        string? currency = null;
        foreach (var thing in _part.All(gather.Group))
        {
            FactNode[] inside = [thing, .. at];
            var kept = All(gather.Conditions, inside);
            if (IsExhausted || kept.Answer is null)
            {
                missing = kept.Missing ?? "an answer: it takes more steps than a rule may";
                return null;
            }

            grounds = grounds.And(kept.Grounds);
            if (kept.Answer == false)
            {
                continue;
            }

            count++;
            if (gather.Of is { } of)
            {
                if (Value(of, inside, out missing) is not { } value)
                {
                    return null;
                }

                (sum, least, most, currency) = (sum + value.Si, Math.Min(least, value.Si), Math.Max(most, value.Si), value.Currency ?? currency);
                grounds = grounds.And(value.Grounds);
            }
        }

        var si = gather.Gathering switch
        {
            RuleGathering.Count => count,
            RuleGathering.Sum => sum,
            RuleGathering.Least => least,
            _ => most,
        };
        if (double.IsFinite(si))
        {
            return new RuleNumber(si, currency, grounds);
        }

        missing = $"a {gather.Group.Word} to ask";
        return null;
    }

    private RuleNumber? Reckon(RuleArithmetic arithmetic, FactNode[] at, out string? missing)
    {
        if (Value(arithmetic.Left, at, out missing) is not { } left || Value(arithmetic.Right, at, out missing) is not { } right)
        {
            return null;
        }

        if (left.Currency is { } ours && right.Currency is { } theirs && ours != theirs)
        {
            missing = InOtherMoney(ours, theirs);
            return null;
        }

        // Money for each sum of money is a plain number.
        var currency = arithmetic.Operator == '/' && right.Currency is not null ? null : left.Currency ?? right.Currency;
        var si = arithmetic.Operator switch
        {
            '+' => left.Si + right.Si,
            '-' => left.Si - right.Si,
            '*' => left.Si * right.Si,
            _ => left.Si / right.Si,
        };
        if (double.IsFinite(si))
        {
            return new RuleNumber(si, currency, left.Grounds.And(right.Grounds));
        }

        missing = $"a number: {arithmetic.Where.Text} divides by nought, or is too large";
        return null;
    }

    private static string InOtherMoney(string ours, string theirs) => $"what it comes to in {theirs}: its prices are in {ours}";

    private static RuleTruth Missing(FactWord fact, FactNode at) => RuleTruth.Unknown(NameOf(fact, at));

    private static string NameOf(FactWord fact, FactNode at) =>
        at.Group == FactTable.Part ? fact.Word : at.Find("name")?.Word is { } name ? $"{fact.Word} of {name}" : $"{fact.Word} of a {at.Group.Word}";

    // A fibre is called carbon in speech and carbon-fibre in the book: the whole name counts.
    private static bool Is(IEnumerable<string> words, string word) => words.Contains(word, StringComparer.Ordinal);
}
