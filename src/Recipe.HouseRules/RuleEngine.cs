using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text;

namespace Recipe.HouseRules;

/// <summary>Holds a part against a rule of the house.</summary>
public static class RuleEngine
{
    // More findings of one rule on one part are not read.
    private const int MostBreaches = 100;

    /// <summary>What a rule says of a part.</summary>
    /// <param name="rule">The rule; one that is not whole says nothing.</param>
    /// <param name="part">The facts of the part.</param>
    /// <param name="text">The text that changes may be made in: that of the recipe.</param>
    public static RuleOutcome Apply(HouseRule rule, FactNode part, SourceText text)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(text);
        if (!rule.IsWhole)
        {
            return new RuleOutcome([], null);
        }

        var work = new RuleWork(rule, part);
        var applies = work.All(rule.When, work.AtPart);
        if (applies.Answer != true)
        {
            return new RuleOutcome([], applies.Answer is null ? applies.Missing : null);
        }

        var broken = ImmutableArray.CreateBuilder<RuleBreach>();
        string? missing = null;
        foreach (var must in rule.Musts)
        {
            foreach (var (thing, kept) in Answers(must, work))
            {
                if (kept.Answer is null)
                {
                    missing ??= kept.Missing;
                }
                else if (kept.Answer == false && broken.Count < MostBreaches)
                {
                    broken.Add(Breach(rule, must, thing, part, kept, applies, work, text));
                }
            }
        }

        return new RuleOutcome(broken.ToImmutable(), work.IsExhausted ? "an answer: it takes more steps than a rule may" : missing);
    }

    // A rule about every thing of a kind is broken by each that breaks it, and each is shown.
    private static IEnumerable<(FactNode Thing, RuleTruth Kept)> Answers(RuleCondition must, RuleWork work)
    {
        if (must is not RuleQuantified { Quantifier: not RuleQuantifier.Any } quantified)
        {
            return [(work.AtPart[0], work.Of(must, work.AtPart))];
        }

        var each = work.Each(quantified, work.AtPart);
        return quantified.Quantifier == RuleQuantifier.Every ? each : each.Select(one => (one.Thing, one.Kept.Not()));
    }

    private static RuleBreach Breach(HouseRule rule, RuleCondition must, FactNode thing, FactNode part, RuleTruth kept, RuleTruth applies, RuleWork work, SourceText text)
    {
        var grounds = kept.Grounds.And(applies.Grounds);
        return new RuleBreach(PlaceOf(must, thing, work, text), RuleWords.Say(rule, must, thing, part, work))
        {
            RestsOn = [.. grounds.Keys],
            Assumed = [.. grounds.Words],
            Rule = must.Where,
            Fixes = [.. rule.Fixes.Select(fix => RuleChanges.Fix(fix, thing, part, text)).OfType<Text.Findings.Fix>()],
        };
    }

    // A figure that the recipe states is pointed at itself.
    private static SourceSpan PlaceOf(RuleCondition must, FactNode thing, RuleWork work, SourceText text)
    {
        var where = must switch
        {
            RuleComparison { Subject: RuleFact fact } => work.AtPart[0].Find(fact.Fact.Word)?.Where,
            RuleChoice choice => work.AtPart[0].Find(choice.Fact.Word)?.Where,
            RuleYesNo yesNo => work.AtPart[0].Find(yesNo.Fact.Word)?.Where,
            _ => null,
        };
        return where is { } place && ReferenceEquals(place.Source, text) ? place : thing.Where;
    }
}
