using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Records;

/// <summary>The mandrel from beside, not to scale: the part wrapped round it, its trim lines, and the bare ends.</summary>
internal static class MandrelDrawing
{
    private const double Pt = 9;
    private const double Left = 2;
    private const double Right = 114;
    private const double Middle = 27;

    public static Drawing Of(PaperContext context, Mould mould)
    {
        var say = context.Wording;
        var taper = 2.0 * (context.Tube?.Taper ?? 0);
        var (a, b) = (10 + taper, 10 - taper);
        var end = !context.HasTapeLand ? say.Say("bare end: hold it here")
            : mould.TapeLand?.Value == TapeLand.Released ? say.Say("end for the tape, released like the face")
            : say.Say("end for the tape, keep it bare");
        ImmutableArray<Shape> shapes =
        [
            Round(Left, Right, 0, Pen.Firm, Fill.White),
            Round(24, 92, 3, new Pen(0.7), Fill.Pale),
            new TextShape(new Spot(58, Middle + 1.6), say.Say("part"), Pt + 2, Anchor.Middle, Strong: true),
            PathShape.Line(32, 8, 32, 46, new Pen(0.3, Dashed: true)),
            PathShape.Line(84, 8, 84, 46, new Pen(0.3, Dashed: true)),
            PathShape.Line(84, 8, 120, 8, Pen.Thin),
            new TextShape(new Spot(121, 9.2), Fitted.To(say.Say("trim line, one near each end"), Pt, 58), Pt),
            PathShape.Line(104, Middle, 120, Middle, Pen.Thin),
            new TextShape(new Spot(121, Middle + 1.2), Fitted.To(end, Pt, 58), Pt),
        ];
        return new Drawing(
            "mandrel",
            say.Say("From beside, not to scale: mark dents and scratches with a cross"),
            say.Say($"The mandrel with the part wrapped round it, a trim line near each end of the part, and both ends of the mandrel bare. {Words.Sentence(end)}"),
            180,
            54,
            shapes);

        PathShape Round(double from, double to, double wall, Pen pen, Fill fill)
        {
            var (first, last) = (At(from) + wall, At(to) + wall);
            return new PathShape([new(from, Middle - first), new(to, Middle - last), new(to, Middle + last), new(from, Middle + first)], pen, Closed: true, fill);
        }

        double At(double x) => a + ((b - a) * (x - Left) / (Right - Left));
    }
}
