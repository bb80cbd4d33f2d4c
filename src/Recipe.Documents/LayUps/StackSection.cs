using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.LayUps;

/// <summary>
/// A cut through the stack, the mould at the bottom: each ply a band as thick as it cures, all to one scale that the drawing states. What covers only
/// part of the surface is a short band, and what lies over it runs up its edges.
/// </summary>
internal static class StackSection
{
    public const string Name = "stack-section";

    private const double Width = 180;
    private const double Left = 2;
    private const double Right = 84;
    private const double Words = 96;
    private const double Size = 11;
    private const double MouldHeight = 7;
    private const double Tallest = 62;
    private const double Unknown = 4;

    private static readonly ImmutableArray<double> Places = [Left, Left + 26, Left + 30, Right - 30, Right - 26, Right];

    /// <summary>A band of the section.</summary>
    /// <param name="Line">The line of the stack.</param>
    /// <param name="Mark">What stands in its ring: "3", "core".</param>
    /// <param name="Thickness">Its thickness; null when not known.</param>
    /// <param name="Covers">Whether it covers all of the surface.</param>
    internal sealed record Band(StackPlan Line, string Mark, Length? Thickness, bool Covers);

    /// <summary>The bands from the mould up: each repeat one of its own.</summary>
    public static ImmutableArray<Band> Bands(BenchContext context)
    {
        var bands = ImmutableArray.CreateBuilder<Band>();
        foreach (var line in context.Plan.Stack)
        {
            var repeats = Math.Clamp(StackNames.Plies(line.Item), 1, 40);
            var each = line.Thickness is { } all && all.Value > Length.Zero ? all.Value / repeats : (Length?)null;
            var covers = line.Item is { CoversShare: null, CoversArea: null, SizeLength: null } and not InsertItem;
            for (var i = 0; i < repeats; i++)
            {
                var mark = line is { Item: PlyItem, Number: > 0 } && repeats > 1 ? Numbers.Whole(line.Number + i) : StackNames.Number(context.Plan, line);
                bands.Add(new Band(line, mark, each, covers));
            }
        }

        return bands.ToImmutable();
    }

    /// <summary>The section; null for a stack without plies.</summary>
    public static Drawing? Draw(BenchContext context)
    {
        var bands = Bands(context);
        if (bands.IsEmpty)
        {
            return null;
        }

        var known = bands.Sum(band => band.Thickness?.Millimeters ?? 0);
        var scale = known > 0 ? Round(Math.Max(10, Tallest - (bands.Count(band => band.Thickness is null) * Unknown)) / known) : 1;
        var labels = Labels(context, bands);
        var stack = bands.Sum(band => HeightOf(band, scale));
        var text = labels.Sum(label => label.Height);
        var height = Math.Max(stack + 4, text) + MouldHeight + 12;
        var canvas = new Canvas(Width, height);
        var floor = height - 8 - MouldHeight;
        canvas.Add(PathShape.Box(Left, floor, Right - Left, MouldHeight, Pen.Firm, Fill.Hatched));
        _ = canvas.Text(Words, floor + 5, context.StaysOn ? context.Say("stays in the part") : context.IsWrapped ? context.Say("mandrel") : context.Say("mould"), Size, strong: true);
        canvas.Line(Right, floor + 3.5, Words - 1.5, floor + 3.5, Pen.Thin);

        var below = Places.Select(_ => floor).ToArray();

        // Over a short band the lines start on top of it, so that none crosses another.
        var ends = new List<Spot>();
        var stepped = false;
        foreach (var band in bands)
        {
            var thick = HeightOf(band, scale);
            var above = below.Select((y, i) => band.Covers || i is 2 or 3 ? y - thick : y).ToArray();
            var points = band.Covers
                ? Enumerable.Range(0, Places.Length).Select(i => new Spot(Places[i], below[i])).Concat(Enumerable.Range(0, Places.Length).Reverse().Select(i => new Spot(Places[i], above[i])))
                : Enumerable.Range(1, 4).Select(i => new Spot(Places[i], below[i])).Concat(Enumerable.Range(1, 4).Reverse().Select(i => new Spot(Places[i], above[i])));
            canvas.Add(new PathShape([.. points], band.Thickness is null ? new Pen(0.3, Dashed: true) : new Pen(0.3), Closed: true, FillOf(band.Line.Item)));
            stepped |= !band.Covers;
            ends.Add(stepped ? new Spot(Places[3], (below[3] + above[3]) / 2) : new Spot(Right, (below[^1] + above[^1]) / 2));
            below = above;
        }

        Leaders(canvas, labels, ends, floor);
        var note = known > 0
            ? context.Say($"Thickness is drawn {Numbers.Significant(scale, 2)} times its size; widths are not to scale.")
            : context.Say("No thickness is known: the bands only show the order.");
        _ = canvas.Text(Left, height - 2, note, Size - 1);
        return canvas.Draw(Name, context.StaysOn ? context.Say("The stack, cut through: number 1 lies on what stays") : context.IsWrapped ? context.Say("The wall, cut lengthwise: number 1 lies on the mandrel") : context.Say("The stack, cut through: number 1 lies on the mould"), Describe(context, bands));
    }

