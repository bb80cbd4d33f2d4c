using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Reading;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Semantics.Binding;

/// <summary>Options that are values, one by one or evenly spread over a range.</summary>
internal static class SpreadBinder
{
    private const int Digits = 9;

    /// <summary>The quantities of a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="edit">What one of them does, by its SI value, as it is written, and its place.</param>
    public static ImmutableArray<StudyOption> Quantities(Line line, Func<double, string, SourceSpan, PartEdit> edit)
    {
        var arguments = line.Reading.FindAll(Define.Value).ToList();
        if (!StepsFit(line, arguments.Find(argument => argument.High is not null), arguments.Count))
        {
            return [];
        }

        if (arguments is [{ High: { } high } range])
        {
            // In the author's unit, so that 5 mm of a range is 5 mm to the last digit.
            var unit = range.RangeUnit ?? UnitTable.Get("m");
            return Spread(line, unit.FromSi(range.Si), unit.FromSi(high.Si), value => ($"{Numbers.Format(value)} {unit.Symbol}", edit(unit.ToSi(value), $"{Numbers.Format(value)} {unit.Symbol}", range.Where)));
        }

        foreach (var (second, first) in arguments.Select((argument, i) => (argument, arguments.Take(i).FirstOrDefault(other => other.Si == argument.Si))))
        {
            if (first is not null)
            {
                line.Context.Sink.Report(SaidTwice.Create(second.Where, second.Written, first.Where));
            }
        }

        return [.. arguments.Select(argument => new StudyOption(argument.Written, edit(argument.Si, argument.Written, argument.Where)))];
    }

    /// <summary>The resin contents of a line.</summary>
    public static ImmutableArray<StudyOption> Contents(Line line)
    {
        if (line.Reading.Find(Define.Value) is not { Payload: ContentSpread spread } argument || !StepsFit(line, argument.High is null ? null : argument, 1))
        {
            return [];
        }

        return argument.High is null
            ? [Content(spread.Low / Percent)]
            : Spread(line, spread.Low / Percent, spread.High / Percent, value => (Content(value).Written, Content(value).Edit));

        StudyOption Content(double percent)
        {
            var written = $"{Numbers.Format(percent)} % by {(spread.Basis == MixBasis.Weight ? "weight" : "volume")}";
            var share = Math.Round(percent, Digits) * Percent;
            var content = spread.Basis == MixBasis.Weight ? new Content(ContentBasis.ResinByWeight, share) : new Content(ContentBasis.FibreByVolume, 1 - share);
            return new(written, new PutContent(new(content, Basis.Stated, written, argument.Where)));
        }
    }

    private static double Percent { get; } = UnitTable.Get("%").Factor;

    private static ImmutableArray<StudyOption> Spread(Line line, double low, double high, Func<double, (string Written, PartEdit Edit)> option)
    {
        var steps = (int)line.Reading.Find("steps")!.Si;
        return
        [
            .. Enumerable.Range(0, steps).Select(i => option(Math.Round(low + ((high - low) * i / (steps - 1)), Digits))).Select(made => new StudyOption(made.Written, made.Edit)),
        ];
    }

    // A range needs its steps, and stands alone; values one by one have none.
    private static bool StepsFit(Line line, Argument? range, int count)
    {
        var steps = line.Reading.Find("steps");
        if (count == 0)
        {
            // What could not be read was reported.
            return false;
        }

        if (range is not null && count > 1)
        {
            line.Context.Sink.Report(ExtraValue.Create(range.Where, line.Context.Source.Slice(range.Where.Span), line.Head, "choose thickness stiff 3 to 8 mm steps 6"));
            return false;
        }

        if (range is not null && steps is null)
        {
            if (!line.Reading.WasTried("steps"))
            {
                line.Context.Sink.Report(MissingValue.Create(range.Where, line.Head, "`steps` and how many values of the range are tried", $"choose {line.Rest} steps 5"));
            }

            return false;
        }

        if (range is null && steps is not null)
        {
            line.Context.Sink.Report(NotUnderstood.NotHere(steps.Where, "`steps`", "only a range such as `3 to 8 mm` is tried in steps"));
        }

        return true;
    }
}

/// <summary>Two resin contents and what they are of; shares of resin, 0 to 1.</summary>
internal readonly record struct ContentSpread(double Low, double High, MixBasis Basis);
