using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Drawings;

/// <summary>
/// The outline of a part as one looks at it: from the bag side into the mould; of a tube or cone, from beside it. 0 degrees, along the part, points
/// to the right.
/// </summary>
/// <param name="Corners">Its outline in mm of the part, y downwards, from the upper left of its box.</param>
/// <param name="Length">Along the part, to the right.</param>
/// <param name="Width">Across it.</param>
/// <param name="FromBeside">Whether one looks at it from beside.</param>
/// <param name="IsGuess">Whether only length and width are known and not the outline.</param>
internal sealed record PartOutline(ImmutableArray<Spot> Corners, Length Length, Length Width, bool FromBeside, bool IsGuess)
{
    private const int RoundSteps = 72;

    /// <summary>The outline of a surface; null when its length and width are not known.</summary>
    public static PartOutline? Of(SurfaceShape? shape) => shape switch
    {
        FlatShape flat => Rectangle(flat.Length, flat.Width),
        BoxShape box => Rectangle(box.Length, box.Width),
        DiscShape disc => Ellipse(disc.Diameter, disc.Diameter),
        SphericalCapShape cap => Ellipse(cap.Diameter, cap.Diameter),
        ParaboloidShape bowl => Ellipse(bowl.Diameter, bowl.Diameter),
        HalfEllipsoidShape egg => Ellipse(egg.Length, egg.Width),
        CylinderShape tube => Rectangle(tube.Length, tube.Diameter) with { FromBeside = true },
        ConeShape cone => Cone(cone),
        GivenAreaShape { Length: { } length, Width: { } width } => Rectangle(length, width) with { IsGuess = true },
        _ => null,
    } is { Length.Millimeters: > 0 and < 1e6, Width.Millimeters: > 0 and < 1e6 } outline ? outline : null;

    /// <summary>How many mm on paper a millimetre of the part takes to fit into a box.</summary>
    public double ScaleTo(double widthMm, double heightMm) => Math.Min(widthMm / Length.Millimeters, heightMm / Width.Millimeters);

    /// <summary>The outline on paper, grown by a border of the part, with the upper left of the ungrown box at a point.</summary>
    public ImmutableArray<Spot> On(double x, double y, double scale, Length border = default)
    {
        var (halfLength, halfWidth) = (Length.Millimeters / 2, Width.Millimeters / 2);
        var (growX, growY) = (1 + (border.Millimeters / halfLength), 1 + (border.Millimeters / halfWidth));
        return [.. Corners.Select(corner => new Spot(
            x + ((halfLength + ((corner.X - halfLength) * growX)) * scale),
            y + ((halfWidth + ((corner.Y - halfWidth) * growY)) * scale)))];
    }

    private static PartOutline Rectangle(Length length, Length width) =>
        new([new(0, 0), new(length.Millimeters, 0), new(length.Millimeters, width.Millimeters), new(0, width.Millimeters)], length, width, false, false);

    private static PartOutline Ellipse(Length length, Length width)
    {
        var (a, b) = (length.Millimeters / 2, width.Millimeters / 2);
        return new(
            [.. Enumerable.Range(0, RoundSteps).Select(i => i * 2 * Math.PI / RoundSteps).Select(t => new Spot(a + (a * Math.Cos(t)), b - (b * Math.Sin(t))))],
            length,
            width,
            false,
            false);
    }

    private static PartOutline Cone(ConeShape cone)
    {
        var (large, small) = (cone.BaseDiameter.Millimeters, cone.TopDiameter.Millimeters);
        var width = Math.Max(large, small);
        var length = cone.Length.Millimeters;
        return new(
            [new(0, (width - large) / 2), new(length, (width - small) / 2), new(length, (width + small) / 2), new(0, (width + large) / 2)],
            cone.Length,
            Length.FromMillimeters(width),
            true,
            false);
    }
}