    /// <summary>How many mm on paper a millimetre of laminate takes: a round number.</summary>
    private static double Round(double scale)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(scale)));
        return Math.Max(power, Math.Floor(scale / power * 2) / 2 * power);
    }

    private static double HeightOf(Band band, double scale) => band.Thickness is { } thickness ? thickness.Millimeters * scale : Unknown;

    private sealed record Label(int First, int Last, string Mark, IReadOnlyList<string> Lines)
    {
        public double Height => Math.Max(Lines.Count * Lettering.LineMm(Size), 6.5) + 0.5;
    }

    // Repeats of one line share a label.
    private static List<Label> Labels(BenchContext context, ImmutableArray<Band> bands)
    {
        var labels = new List<Label>();
        for (var i = 0; i < bands.Length; i++)
        {
            if (labels.Count > 0 && ReferenceEquals(bands[labels[^1].First].Line, bands[i].Line))
            {
                labels[^1] = labels[^1] with { Last = i };
                continue;
            }

            var line = bands[i].Line;
            var thickness = line.Thickness is { } known ? ", " + context.Text.Thickness(known.Value).Main : "";
            var mark = line.Item is PlyItem ? StackNames.Number(context.Plan, line) : "";
            labels.Add(new Label(i, i, mark, TextLines.Wrap($"{line.Item.Name}: {Shared.Words.Of(StackNames.MaterialOf(line.Item))}{thickness}", Width - Words - 14, Size)));
        }

        return labels;
    }

    // Labels stand one over the other on the right; a bent line leads from each to its band.
    private static void Leaders(Canvas canvas, List<Label> labels, List<Spot> ends, double floor)
    {
        var wanted = labels.Select(label => (ends[label.First].Y + ends[label.Last].Y) / 2).ToList();
        var places = new double[labels.Count];
        var bottom = floor - 0.5;
        for (var i = 0; i < labels.Count; i++)
        {
            places[i] = Math.Min(wanted[i], bottom - (labels[i].Height / 2));
            bottom = places[i] - (labels[i].Height / 2);
        }

        // What has been pushed out over the upper edge moves down again.
        var top = 0.5;
        for (var i = labels.Count - 1; i >= 0; i--)
        {
            places[i] = Math.Max(places[i], top + (labels[i].Height / 2));
            top = places[i] + (labels[i].Height / 2);
        }

        for (var i = 0; i < labels.Count; i++)
        {
            var label = labels[i];
            canvas.Line(ends[label.First].X, wanted[i], Right + 3, wanted[i], Pen.Thin);
            canvas.Line(Right + 3, wanted[i], Words - 4, places[i], Pen.Thin);
            canvas.Line(Words - 4, places[i], Words - 1.5, places[i], Pen.Thin);
            var x = Words;
            if (label.Mark.Length > 0)
            {
                _ = canvas.Ring(Words + 4, places[i], label.Mark, 10);
                x = Words + 12;
            }

            var first = places[i] - ((label.Lines.Count - 1) * Lettering.LineMm(Size) / 2) + (Lettering.HeightMm(Size) / 2);
            _ = canvas.Lines(x, first, label.Lines, Size);
        }
    }

    private static Fill FillOf(StackItem item) => item switch
    {
        CoreItem => Fill.Dotted,
        InsertItem => Fill.Black,
        PlyItem { Material.Form: ReinforcementForm.Unidirectional } => Fill.Mid,
        PlyItem { Material.Form: ReinforcementForm.Mat } => Fill.CrossHatched,
        PlyItem { Material.Form: ReinforcementForm.Veil } => Fill.White,
        _ => Fill.Pale,
    };

    private static string Describe(BenchContext context, ImmutableArray<Band> bands)
    {
        var names = string.Join("; ", bands.Select(band => $"{band.Mark} {band.Line.Item.Name}"));
        return context.StaysOn ? context.Say($"From what stays up: {names}.") : context.IsWrapped ? context.Say($"From the mandrel outwards: {names}.") : context.Say($"From the mould up: {names}.");
    }
}
