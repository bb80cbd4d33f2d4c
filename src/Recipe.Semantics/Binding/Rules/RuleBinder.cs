using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Binding;

/// <summary>Binds a <c>rule</c>.</summary>
internal static class RuleBinder
{
    public static Bound<HouseRule> Bind(RuleDeclaration declaration)
    {
        var sink = new FindingSink();
        var context = declaration.Context with { Sink = sink };
        declaration.ReadHead(context, NameKind.Rule);
        CheckName(declaration, context);
        var lines = declaration.ReadLines(context);
        foreach (var word in declaration.Schema.Words.Where(w => w.IsRequired))
        {
            if (!lines.Many(word.Word).Any() && !declaration.HalfRead && declaration.Entry.Block is not null)
            {
                sink.Report(MissingValue.Line(declaration.Where, declaration.Name, word.Word, word.Example));
            }
        }

        var figures = Figures(lines, context);
        var scope = new RuleScope([FactTable.Part], figures);
        var rule = new HouseRule
        {
            Name = declaration.Name,
            Where = declaration.Where,
            Title = lines.Text("title") ?? declaration.Name.Replace('-', ' '),
            Reason = lines.Text("reason"),
            Remedy = lines.Text("remedy"),
            Source = lines.One("source")?.Text(Define.Value),
            Exceptions = lines.Text("silent-when"),
            Severity = lines.Text("severity") switch { "error" => Severity.Error, "advice" => Severity.Advice, _ => Severity.Warning },
            CanBeAccepted = lines.YesNo("acceptable") ?? true,
            Figures = [.. figures.Select(f => f.Figure)],
            When = Conditions(lines.Many("when"), scope, context),
            Musts = Conditions(lines.Many("must"), scope, context),
            Fixes = [.. lines.Many("fix").Select(line => Fix(line, context)).OfType<RuleFix>()],
            Examples = [.. lines.All.Where(line => line is { Word.Word: "bad" or "good", Entry.Block: not null }).Select(line => Example(line, context))],
        };
        rule = rule with { Message = lines.One("message") is { } message ? RuleMessageBinder.Bind(message, rule, context) : null };
        return new(rule with { IsWhole = !rule.Musts.IsEmpty && !sink.Findings.Any(finding => finding.Severity == Severity.Error) }, sink.Findings, sink.Names);
    }

    // A finding is accepted and set by its name, in lower case with hyphens like all others.
    private static void CheckName(RuleDeclaration declaration, LineContext context)
    {
        if (!FindingDescriptor.IsName(declaration.Name))
        {
            context.Sink.Report(NotUnderstood.Shape(declaration.Where, "rule", "a name in small letters a to z, figures and hyphens", "rule warm-carbon"));
        }
    }

    private static List<(RuleFigure Figure, RuleType Type)> Figures(Lines lines, LineContext context)
    {
        var figures = new List<(RuleFigure Figure, RuleType Type)>();
        foreach (var line in lines.Many("figure"))
        {
            var values = new ConditionWords(line.Entry, 0, context);
            if (values.TakeName() is not { } name)
            {
                context.Sink.Report(MissingValue.Create(line.HeadWhere, "figure", "a name and a value", "figure carbon sum ply mass { fibre is standard-carbon }"));
                continue;
            }

            var where = context.At(name.Span);
            if (FactTable.Part.Find(name.Text) is not null || FactTable.Elements.Any(g => g.Find(name.Text) is not null) || figures.Any(f => f.Figure.Name == name.Text))
            {
                context.Sink.Report(NotUnderstood.NotHere(where, $"`{name.Text}` means something already and", "give the figure another name"));
                continue;
            }

            if (ConditionBinder.BindValue(line.Entry, values, new RuleScope([FactTable.Part], figures), context) is { } value && values.Done())
            {
                figures.Add((new RuleFigure(name.Text, value.Expression, value.Type.Unit), value.Type));
            }
        }

        return figures;
    }

    private static ImmutableArray<RuleCondition> Conditions(IEnumerable<Line> lines, RuleScope scope, LineContext context) =>
        [.. lines.Where(line => !line.Reading.IsHalfRead).Select(line => ConditionBinder.Bind(line.Entry, 0, scope, context)).OfType<RuleCondition>()];

    private static RuleFix? Fix(Line line, LineContext context)
    {
        if (line.Entry.Values is not [WordSyntax form, WordSyntax word, .. var rest] || rest.IsEmpty)
        {
            return null;
        }

        if (form.Text == "add")
        {
            var blocks = PartSchema.Part.Block!.Words.Where(w => w.Block is not null).Select(w => w.Word).ToArray();
            if (!blocks.Contains(word.Text, StringComparer.Ordinal))
            {
                context.Sink.Report(NotUnderstood.Choice(context.At(word.Span), word.Text, "fix add", blocks));
                return null;
            }

            return rest is [TextSyntax text] ? new RuleFix(word.Text, text.Text, true, line.Where) : null;
        }

        if (FactTable.Part.Find(word.Text) is null && !FactTable.Elements.Any(g => g.Find(word.Text) is not null))
        {
            context.Sink.Report(UnknownName.Create(context.At(word.Span), word.Text, "a fact", FactTable.Elements.SelectMany(g => g.Facts).Concat(FactTable.Part.Facts).Select(f => f.Word)));
            return null;
        }

        return new RuleFix(word.Text, context.At(TextSpan.FromBounds(rest[0].Span.Start, rest[^1].Span.End)).Text, false, line.Where);
    }

    private static RuleExample Example(Line line, LineContext context)
    {
        var block = line.Entry.Block!;
        var end = block.CloseBrace?.Start ?? block.Span.End;
        return new RuleExample(line.Word.Word == "bad", context.At(TextSpan.FromBounds(block.OpenBrace.End, end)), line.HeadWhere);
    }
}
