using Recipe.Model;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>How far a lip or a tape has to lie on each side of a seam. Common practice: 12 mm for light parts, 25 mm where load goes through, never less than 8 mm there.</summary>
internal static class Laps
{
    private static readonly Length Light = Length.FromMillimeters(12);
    private static readonly Length Loaded = Length.FromMillimeters(25);
    private static readonly Length Hopeless = Length.FromMillimeters(8);

    // Nobody cuts cloth to a tenth of a millimetre.
    private static readonly Length Rounding = Length.FromMillimeters(0.5);

    /// <summary>The lines of the join, for a check that misses one; null without a join.</summary>
    public static LinesRead? JoinLines(this Part part) => part.Join is { } join ? new LinesRead(join.Where, AllOfTheLine: true) : null;

    /// <summary>What is wanted on each side of the seam of a part.</summary>
    public static Length WantedOn(Part part) => part.CarriesLoad() ? Loaded : Light;

    /// <summary>Whether a length does for the seam of a part.</summary>
    public static bool AreEnough(Length length, Part part) => length + Rounding >= WantedOn(part);

    /// <summary>Whether a length cannot hold the seam of a part that carries load.</summary>
    public static bool AreHopeless(Length length, Part part) => part.CarriesLoad() && length < Hopeless;
}
