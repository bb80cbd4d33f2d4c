using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Bags;

/// <summary>
/// A cut through mould, laminate and bag, not to scale: the layers numbered from the part outwards, tape, port on its pad or its line, gauge on the far side. A layer
/// that is larger than the laminate is drawn larger, a smaller one smaller.
/// </summary>
internal static class BagSketch
{
    public const string Name = "bag-section";

    private const double Width = 180;
    private const double Size = 11;
    private const double Column = 98;
    private const double Middle = 44;
    private const double HalfPart = 17;
    private const double LayerHeight = 3.2;
    private const double LayerGap = 1.6;
    private const double Smallest = 9;
    private const double Largest = 27;

    /// <summary>The section; null without layers.</summary>
    public static Drawing? Draw(BenchContext context)
    {
        if (context.Part.Bag is not { Layers.IsEmpty: false } bag)
        {
            return null;
        }

        var labels = bag.Layers.Select((layer, i) => Label(context, layer, i)).ToList();
        var stack = bag.Layers.Length * (LayerHeight + LayerGap);
        const double above = 20;
        const double mould = 14;
        var texts = labels.Sum(label => HeightOf(label)) + 14;
        var height = Math.Max(above + stack + 8 + mould + 8, texts + 8);
        var canvas = new Canvas(Width, height);
        var floor = height - mould - 8;
        Mould(canvas, floor, mould, bag.IsEnvelope);
        canvas.Add(PathShape.Box(Middle - HalfPart, floor - 3, 2 * HalfPart, 3, Pen.Firm, Fill.Black));

        var ends = new List<Spot>();
        var y = floor - 3;
        var roof = y;
        for (var i = 0; i < bag.Layers.Length; i++)
        {
            y -= LayerGap + LayerHeight;
            var layer = bag.Layers[i];
            var half = HalfOf(context, i);
            if (layer.Class == LayerClass.BagFilm)
            {
                Film(canvas, y + (LayerHeight / 2), floor, mould, bag.IsEnvelope);
                ends.Add(new Spot(Middle + Largest, y + (LayerHeight / 2)));
            }
            else
            {
                canvas.Add(PathShape.Box(Middle - half, y, 2 * half, LayerHeight, new Pen(0.3), FillOf(layer.Class)));
                ends.Add(new Spot(Middle + half, y + (LayerHeight / 2)));
            }

            roof = y;
        }

        Fittings(canvas, context, bag, floor, roof);
        Leaders(canvas, labels, ends, floor);
        _ = canvas.Text(2, height - 1.5, context.IsWrapped ? context.Say("Not to scale. Hatched: the mandrel. Black: the laminate.") : context.Say("Not to scale. Black: the laminate. Read from it outwards."), Size - 1);
        return canvas.Draw(Name, context.IsWrapped ? context.Say("The bag, cut lengthwise through one wall") : context.Say("The bag, cut through"), Describe(context, bag));
    }

    /// <summary>What a layer is larger or smaller than: "+15 mm beyond the ply".</summary>
    public static string? Relation(BenchContext context, BagLayer layer)
    {
        if (layer.Beyond is { } beyond)
        {
            return context.Say($"+{context.Text.Written(beyond, value => context.Text.Size(value))} beyond the ply");
        }

        if (layer.Smaller is { } smaller)
        {
            var inside = context.Text.Written(smaller, value => context.Text.Size(value));
            return layer.Class == LayerClass.FlowMedium ? context.Say($"ends {inside} inside the ply edge") : context.Say($"{inside} smaller than the layer below");
        }

        return layer.Class == LayerClass.BagFilm ? context.Say("to the tape, slack in the pleats") : null;
    }

    /// <summary>The hottest a material stands; null when not known.</summary>
    public static string? Limit(BenchContext context, Material material) =>
        material.HeatLimit is { } limit ? context.Text.Written(limit, value => context.Text.Temperature(value)).ToString() : null;

    private sealed record LayerLabel(string Mark, IReadOnlyList<string> Lines);

    private static double HeightOf(LayerLabel label) => Math.Max(label.Lines.Count * Lettering.LineMm(Size), 6.5) + 1.2;

    private static LayerLabel Label(BenchContext context, BagLayer layer, int index)
    {
        const double width = Width - Column - 11;
        var more = new[] { Relation(context, layer), Limit(context, layer.Material) is { } limit ? context.Say($"stands {limit}") : null }.OfType<string>().ToList();
        return new LayerLabel(
            Numbers.Whole(index + 1),
            [.. TextLines.Wrap(BagStation.Describe(layer).Plain, width, Size), .. more.Count == 0 ? [] : TextLines.Wrap(string.Join("; ", more), width, Size)]);
    }

    // Sizes of the plan against the size of the laminate, drawn so that larger is larger and never to scale.
    private static double HalfOf(BenchContext context, int index)
    {
        if (context.Plan.Bag is not { } plan || index >= plan.Layers.Length || context.Plan.Geometry is not { } surface)
        {
            return HalfPart;
        }

        var trim = context.Part.Trim?.Value ?? Length.Zero;
        var beyond = (plan.Layers[index].Length.Value - surface.DevelopedLength).Millimeters / 2;
        return Math.Clamp(HalfPart + ((beyond - trim.Millimeters) * 0.2), Smallest, Largest - 3);
    }

