using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Bags;

/// <summary>
/// The bag from above: part and flange to scale with the dimensions that the plan knows; tape, pleats, port, gauge and the lines of an infusion as a
/// reminder, since the recipe gives their places in words.
/// </summary>
internal static class BagFromAbove
{
    public const string Name = "bag-plan";

    private const double Width = 180;
    private const double Size = 11;
    private const double MostWidth = 92;
    private const double MostHeight = 56;
    private const int MostPleats = 24;

    /// <summary>The drawing; null where no outline is known, and for a bag that is wrapped round its mould.</summary>
    public static Drawing? Draw(BenchContext context)
    {
        if (context.Part.Bag is not { IsEnvelope: false } bag || PartOutline.Of(context.Plan.Geometry?.Shape) is not { FromBeside: false } outline)
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
        var canvas = new Canvas(Width, Math.Max(high + top + 22, 72));
        var (x, y) = (left + edge, top + edge);
        canvas.Add(new PathShape(outline.On(x, y, scale, border), known ? Pen.Firm : new Pen(0.3, Dashed: true), Closed: true, Fill.White));
        var tape = outline.On(x, y, scale, border * 0.6);
        canvas.Add(new PathShape(tape, new Pen(1.4, Dashed: true), Closed: true));
        canvas.Add(new PathShape(outline.On(x, y, scale), new Pen(0.7), Closed: true, Fill.Pale));
        Pleats(canvas, bag, tape, left + (wide / 2), top + (high / 2));
        // Port and gauge face one another over the part.
        _ = canvas.Ring(left + (edge * 0.35), top + (high / 2), "P");
        _ = canvas.Ring(left + wide - (edge * 0.35), top + (high / 2), "G");
        if (context.Process == Process.Infused)
        {
            Lines(canvas, context, outline, x, y, scale, edge);
        }
        else
        {
            _ = canvas.Text(x + (outline.Length.Millimeters * scale / 2), y + (outline.Width.Millimeters * scale / 2), context.Say("part"), Size, Anchor.Middle);
        }

        canvas.Across(x, x + (outline.Length.Millimeters * scale), top + high + 7, context.Text.Size(outline.Length).Main, Size);
        canvas.Down(left + wide + 4, y, y + (outline.Width.Millimeters * scale), context.Text.Size(outline.Width).Main, Size);
        if (known)
        {
            canvas.Across(left, x, top - 4, context.Say($"flange {context.Text.Size(flange!.Value).Main}"), Size);
        }

        _ = canvas.Text(left, top + high + 17, context.Say($"Part and flange are to scale, 1 : {Numbers.Significant(1 / scale, 2)}."), Size - 1);
        Key(canvas, context, bag, left + wide + 30);
        return canvas.Draw(Name, context.Say("The bag from above"), Describe(context, outline));
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

    // The feed on one long side, the vent on the other; the way between them where the recipe says it.
    private static void Lines(Canvas canvas, BenchContext context, PartOutline outline, double x, double y, double scale, double edge)
    {
        var (length, width) = (outline.Length.Millimeters * scale, outline.Width.Millimeters * scale);
        var gap = Math.Min(edge * 0.25, 3);
        canvas.Line(x, y + width + gap, x + length, y + width + gap, new Pen(1.6));
        canvas.Line(x, y - gap, x + length, y - gap, new Pen(0.6));
        canvas.Arrow(x + (length * 0.3), y + width - 2, x + (length * 0.3), y + 2, Pen.Firm);
        _ = canvas.Ring(x + (length * 0.85), y + width - 5, "F");
        _ = canvas.Ring(x + (length * 0.85), y + 5, "V");
        if (context.Part.Infusion?.Path is { } path)
        {
            _ = canvas.Text(x + (length * 0.3) + 2, y + (width / 2) + 1.5, context.Say($"resin runs {context.Text.Written(path, value => context.Text.Size(value)).Main}"), Size);
        }
    }

    private static void Key(Canvas canvas, BenchContext context, Bag bag, double x)
    {
        var entries = new List<(string Mark, string What)>
        {
            ("P", context.Say("port on its pad")),
            ("G", context.Say("gauge, far side")),
        };
        if (context.Process == Process.Infused)
        {
            entries.Add(("F", context.Say("feed line")));
            entries.Add(("V", context.Say("vent line")));
        }

        var y = 8.0;
        foreach (var (mark, what) in entries)
        {
            _ = canvas.Ring(x + 3, y, mark);
            _ = canvas.Text(x + 9, y + 1.5, what, Size);
            y += 8.5;
        }

        canvas.Line(x - 1, y, x + 7, y, new Pen(1.4, Dashed: true));
        _ = canvas.Text(x + 9, y + 1.5, context.Say("tape"), Size);
        y += 8.5;
        canvas.Add(new PathShape([new(x + 3, y - 2.5), new(x + 1, y + 2), new(x + 5, y + 2)], Pen.Firm, Closed: true, Fill.White));
        _ = canvas.Text(x + 9, y + 1.5, bag.Pleats is { } count ? Words.Count(count.Value, "pleat", "pleats") : context.Say("pleat"), Size);
    }

    private static string Describe(BenchContext context, PartOutline outline) => context.Say(
        $"The part, {context.Text.Sheet(outline.Length, outline.Width).Main}, in its flange, with tape and pleats round it, the port on one side and the gauge opposite. The list says their places.");
}
