using System.Collections.Immutable;
using System.Text;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Histories;

/// <summary>A figure of the parts in the order in which they were built, with the limits that it keeps while nothing changes.</summary>
internal static class RunChart
{
    private const double Width = 180;
    private const double SizePt = 9;
    private const int Wide = 44;

    /// <summary>The parts whose figure is known, and their chart; null when there are fewer than two.</summary>
    public static (ImmutableArray<BuildRecord> Builds, IndividualsChart Chart)? Of(BuildLog log, RunFigure figure)
    {
        var known = log.Builds.Select(build => (build.Record, Value: figure.Value(build))).Where(pair => pair.Value is not null).ToList();
        return known.Count < 2 ? null : ([.. known.Select(pair => pair.Record)], IndividualsChart.From([.. known.Select(pair => pair.Value!.Value)]));
    }

    /// <summary>What the chart says, in words.</summary>
    public static string Said((ImmutableArray<BuildRecord> Builds, IndividualsChart Chart) run, RunFigure figure, QuantityText text)
    {
        var chart = run.Chart;
        var (mean, low, high) = (figure.Say(text, chart.Mean), figure.Say(text, Math.Max(0, chart.Low)), figure.Say(text, chart.High));
        return chart.IsEnough
            ? $"{Capital(figure.Title)} of {Numbers.Whole(run.Builds.Length)} parts: mean {mean}; while nothing changes it lies from {low} to {high} (mean ± 3 mean moving ranges / 1.128)."
            : $"{Capital(figure.Title)} of {Numbers.Whole(run.Builds.Length)} parts: mean {mean}. Limits are drawn from {Numbers.Whole(IndividualsChart.Fewest)} parts on.";
    }

    /// <summary>What of it chance hardly does, one sentence for each.</summary>
    public static IEnumerable<string> Signals((ImmutableArray<BuildRecord> Builds, IndividualsChart Chart) run) =>
        run.Builds.Zip(run.Chart.Signals, (record, signal) => signal switch
        {
            ChartSignal.BeyondLimit => $"No. {HistoryTable.NumberOf(record)} lies beyond the limits: look for what was different.",
            ChartSignal.OneSide => $"Up to no. {HistoryTable.NumberOf(record)} eight parts in a row lie on one side of the mean: something has changed.",
            ChartSignal.Drift => $"Up to no. {HistoryTable.NumberOf(record)} six parts in a row move the same way: something wears, or is learnt.",
            _ => "",
        }).Where(said => said.Length > 0);

    /// <summary>The chart with letters: o a part, X one that chance hardly makes, | the limits, : the mean.</summary>
    public static string TextOf(BuildLog log, RunFigure figure, QuantityText text)
    {
        if (Of(log, figure) is not var (builds, chart))
        {
            return "";
        }

        var (low, high) = Range(chart);
        var page = new StringBuilder();
        var widest = builds.Max(record => HistoryTable.NumberOf(record).Length);
        for (var i = 0; i < builds.Length; i++)
        {
            var line = new char[Wide + 1];
            Array.Fill(line, ' ');
            line[At(chart.Mean)] = ':';
            if (chart.IsEnough)
            {
                (line[At(chart.Low)], line[At(chart.High)]) = ('|', '|');
            }

            line[At(chart.Values[i])] = chart.Signals[i] == ChartSignal.None ? 'o' : 'X';
            page.Append($"  {HistoryTable.NumberOf(builds[i]).PadLeft(widest)}  {new string(line).TrimEnd().PadRight(Wide + 1)}  {PlainText.Spaced(figure.Say(text, chart.Values[i]))}\n");
        }

        return page.ToString();

        int At(double value) => (int)Math.Round((Math.Clamp(value, low, high) - low) / (high - low) * Wide);
    }

    /// <summary>The chart drawn; null when there are fewer than two parts.</summary>
    public static Drawing? DrawingOf(BuildLog log, RunFigure figure, QuantityText text)
    {
        if (Of(log, figure) is not var (builds, chart))
        {
            return null;
        }

        double Shown(double si) => figure.Shown(text, si);
        var (low, high) = Range(chart);
        var up = Chart.Up(Shown(low), Shown(high), 70, 12);
        var canvas = new Canvas(Width, 84);
        var right = Width - 34;
        double Across(int i) => 20 + ((i + 0.5) / builds.Length * (right - 20));
        Chart.LabelUp(canvas, up, 18, SizePt);
        canvas.Add(PathShape.Box(20, up.End, right - 20, up.Start - up.End, Pen.Thin));
        canvas.Text(4, up.End + ((up.Start - up.End) / 2), $"{figure.Title}, {figure.Unit(text)}", SizePt, Anchor.Middle, upright: true);
        canvas.Text((20 + right) / 2, 82, "serial number", SizePt, Anchor.Middle);
        Level(chart.Mean, new Pen(0.4), "mean");
        if (chart.IsEnough)
        {
            Level(chart.High, new Pen(0.4, Dashed: true), "limit");
            Level(Math.Max(0, chart.Low), new Pen(0.4, Dashed: true), "limit");
        }

        for (var i = 1; i < builds.Length; i++)
        {
            canvas.Line(Across(i - 1), up.At(Shown(chart.Values[i - 1])), Across(i), up.At(Shown(chart.Values[i])), Pen.Thin);
        }

        for (var i = 0; i < builds.Length; i++)
        {
            var (x, y) = (Across(i), up.At(Shown(chart.Values[i])));
            var odd = chart.Signals[i] != ChartSignal.None;
            canvas.Add(new CircleShape(new Spot(x, y), odd ? 1.8 : 1.1, Pen.Firm, odd ? Fill.White : Fill.Black));
            if (odd)
            {
                canvas.Line(x - 1.2, y - 1.2, x + 1.2, y + 1.2, Pen.Firm);
                canvas.Line(x - 1.2, y + 1.2, x + 1.2, y - 1.2, Pen.Firm);
            }

            canvas.Text(x, 75, HistoryTable.NumberOf(builds[i]), SizePt, Anchor.Middle);
        }

        return canvas.Draw("run-chart", $"{Capital(figure.Title)} in the order of building", $"{Said((builds, chart), figure, text)} {string.Join(" ", Signals((builds, chart)))}".TrimEnd());

        void Level(double value, Pen pen, string word)
        {
            var y = up.At(Shown(value));
            canvas.Line(20, y, right, y, pen);
            canvas.Text(right + 1.5, y + (Lettering.HeightMm(SizePt) / 2), $"{word} {figure.Say(text, value)}", SizePt);
        }
    }

    private static (double Low, double High) Range(IndividualsChart chart)
    {
        var all = chart.IsEnough ? chart.Values.Append(chart.Low).Append(chart.High) : chart.Values;
        var (low, high) = (all.Min(), all.Max());
        var margin = Math.Max((high - low) * 0.05, Math.Abs(high) * 1e-3);
        return (Math.Max(0, low - margin), high + margin);
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
