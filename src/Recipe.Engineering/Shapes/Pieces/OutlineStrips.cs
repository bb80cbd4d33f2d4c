using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>An outline wider than the roll, cut into strips along the warp that lap each other.</summary>
/// <param name="Strips">The pieces by rising strip; a strip across a bay has several.</param>
/// <param name="Joins">Y of the middle of each lap, m.</param>
public sealed record OutlineStrips(ImmutableArray<OutlineStrip> Strips, ImmutableArray<double> Joins)
{
    private const int MostStrips = 10_000;

    // Strips that miss by less than this share of the roll's width reach: it is rounding, not cloth.
    private const double RelativeSlack = 1e-9;

    /// <summary>Cuts an outline.</summary>
    /// <param name="outline">The outline, warp along X.</param>
    /// <param name="rollWidth">Usable width of the roll, above 0.</param>
    /// <param name="overlap">Width by which strips lap, 0 (edge to edge) or more and less than the roll's width.</param>
    /// <param name="stagger">How far the joins move from ply to ply, 0 or more.</param>
    /// <param name="ply">Which ply of the same outline, from 0. The joins come back where they were once they have moved a whole strip.</param>
    /// <returns>The strips; an outline that fits the roll is one strip without a join.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of its range, or more than 10,000 strips would be cut.</exception>
    public static OutlineStrips Cut(Outline outline, Length rollWidth, Length overlap, Length stagger, int ply)
    {
        ArgumentNullException.ThrowIfNull(outline);
        double width = Guard.Positive(rollWidth.Meters, "m", nameof(rollWidth));
        double lap = Guard.NotNegative(overlap.Meters, "m", nameof(overlap));
        double shift = Guard.NotNegative(stagger.Meters, "m", nameof(stagger)) * Guard.AtLeast(ply, 0, nameof(ply));
        if (lap >= width)
        {
            throw Guard.Refuse(lap, "m", nameof(overlap), "must be less than the roll's width");
        }

        double pitch = width - lap;
        double slack = RelativeSlack * width;
        if (outline.Across / pitch > MostStrips)
        {
            throw Guard.Refuse(pitch, "m", nameof(rollWidth), "must leave no more than 10000 strips: it is too narrow without the overlap, which leaves");
        }

        if (outline.Across <= width + slack)
        {
            return new OutlineStrips([new OutlineStrip(0, outline)], []);
        }

        var shape = OutlineShapes.Shape(outline);
        List<OutlineStrip> strips = [];
        List<double> joins = [];
        (double left, double right) = (outline.Least.X - 1, outline.Most.X + 1);
        int index = 0;
        double moved = shift % pitch;
        double start = outline.Least.Y - (pitch - moved <= slack ? 0 : moved);
        for (double low = start; low < outline.Most.Y; low += pitch)
        {
            double high = low + width;

            // What the strip before reaches in full needs no further strip.
            bool last = high >= outline.Most.Y - slack;
            double top = last ? outline.Most.Y + width : high;
            Outline band = new([new(left, low), new(right, low), new(right, top), new(left, top)]);
            strips.AddRange(OutlineShapes.Outsides(shape.Intersection(OutlineShapes.Shape(band))).Select(piece => new OutlineStrip(index, piece)));
            if (last)
            {
                break;
            }

            joins.Add(high - (lap / 2));
            index++;
        }

        return new OutlineStrips([.. strips], [.. joins]);
    }
}
