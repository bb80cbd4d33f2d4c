using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Semantics.Binding;

/// <summary>Binds what a rule says: a fact or a figure in braces stands for its value, <c>{mass in kg}</c> for its value in that unit.</summary>
internal static class RuleMessageBinder
{
    public static RuleMessage? Bind(Line line, HouseRule rule, LineContext context)
    {
        if (line.Reading.Find(Define.Value) is not { Word: { } text } argument)
        {
            return null;
        }

        var groups = rule.Musts.OfType<RuleQuantified>().Select(must => must.Group).Append(FactTable.Part).ToArray();
        var pieces = ImmutableArray.CreateBuilder<RuleMessagePiece>();
        var whole = true;
        for (var at = 0; at < text.Length;)
        {
            var open = text.IndexOf('{', at);
            var end = open < 0 ? text.Length : open;
            if (end > at)
            {
                pieces.Add(new RuleMessagePiece(text[at..end], null, null));
            }

            if (open < 0)
            {
                break;
            }

            var close = text.IndexOf('}', open);
            if (close < 0)
            {
                context.Sink.Report(NotUnderstood.NotHere(argument.Where, "A { that is never closed", "write } behind the word"));
                return null;
            }

            var piece = Value(text[(open + 1)..close], argument.Where, rule, groups, context);
            whole &= piece is not null;
            if (piece is not null)
            {
                pieces.Add(piece);
            }

            at = close + 1;
        }

        return whole ? new RuleMessage(pieces.ToImmutable()) : null;
    }

    private static RuleMessagePiece? Value(string written, SourceSpan where, HouseRule rule, FactGroup[] groups, LineContext context)
    {
        var words = written.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words is not ([_] or [_, "in", _]))
        {
            context.Sink.Report(NotUnderstood.NotHere(where, $"{{{written}}}", "write a fact, or a fact and its unit, as in {mass in kg}"));
            return null;
        }

        var fact = groups.Select(group => group.Find(words[0])).FirstOrDefault(found => found is not null);
        var figure = rule.Figures.FirstOrDefault(f => f.Name == words[0]);
        if (fact is null && figure is null)
        {
            context.Sink.Report(UnknownName.Create(where, words[0], "a fact or a figure of the rule", groups.SelectMany(g => g.Facts).Select(f => f.Word).Concat(rule.Figures.Select(f => f.Name))));
            return null;
        }

        Unit? unit = null;
        if (words.Length == 3)
        {
            var own = fact is null ? figure!.Unit : fact.Unit;
            if (!UnitTable.TryParse(words[2], out unit))
            {
                context.Sink.Report(NotUnderstood.NotHere(where, $"`{words[2]}` is no unit and", own is null ? "leave it out" : $"write another, as in {{{words[0]} in {own.Symbol}}}"));
                return null;
            }

            if (own is null || own.Dimension != unit.Dimension || (own.Scale == UnitScale.Offset) != (unit.Scale == UnitScale.Offset))
            {
                context.Sink.Report(WrongKindOfUnit.Create(where, words[0], own is null ? "no unit" : own.Dimension.Name, own is null ? [] : [own.Symbol], words[2], unit.Dimension.Name));
                return null;
            }
        }

        return new RuleMessagePiece("", words[0], unit);
    }
}
