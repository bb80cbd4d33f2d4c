using System.Globalization;
using System.Text;
using Recipe.Model;
using Recipe.Text.Units;

namespace Recipe.HouseRules;

/// <summary>What a rule says: the author's words with values in them, or words of our own.</summary>
internal static class RuleWords
{
    private const int Longest = 400;

    public static string Say(HouseRule rule, RuleCondition must, FactNode thing, FactNode part, RuleWork work)
    {
        var text = rule.Message is { } message
            ? string.Concat(message.Pieces.Select(piece => piece.Word is { } word ? Value(word, piece.Unit, rule, thing, part, work) : piece.Text))
            : $"{(thing == part ? "" : $"{NameOf(thing)}: ")}{Broken(must, thing, part, rule, work)}";
        text = text.Trim().TrimEnd('.');
        return text.Length <= Longest ? text : text[..Longest] + "...";
    }

    private static string NameOf(FactNode thing) => thing.Find("name")?.Word
        ?? (thing.Find("step") ?? thing.Find("class") ?? thing.Find("agent") ?? thing.Find("action") ?? thing.Find("material"))?.Word
        ?? $"{thing.Group.Word} {Number(thing.Find("number")?.Si ?? thing.Find("position")?.Si ?? 0)}";

    private static string Broken(RuleCondition must, FactNode thing, FactNode part, HouseRule rule, RuleWork work)
    {
        var condition = must is RuleQuantified { Quantifier: RuleQuantifier.Every, Conditions: [var only] } ? only : must;
        FactNode[] at = thing == part ? [part] : [thing, part];
        return condition switch
        {
            RuleComparison comparison when work.Value(comparison.Subject, at, out _) is { } value =>
                $"{comparison.Written} is {Number(value, comparison.Unit)}; {Wanted(comparison, at, work)}",
            RuleChoice choice when choice.Level < at.Length => $"{choice.Fact.Word} is {at[choice.Level].Find(choice.Fact.Word)?.Word}; {(choice.IsNot ? "not wanted here" : $"wanted: {string.Join(" or ", choice.Words)}")}",
            RuleYesNo yesNo => $"{yesNo.Fact.Word} is {(yesNo.Wanted ? "no; it should be yes" : "yes; it should be no")}",
            RuleKnown known => known.Wanted ? $"{known.Fact.Word} is not known" : $"{known.Fact.Word} is given",
            RuleQuantified { Quantifier: RuleQuantifier.No } => rule.Title,
            RuleQuantified { Quantifier: RuleQuantifier.Any } any => $"no {any.Group.Word} keeps {Line(any.Where.Text)}",
            _ => $"it does not keep {Line(must.Where.Text)}",
        };
    }

    private static string Wanted(RuleComparison comparison, FactNode[] at, RuleWork work)
    {
        return string.Join(" and ", comparison.Bounds.Select(bound => bound.Relation switch
        {
            RuleRelation.AtLeast => $"at least {Shown(bound)}",
            RuleRelation.AtMost => $"at most {Shown(bound)}",
            RuleRelation.Above => $"more than {Shown(bound)}",
            RuleRelation.Below => $"less than {Shown(bound)}",
            _ => Shown(bound),
        })) + " is the rule";

        // A bound that is a name or is worked out says what it comes to.
        string Shown(RuleBound bound) => bound.Written is [var first, ..] && (char.IsLetter(first) || first is '_' or '(') && work.Value(bound.Value, at, out _) is { } value
            ? $"{bound.Written} ({Number(value, comparison.Unit)})"
            : bound.Written;
    }

    private static string Value(string word, Unit? unit, HouseRule rule, FactNode thing, FactNode part, RuleWork work)
    {
        foreach (var node in thing == part ? [part] : (FactNode[])[thing, part])
        {
            if (node.Group.Find(word) is { } fact)
            {
                return node.Find(word) is { } value ? Shown(value, fact, unit) : "unknown";
            }
        }

        for (var i = 0; i < rule.Figures.Length; i++)
        {
            if (rule.Figures[i].Name == word)
            {
                return work.Figure(i, out _) is { } value ? Number(value, unit ?? rule.Figures[i].Unit) : "unknown";
            }
        }

        return "unknown";
    }

    private static string Shown(FactValue value, FactWord fact, Unit? unit) =>
        value.Word ?? (value.Yes is { } yes ? yes ? "yes" : "no" : Number(new RuleNumber(value.Si, value.Currency, Grounds.None), unit ?? fact.Unit));

    private static string Number(RuleNumber value, Unit? unit) =>
        unit is { Currency: not null } ? string.Create(CultureInfo.InvariantCulture, $"{unit.FromSi(value.Si):0.00} {unit.Symbol}")
        : value.Currency is { } currency ? string.Create(CultureInfo.InvariantCulture, $"{value.Si:0.00} {currency}")
        : unit is null ? Number(value.Si)
        : $"{Number(unit.FromSi(value.Si))} {unit.Symbol}";

    // Four digits: more than a bench can read.
    private static string Number(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return "0";
        }

        var size = Math.Abs(value);
        return size is >= 1e-3 and < 1e9
            ? Math.Round(value, Math.Clamp(3 - (int)Math.Floor(Math.Log10(size)), 0, 6)).ToString("0.######", CultureInfo.InvariantCulture)
            : value.ToString("G4", CultureInfo.InvariantCulture);
    }

    private static string Line(string text)
    {
        var line = new StringBuilder();
        foreach (var part in text.Split((char[])[' ', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            line.Append(line.Length > 0 ? " " : "").Append(part);
        }

        return $"`{line}`";
    }
}
