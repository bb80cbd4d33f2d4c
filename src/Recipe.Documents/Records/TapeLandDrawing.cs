using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Records;

/// <summary>The mould from above, not to scale: face, flange, and the land that the sealant tape needs.</summary>
internal static class TapeLandDrawing
{
    private const double Pt = 9;

    public static Drawing Of(PaperContext context, Mould mould)
    {
        var (say, text) = (context.Wording, context.Text);
        var flange = mould.Flange is { } wide ? say.Say($"flange {text.Written(wide, value => text.Size(value)).Main}") : say.Say("flange: measure");
        var land = mould.TapeLand?.Value switch
        {
            TapeLand.Bare => say.Say("tape land, bare of release"),
            TapeLand.Released => say.Say("tape land, released like the face"),
            _ => say.Say("tape land, keep it bare"),
        };
        ImmutableArray<Shape> shapes =
        [
            PathShape.Box(1, 1, 110, 52, Pen.Firm),
            PathShape.Box(4, 4, 104, 46, new Pen(2.5), Fill.White),
            PathShape.Box(16, 13, 80, 28, Pen.Firm, Fill.Hatched),
            PathShape.Box(44, 23, 24, 8, null, Fill.White),
            new TextShape(new Spot(56, 28.6), say.Say("face"), Pt + 2, Anchor.Middle, Strong: true),
            PathShape.Line(108, 8, 120, 8, Pen.Thin),
            new TextShape(new Spot(121, 9.2), Fitted.To(land, Pt, 58), Pt),
            PathShape.Line(102, 27, 120, 27, Pen.Thin),
            new TextShape(new Spot(121, 28.2), Fitted.To(flange, Pt, 58), Pt),
            PathShape.Line(96, 38, 120, 46, Pen.Thin),
            new TextShape(new Spot(121, 47.2), Fitted.To(say.Say("trim line inside the face"), Pt, 58), Pt),
        ];
        return new Drawing(
            "tape-land",
            say.Say("From above, not to scale: mark known leak spots with a cross"),
            say.Say($"The face of the mould, round it its flange, and along the outer edge of the flange the land for the sealant tape. {Words.Sentence(flange)} {Words.Sentence(land)}"),
            180,
            54,
            shapes);
    }
}
