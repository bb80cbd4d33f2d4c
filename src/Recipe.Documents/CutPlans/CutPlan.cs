using System.Collections.Immutable;
using Recipe.Engineering;
using UnitsNet;

namespace Recipe.Documents.CutPlans;

/// <summary>All pieces of a job as they lie on the rolls, to be cut along true lines.</summary>
/// <param name="Name">What is cut.</param>
/// <param name="Sheets">One for each roll or offcut.</param>
internal sealed record CutPlan(string Name, ImmutableArray<CutSheet> Sheets);

/// <summary>A length of roll with its pieces.</summary>
/// <param name="Roll">Name of the roll or offcut.</param>
/// <param name="Width">Usable width.</param>
/// <param name="Length">Length used.</param>
/// <param name="Pieces">Its pieces.</param>
internal sealed record CutSheet(string Roll, Length Width, Length Length, ImmutableArray<CutPiece> Pieces);

/// <summary>A mark on the edge where pieces meet.</summary>
/// <param name="At">On the outline, m.</param>
/// <param name="Inward">The step inwards, of any length but zero.</param>
internal readonly record struct CutNotch(Point2 At, Point2 Inward);

/// <summary>What is drawn on a piece besides its edge.</summary>
/// <param name="Label">Middle of its texts, m.</param>
/// <param name="WarpFrom">Tail of the arrow along the warp, m.</param>
/// <param name="WarpTo">Its point, m.</param>
/// <param name="Notches">Marks on the edge.</param>
internal sealed record CutMarks(Point2 Label, Point2 WarpFrom, Point2 WarpTo, ImmutableArray<CutNotch> Notches);

/// <summary>One piece as it lies: X from the cut end of the roll, Y from the selvedge, m.</summary>
/// <param name="Lies">Its outline.</param>
/// <param name="Marks">What is drawn on it.</param>
/// <param name="Letter">Its letter on the papers.</param>
/// <param name="Ply">Name of its ply.</param>
/// <param name="IsMirrored">Whether it is cut from the other face of the cloth.</param>
/// <param name="MouldSideUp">Whether the face that goes to the mould looks up on the table.</param>
internal sealed record CutPiece(Outline Lies, CutMarks Marks, string Letter, string Ply, bool IsMirrored, bool MouldSideUp)
{
    /// <summary>A piece where a nest put it; its marks are given as the piece was drawn.</summary>
    public static CutPiece At(OutlinePlacement placement, CutMarks drawn, string letter, string ply, bool mouldSideUp)
    {
        var marks = new CutMarks(
            Place(drawn.Label),
            Place(drawn.WarpFrom),
            Place(drawn.WarpTo),
            [.. drawn.Notches.Select(notch => new CutNotch(Place(notch.At), Place(notch.At + notch.Inward) - Place(notch.At)))]);
        return new CutPiece(placement.Lies, marks, letter, ply, placement.IsMirrored, mouldSideUp);

        Point2 Place(Point2 at)
        {
            var face = placement.IsMirrored ? new Point2(at.X, -at.Y) : at;
            var turned = placement.Degrees switch
            {
                90 => new Point2(-face.Y, face.X),
                180 => new Point2(-face.X, -face.Y),
                270 => new Point2(face.Y, -face.X),
                _ => face,
            };
            return turned + placement.Shift;
        }
    }
}
