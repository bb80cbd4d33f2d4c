using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Binding;

/// <summary>Binds an <c>explore</c>: its choices against the part that it names, its limits and what it wants.</summary>
internal static class StudyBinder
{
    public static Bound<Study> Bind(StudyDeclaration declaration)
    {
        var sink = new FindingSink();
        var context = declaration.Context with { Sink = sink };
        var head = declaration.ReadHead(context, NameKind.Study);
        var lines = declaration.ReadLines(context);
        var part = (head.Find("of")?.Payload as PartDeclaration)?.Part;
        foreach (var word in declaration.Schema.Words)
        {
            if (word.IsRequired && !lines.Many(word.Word).Any() && !declaration.HalfRead && declaration.Entry.Block is not null)
            {
                sink.Report(MissingValue.Line(declaration.Where, declaration.Name, word.Word, word.Example));
            }
        }

        var choices = part is null ? [] : new ChoiceBinder(part, sink).Bind(lines.Many("choose"));
        var study = new Study
        {
            Name = declaration.Name,
            Where = declaration.Where,
            Title = lines.Text("title"),
            Part = part,
            Choices = choices,
            Limits = [.. lines.Many("limit").Select(Limit).OfType<StudyLimit>()],
            Wants = Wants(lines, sink),
        };
        if (study.Candidates > Study.MostCandidates)
        {
            sink.Report(TooManyCandidates.Create(declaration.Where, [.. choices.Select(choice => (choice.Label, choice.Options.Length))], Study.MostCandidates));
        }

        var isWhole = part is not null && !choices.IsEmpty && !study.Wants.IsEmpty && !sink.Findings.Any(finding => finding.Severity == Text.Findings.Severity.Error);
        return new(study with { IsWhole = isWhole }, sink.Findings, sink.Names);
    }

    private static StudyLimit? Limit(Line line)
    {
        if (line.Reading.Form is not { } form)
        {
            return null;
        }

        var figure = FigureWords.Of(form);
        var (least, most) = (Si(line, "at-least"), Si(line, "at-most"));
        if (least is null && most is null)
        {
            if (!line.Reading.WasTried("at-least") && !line.Reading.WasTried("at-most") && !line.Reading.IsHalfRead)
            {
                line.Context.Sink.Report(MissingValue.Create(line.HeadWhere, line.Head, $"`at-least` or `at-most` and {figure.Kind.Noun}", $"limit {form} {figure.Example}"));
            }

            return null;
        }

        if (least > most)
        {
            var low = line.Reading.Find("at-least")!;
            line.Context.Sink.Report(OutOfRange.Create(low.Where, $"{form} at-least", low.Written, $"no more than what is `at-most`, {line.Reading.Find("at-most")!.Written}"));
            return null;
        }

        return new StudyLimit(figure.Figure, least, most, line.Rest, line.Where) { Currency = Currency(line, "at-least") ?? Currency(line, "at-most") };
    }

    private static double? Si(Line line, string clause) => line.Reading.Find(clause) switch
    {
        null => null,
        { Payload: Price { Unit: { } unit } price } argument => NoUnit(line, argument, price, unit.Symbol),
        { Payload: Price price } => (double)price.Amount,
        { } argument => argument.Si,
    };

    private static double? NoUnit(Line line, Argument argument, Price price, string unit)
    {
        line.Context.Sink.Report(WrongKindOfUnit.Create(argument.Where, argument.Name, "a sum of money", [price.Currency], argument.Written, $"price for each {unit}"));
        return null;
    }

    private static string? Currency(Line line, string clause) => line.Reading.Find(clause)?.Payload is Price price ? price.Currency : null;

    private static ImmutableArray<StudyWant> Wants(Lines lines, FindingSink sink)
    {
        var wants = ImmutableArray.CreateBuilder<StudyWant>();
        foreach (var line in lines.Many("want"))
        {
            if (line.Reading.Find("figure") is not { Word: { } word } argument)
            {
                continue;
            }

            var want = new StudyWant(FigureWords.Of(word).Figure, line.Reading.Form == "least", argument.Where);
            if (wants.FirstOrDefault(other => other.Figure == want.Figure) is { } before)
            {
                sink.Report(SaidTwice.Create(argument.Where, word, before.Where));
                continue;
            }

            wants.Add(want);
        }

        return wants.ToImmutable();
    }
}
