using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Bags;

/// <summary>
/// The bag from above: part and flange to scale with the dimensions that the plan knows; tape and pleats as a reminder; port, gauge and the lines of an
/// infusion where the words of the recipe put them (<see cref="BagPlaces"/>), and said to be assumed where they do not.
/// </summary>
internal static class BagFromAbove
{
    public const string Name = "bag-plan";

    private const double Width = 180;
    private const double Size = 11;
    private const double MostWidth = 92;
    private const double MostHeight = 56;
    private const int MostPleats = 24;

    /// <summary>The drawing; null where no outline is known, for a bag that is wrapped round its mould, and for a part that is wrapped round it.</summary>
    public static Drawing? Draw(BenchContext context)
    {
        if (context.IsWrapped || context.Part.Bag is not { IsEnvelope: false } bag || PartOutline.Of(context.Plan.Geometry?.Shape) is not { FromBeside: false } outline)
        {
            return null;
        }

        var flange = context.Part.Mould?.Flange?.Value;
        var known = flange is { } width && width > Length.Zero;

        // Without a flange in the recipe the tape still lies somewhere: a fifth of the shorter side, dashed.
        var border = known ? flange!.Value : Length.FromMillimeters(Math.Min(outline.Length.Millimeters, outline.Width.Millimeters) * 0.2);
        var whole = outline with { Length = outline.Length + (2 * border), Width = outline.Width + (2 * border) };
        var scale = whole.ScaleTo(MostWidth, MostHeight);
        var (wide, high) = (whole.Length.Millimeters * scale, whole.Width.Millimeters * scale);
        var edge = border.Millimeters * scale;
        const double left = 16;
        const double top = 10;
        var fittings = BagFittings.Of(context, bag);
        var key = Key(context, bag, fittings, left + wide + 30);
        var canvas = new Canvas(Width, Math.Max(Math.Max(high + top + 22, 72), key.Sum(entry => entry.HeightMm) + 12));
        var (x, y) = (left + edge, top + edge);
        canvas.Add(new PathShape(outline.On(x, y, scale, border), known ? Pen.Firm : new Pen(0.3, Dashed: true), Closed: true, Fill.White));
        var tape = outline.On(x, y, scale, border * 0.6);
        canvas.Add(new PathShape(tape, new Pen(1.4, Dashed: true), Closed: true));
        canvas.Add(new PathShape(outline.On(x, y, scale), new Pen(0.7), Closed: true, Fill.Pale));
        Pleats(canvas, bag, tape, left + (wide / 2), top + (high / 2));
        var sheet = new BagGround(x, y, outline.Length.Millimeters * scale, outline.Width.Millimeters * scale, edge)
        {
            Rim = outline.On(x, y, scale, Length.FromMillimeters(BagGround.GapOf(edge) / scale)),
        };
        fittings.Draw(canvas, context, sheet);
        if (context.Process != Process.Infused)
        {
            _ = canvas.Text(x + (sheet.Length / 2), y + (sheet.Width / 2), context.Say("part"), Size, Anchor.Middle);
        }

        canvas.Across(x, x + (outline.Length.Millimeters * scale), top + high + 7, context.Text.Size(outline.Length).Main, Size);
        canvas.Down(left + wide + 4, y, y + (outline.Width.Millimeters * scale), context.Text.Size(outline.Width).Main, Size);
        if (known)
        {
            canvas.Across(left, x, top - 4, context.Say($"flange {context.Text.Size(flange!.Value).Main}"), Size);
        }

        var note = context.Say($"Part and flange are to scale, 1 : {Numbers.Significant(1 / scale, 2)}.");
        _ = canvas.Text(left, top + high + 17, context.Bags.Length > 1 ? $"{note} {context.Say($"Drawn for {context.Bags[0]}; {context.Bags[^1]} is its mirror image.")}" : note, Size - 1);
        Write(canvas, key, left + wide + 30);
        return canvas.Draw(Name, context.Say("The bag from above"), Describe(context, outline, fittings));
    }

    // Evenly along the tape: small triangles, their points outwards.
    private static void Pleats(Canvas canvas, Bag bag, IReadOnlyList<Spot> tape, double middleX, double middleY)
    {
        var count = Math.Clamp(bag.Pleats?.Value ?? 4, 0, MostPleats);
        var lengths = tape.Select((spot, i) => Distance(spot, tape[(i + 1) % tape.Count])).ToList();
        var all = lengths.Sum();
        for (var k = 0; k < count; k++)
        {
            // Corners first: the first point of the outline is one, or the far end of a round one.
            var (along, i) = (all * (k + (tape.Count > 8 ? 0.5 : 0)) / count, 0);
            while (i < lengths.Count - 1 && along > lengths[i])
            {
                along -= lengths[i];
                i++;
            }

            var (a, b) = (tape[i], tape[(i + 1) % tape.Count]);
            var share = lengths[i] > 0 ? along / lengths[i] : 0;
            var (px, py) = (a.X + ((b.X - a.X) * share), a.Y + ((b.Y - a.Y) * share));
            var (dx, dy) = (px - middleX, py - middleY);
            var length = Math.Max(Math.Sqrt((dx * dx) + (dy * dy)), 1e-6);
            var (ux, uy) = (dx / length, dy / length);
            canvas.Add(new PathShape(
                [new(px + (ux * 2.5), py + (uy * 2.5)), new(px - (ux * 2) - (uy * 2), py - (uy * 2) + (ux * 2)), new(px - (ux * 2) + (uy * 2), py - (uy * 2) - (ux * 2))],
                Pen.Firm,
                Closed: true,
                Fill.White));
        }
    }

    private static double Distance(Spot a, Spot b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    private sealed record KeyEntry(string Mark, IReadOnlyList<string> Lines)
    {
        public double HeightMm => Math.Max(8.5, (Lines.Count * Lettering.LineMm(Size)) + 2.5);
    }

    private static List<KeyEntry> Key(BenchContext context, Bag bag, BagFittings fittings, double x)
    {
        List<KeyEntry> entries = [.. fittings.Key(context).Select(entry => Entry(entry.Mark, entry.What))];
        entries.Add(Entry("", context.Say("tape")));
        entries.Add(Entry("^", bag.Pleats is { } count ? Words.Count(count.Value, "pleat", "pleats") : context.Say("pleat")));
        return entries;

        KeyEntry Entry(string mark, string what) => new(mark, [.. TextLines.Wrap(what, Width - x - 10, Size)]);
    }

    private static void Write(Canvas canvas, List<KeyEntry> key, double x)
    {
        var y = 8.0;
        foreach (var entry in key)
        {
            switch (entry.Mark)
            {
                case "":
                    canvas.Line(x - 1, y, x + 7, y, new Pen(1.4, Dashed: true));
                    break;
                case "^":
                    canvas.Add(new PathShape([new(x + 3, y - 2.5), new(x + 1, y + 2), new(x + 5, y + 2)], Pen.Firm, Closed: true, Fill.White));
                    break;
                default:
                    _ = canvas.Ring(x + 3, y, entry.Mark);
                    break;
            }

            _ = canvas.Lines(x + 9, y + 1.5, entry.Lines, Size);
            y += entry.HeightMm;
        }
    }

    private static string Describe(BenchContext context, PartOutline outline, BagFittings fittings) => context.Say(
        $"The part, {context.Text.Sheet(outline.Length, outline.Width).Main}, in its flange, with tape and pleats round it. Drawn: {string.Join("; ", fittings.Key(context).Select(entry => entry.What))}. The list says their places.");
}
