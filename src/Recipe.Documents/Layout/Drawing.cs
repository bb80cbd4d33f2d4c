using System.Collections.Immutable;

namespace Recipe.Documents.Layout;

/// <summary>A point of a drawing, mm from its upper left corner, y downwards.</summary>
internal readonly record struct Spot(double X, double Y);

/// <summary>A line as a pen draws it: black, on paper.</summary>
/// <param name="WidthMm">Its width, mm.</param>
/// <param name="Dashed">Whether it is dashed.</param>
internal readonly record struct Pen(double WidthMm, bool Dashed = false)
{
    /// <summary>Thin lines: dimensions, grids.</summary>
    public static Pen Thin => new(0.2);

    /// <summary>Outlines.</summary>
    public static Pen Firm => new(0.5);

    /// <summary>What must be seen first.</summary>
    public static Pen Bold => new(1.0);
}

/// <summary>What an area is filled with. Never a colour: a black-and-white copy must say as much.</summary>
internal enum Fill
{
    None,
    White,

    /// <summary>A tint light enough to write on.</summary>
    Pale,

    /// <summary>A tint that still lets black letters be read.</summary>
    Mid,
    Black,

    /// <summary>Diagonal lines: what is cut through and solid.</summary>
    Hatched,

    /// <summary>Diagonal lines both ways.</summary>
    CrossHatched,

    /// <summary>Dots: felt, foam.</summary>
    Dotted,
}

/// <summary>Which point of a text stands at its place.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>A piece of a drawing. Later ones lie over earlier ones.</summary>
internal abstract record Shape;

/// <summary>A line through points, or the outline and area of a figure when it is closed.</summary>
internal sealed record PathShape(ImmutableArray<Spot> Points, Pen? Pen, bool Closed = false, Fill Fill = Fill.None) : Shape
{
    /// <summary>A straight line.</summary>
    public static PathShape Line(double x1, double y1, double x2, double y2, Pen pen) => new([new(x1, y1), new(x2, y2)], pen);

    /// <summary>A rectangle.</summary>
    public static PathShape Box(double x, double y, double width, double height, Pen? pen, Fill fill = Fill.None) =>
        new([new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)], pen, Closed: true, fill);
}

/// <summary>A circle.</summary>
internal sealed record CircleShape(Spot Centre, double RadiusMm, Pen? Pen, Fill Fill = Fill.None) : Shape;

/// <summary>
/// A line of text. <see cref="At"/> is the left end, the middle or the right end of its base line; it may be turned by a quarter
/// counter-clockwise, to stand along a vertical axis.
/// </summary>
internal sealed record TextShape(Spot At, string Text, double SizePt, Anchor Anchor = Anchor.Start, bool Strong = false, bool Upright = false) : Shape;

/// <summary>
/// A drawing, in millimetres on paper, black on white. It never says what the text around it does not say too: a sheet must work when
/// its drawings cannot be seen.
/// </summary>
/// <param name="Name">A short name for file names, letters and hyphens: <c>bag-section</c>.</param>
/// <param name="Title">Its caption.</param>
/// <param name="Description">What it shows, in one or two sentences, for those who cannot see it.</param>
/// <param name="WidthMm">Width on paper, mm; at most what a page holds.</param>
/// <param name="HeightMm">Height on paper, mm.</param>
/// <param name="Shapes">Its pieces, the lowest first.</param>
internal sealed record Drawing(string Name, string Title, string Description, double WidthMm, double HeightMm, ImmutableArray<Shape> Shapes) : Block;
