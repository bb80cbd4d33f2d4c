using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Engineering;

namespace Recipe.Documents.CutPlans;

/// <summary>What a line of a cut plan is for.</summary>
internal enum CutLayer
{
    /// <summary>The edge of the cloth: not cut.</summary>
    Roll,

    /// <summary>To be cut.</summary>
    Cut,

    /// <summary>To be drawn: arrows along the warp, notches.</summary>
    Mark,

    /// <summary>Words.</summary>
    Text,
}

/// <summary>A shape and what it is for.</summary>
internal readonly record struct CutShape(CutLayer Layer, Shape Shape);

/// <summary>A length of roll as shapes, mm in true size: x from the cut end, y downwards from the far selvedge.</summary>
internal static class CutShapes
{
    public const string Caution = "Print at 100 %; measure the check square before cutting.";

    private const double NotchMm = 6;
    private const double HeadMm = 6;
    private const double LetterPt = 28;
    private const double PlyPt = 12;

    private static readonly Pen Hair = new(0.25);

    public static ImmutableArray<CutShape> Of(CutSheet sheet)
    {
        var (width, length) = (sheet.Width.Millimeters, sheet.Length.Millimeters);
        var shapes = ImmutableArray.CreateBuilder<CutShape>();
        shapes.Add(new(CutLayer.Roll, PathShape.Box(0, 0, length, width, Hair)));
        foreach (var piece in sheet.Pieces)
        {
            shapes.Add(new(CutLayer.Cut, new PathShape([.. piece.Lies.Points.Select(at => Place(at, width))], Hair, Closed: true)));
            Arrow(shapes, Place(piece.Marks.WarpFrom, width), Place(piece.Marks.WarpTo, width));
            foreach (var notch in piece.Marks.Notches)
            {
                var (at, length1) = (Place(notch.At, width), notch.Inward.Norm);
                shapes.Add(new(CutLayer.Mark, PathShape.Line(at.X, at.Y, at.X + (notch.Inward.X / length1 * NotchMm), at.Y - (notch.Inward.Y / length1 * NotchMm), Hair)));
            }

            Words(shapes, piece, Place(piece.Marks.Label, width));
        }

        return shapes.ToImmutable();
    }

    private static Spot Place(Point2 at, double widthMm) => new(at.X * 1000, widthMm - (at.Y * 1000));

    // Lines only: a pen or a knife fills nothing.
    private static void Arrow(ImmutableArray<CutShape>.Builder shapes, Spot from, Spot to)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length == 0)
        {
            return;
        }

        var (ux, uy) = (dx / length * HeadMm, dy / length * HeadMm);
        shapes.Add(new(CutLayer.Mark, PathShape.Line(from.X, from.Y, to.X, to.Y, Hair)));
        shapes.Add(new(CutLayer.Mark, PathShape.Line(to.X, to.Y, to.X - ux - (uy * 0.4), to.Y - uy + (ux * 0.4), Hair)));
        shapes.Add(new(CutLayer.Mark, PathShape.Line(to.X, to.Y, to.X - ux + (uy * 0.4), to.Y - uy - (ux * 0.4), Hair)));
    }

    private static void Words(ImmutableArray<CutShape>.Builder shapes, CutPiece piece, Spot at)
    {
        var room = Math.Max(piece.Lies.Along, piece.Lies.Across) * 1000 * 0.8;
        var line = Lettering.LineMm(PlyPt);
        var side = (piece.MouldSideUp ? "mould side up" : "mould side down") + (piece.IsMirrored ? ", mirrored" : "");
        shapes.Add(new(CutLayer.Text, new TextShape(new(at.X, at.Y - (line / 2)), piece.Letter, LetterPt, Anchor.Middle, Strong: true)));
        Add(piece.Ply, at.Y + (line / 2));
        Add(side, at.Y + (line * 3 / 2));

        void Add(string text, double y)
        {
            var fitted = Fitted.To(text, PlyPt, room);
            if (fitted.Length > 0)
            {
                shapes.Add(new(CutLayer.Text, new TextShape(new(at.X, y), fitted, PlyPt, Anchor.Middle)));
            }
        }
    }
}
