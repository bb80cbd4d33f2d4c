using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Sizes of bag film, of the layers under it and of sealant tape, from the developed sizes of the part.</summary>
/// <remarks>
/// Source: common practice, allowances in <see cref="BagAllowances"/>; US Army TM 1-1500-204-23-11 asks for pleats so that
/// the film is never stretched to bursting, FAA AC 43.13-1B for pleats pressed on the tape.
/// </remarks>
public static class BagSize
{
    /// <summary>
    /// Bag film: for a flat part the size plus the edge on each side, for a shaped part the developed size times the shaped
    /// factor plus the edge on each side. On a closed tube the film goes once round and is closed on itself.
    /// </summary>
    /// <param name="surface">The part.</param>
    /// <param name="allowances">Allowances.</param>
    /// <exception cref="ArgumentOutOfRangeException">An allowance is out of range.</exception>
    public static FlatPiece Film(Surface surface, BagAllowances allowances)
    {
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(allowances);
        double edge = Guard.NotNegative(allowances.FilmEdge.Meters, "m", nameof(allowances));
        double factor = surface.IsFlat
            ? 1
            : Guard.Between(allowances.ShapedFactor, 1, 10, string.Empty, nameof(allowances));
        return Sheet(
            (surface.DevelopedLength.Meters * factor) + (2 * edge),
            (surface.DevelopedWidth.Meters * factor) + (2 * edge));
    }

    /// <summary>
    /// Film of an envelope that goes round a whole part or mould: twice the film of one side, joined along one edge.
    /// </summary>
    /// <param name="surface">One side of what goes in.</param>
    /// <param name="allowances">Allowances.</param>
    /// <exception cref="ArgumentOutOfRangeException">An allowance is out of range.</exception>
    public static FlatPiece Envelope(Surface surface, BagAllowances allowances)
    {
        FlatPiece side = Film(surface, allowances);
        return Sheet(side.Length.Meters, 2 * side.Width.Meters);
    }

    /// <summary>One layer under the film (peel ply, release film, bleeder, breather), reaching past the rim by a margin.</summary>
    /// <param name="surface">The part.</param>
    /// <param name="beyond">
    /// How far the layer reaches past the rim on each side; negative when it stays inside it, as a solid film smaller than
    /// its bleeder does, but not so far that nothing is left.
    /// </param>
    /// <param name="lap">How far it laps over itself once round a closed tube, zero or more; not used by other shapes.</param>
    /// <returns>The sheet to cut; its area is that of the rectangle, because a layer is cut straight from the roll.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Nothing would be left of the layer, or a lap is negative.</exception>
    public static FlatPiece Layer(Surface surface, Length beyond, Length lap = default)
    {
        ArgumentNullException.ThrowIfNull(surface);
        double margin = beyond.Meters;
        double length = surface.DevelopedLength.Meters + (2 * margin);
        double width = surface.DevelopedWidth.Meters + (surface.IsClosedTube ? surface.FlareBeyond(margin) + Guard.NotNegative(lap.Meters, "m", nameof(lap)) : 2 * margin);
        return length > 0 && width > 0
            ? Sheet(length, width)
            : throw Guard.Refuse(margin, "m", nameof(beyond), "must leave some of the layer");
    }

    /// <summary>
    /// Line that the sealant tape follows: the rim at the tape's distance outside it; on a closed tube both ends and the slit.
    /// </summary>
    /// <param name="surface">The part.</param>
    /// <param name="allowances">Allowances.</param>
    /// <exception cref="ArgumentOutOfRangeException">An allowance is out of range.</exception>
    public static Length TapeLine(Surface surface, BagAllowances allowances)
    {
        ArgumentNullException.ThrowIfNull(surface);
        ArgumentNullException.ThrowIfNull(allowances);
        double offset = Guard.NotNegative(allowances.TapeOffset.Meters, "m", nameof(allowances));
        double rim = surface.RimAtDistance(allowances.TapeOffset).Meters;
        double slit = surface.IsClosedTube ? surface.DevelopedLength.Meters + (2 * offset) : 0;
        return Length.FromMeters(rim + slit);
    }

    /// <summary>Sealant tape: <c>(line + pleats * 2 * height) (1 + spare)</c>; a pleat takes tape up one side and down the other.</summary>
    /// <param name="surface">The part; a flat one has pleats of no height unless one is given.</param>
    /// <param name="allowances">Allowances.</param>
    /// <exception cref="ArgumentOutOfRangeException">An allowance is out of range.</exception>
    public static Length Tape(Surface surface, BagAllowances allowances)
    {
        double line = TapeLine(surface, allowances).Meters;
        double height = Guard.NotNegative(
            (allowances.PleatHeight ?? surface.Depth).Meters, "m", nameof(allowances));
        double pleats = Guard.AtLeast(allowances.Pleats, 0, nameof(allowances)) * 2 * height;
        double spare = Guard.NotNegative(allowances.TapeSpare.DecimalFractions, string.Empty, nameof(allowances));
        return Length.FromMeters((line + pleats) * (1 + spare));
    }

    private static FlatPiece Sheet(double length, double width) =>
        new(Length.FromMeters(length), Length.FromMeters(width), Area.FromSquareMeters(length * width), false);
}