    private static void Mould(Canvas canvas, double floor, double height, bool envelope)
    {
        var (from, to) = envelope ? (Middle - Largest, Middle + Largest) : (2, Middle + 40);
        canvas.Add(PathShape.Box(from, floor, to - from, height, Pen.Firm, Fill.Hatched));
    }

    private static void Film(Canvas canvas, double y, double floor, double mould, bool envelope)
    {
        var foot = envelope ? floor + mould + 2 : floor - 2;
        var reach = envelope ? Largest + 3 : Largest + 5;
        ImmutableArray<Spot> line = [new(Middle - reach, foot), new(Middle - Largest, y), new(Middle + Largest, y), new(Middle + reach, foot)];
        canvas.Add(new PathShape(line, new Pen(0.8), Closed: envelope));
        if (!envelope)
        {
            canvas.Add(PathShape.Box(Middle - reach - 4, floor - 2, 5, 2, null, Fill.Black));
            canvas.Add(PathShape.Box(Middle + reach - 1, floor - 2, 5, 2, null, Fill.Black));
        }
    }

    private static void Fittings(Canvas canvas, BenchContext context, Bag bag, double floor, double roof)
    {
        var left = Middle - Largest - 1;
        if (!bag.IsEnvelope)
        {
            _ = canvas.Ring(8, floor - 6.5, "T");
        }

        // A port inside the bag, away from the part, on what it sits on; the hose goes to the catch pot.
        if (!bag.Ports.IsEmpty || bag.Hose is not null)
        {
            var x = left + 5;
            Seat(canvas, BagStation.SeatOf(context, bag.Ports.FirstOrDefault()), x, roof + LayerHeight - 0.6);
            canvas.Line(x, roof + 1, x, 9, new Pen(1.2));
            canvas.Line(x, 9, 5, 9, new Pen(1.2));
            _ = canvas.Ring(x, Math.Max(roof - 4, 14), "P");
            if (bag.Hose is not null || bag.CatchPot is not null)
            {
                _ = canvas.Ring(10, 4.5, "H");
            }

            if (bag.CatchPot is not null)
            {
                canvas.Add(PathShape.Box(2, 9, 5, 7, Pen.Firm, Fill.White));
                _ = canvas.Ring(4.5, 20, "C");
            }
        }

        if (bag.GaugeAt is not null || !bag.Ports.IsEmpty)
        {
            var x = Middle + Largest - 2;
            canvas.Line(x, roof + 1, x, 12, new Pen(0.5));
            canvas.Add(new CircleShape(new Spot(x, 9), 3.4, Pen.Firm, Fill.White));
            canvas.Line(x, 9, x + 1.8, 7.2, Pen.Firm);
            _ = canvas.Ring(x - 8.5, 9, "G");
        }
    }

    // A pad of breather is felt; the line of an infusion is a tube, cut through; on the bare flange or the part there is nothing between.
    private static void Seat(Canvas canvas, PortSeat seat, double x, double y)
    {
        if (seat == PortSeat.Breather)
        {
            canvas.Add(PathShape.Box(x - 3, y, 6, 2.6, new Pen(0.3), Fill.Dotted));
        }
        else if (seat == PortSeat.Line)
        {
            canvas.Add(new CircleShape(new Spot(x, y + 1.5), 1.5, Pen.Firm, Fill.White));
        }
    }

    private static void Leaders(Canvas canvas, List<LayerLabel> labels, List<Spot> ends, double floor)
    {
        var places = new double[labels.Count];
        var bottom = floor + 6;
        for (var i = 0; i < labels.Count; i++)
        {
            places[i] = Math.Min(ends[i].Y, bottom - (HeightOf(labels[i]) / 2));
            bottom = places[i] - (HeightOf(labels[i]) / 2);
        }

        var top = 0.5;
        for (var i = labels.Count - 1; i >= 0; i--)
        {
            places[i] = Math.Max(places[i], top + (HeightOf(labels[i]) / 2));
            top = places[i] + (HeightOf(labels[i]) / 2);
        }

        for (var i = 0; i < labels.Count; i++)
        {
            canvas.Line(ends[i].X, ends[i].Y, Middle + Largest + 8, ends[i].Y, Pen.Thin);
            canvas.Line(Middle + Largest + 8, ends[i].Y, Column - 3, places[i], Pen.Thin);
            _ = canvas.Ring(Column + 3, places[i], labels[i].Mark, 10);
            _ = canvas.Lines(
                Column + 10,
                places[i] - ((labels[i].Lines.Count - 1) * Lettering.LineMm(Size) / 2) + (Lettering.HeightMm(Size) / 2),
                labels[i].Lines,
                Size);
        }
    }

    private static Fill FillOf(LayerClass layer) => layer switch
    {
        LayerClass.Bleeder or LayerClass.Breather => Fill.Dotted,
        LayerClass.FlowMedium => Fill.CrossHatched,
        LayerClass.Caul => Fill.Mid,
        LayerClass.ReleaseFilm => Fill.White,
        _ => Fill.Pale,
    };

    private static string Describe(BenchContext context, Bag bag) =>
        context.Say($"From the part outwards: {string.Join("; ", bag.Layers.Select((layer, i) => $"{Numbers.Whole(i + 1)} {Words.Of(layer.Class)}"))}. The list under the drawings says the same.");
}
