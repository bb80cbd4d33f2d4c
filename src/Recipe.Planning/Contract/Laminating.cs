using System.Collections.Immutable;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>Where and by whom.</summary>
public sealed record ConditionsPlan
{
    /// <summary>Room temperature at lay-up; of a range, the upper end, since resin goes off soonest there.</summary>
    public required Computed<Temperature> Room { get; init; }

    /// <summary>Coldest the room gets while the part cures in it, or null when not known.</summary>
    public Computed<Temperature>? Night { get; init; }

    /// <summary>Temperature of the resin when mixed.</summary>
    public required Computed<Temperature> Resin { get; init; }

    /// <summary>Temperature of resin spread on the part: that of the room, or of a mould that is stated to be warmer. Null where no plan was made.</summary>
    public Computed<Temperature>? Film { get; init; }

    /// <summary>Pairs of hands.</summary>
    public required Computed<int> Laminators { get; init; }

    /// <summary>Height above sea level.</summary>
    public required Computed<Length> Altitude { get; init; }

    /// <summary>Pressure of the air outside (ISO 2533 at that height).</summary>
    public required Computed<Pressure> Ambient { get; init; }
}

/// <summary>The surface laid on. Sizes are of one side (one half).</summary>
public sealed record GeometryPlan
{
    /// <summary>The shape.</summary>
    public required SurfaceShape Shape { get; init; }

    /// <summary>Number of sides laid: 2 for a mould in two halves, else 1.</summary>
    public required int Sides { get; init; }

    /// <summary>Area of one side inside the trim line.</summary>
    public required Area Area { get; init; }

    /// <summary>Length of the rim (trim line) of one side.</summary>
    public required Length Rim { get; init; }

    /// <summary>Depth of the mould; 0 for flat.</summary>
    public required Length Depth { get; init; }

    /// <summary>Longest way over the surface, along the part.</summary>
    public required Length DevelopedLength { get; init; }

    /// <summary>Longest way over the surface, across the part.</summary>
    public required Length DevelopedWidth { get; init; }

    /// <summary>Whether it curves two ways.</summary>
    public required bool DoublyCurved { get; init; }

    /// <summary>Whether it is flat.</summary>
    public required bool Flat { get; init; }
}

/// <summary>One line of the stack, computed.</summary>
public sealed record StackPlan
{
    /// <summary>The line.</summary>
    public required StackItem Item { get; init; }

    /// <summary>Ply number from the mould, from 1, one for each line (repeats share it); cores and inserts have none (0).</summary>
    public required int Number { get; init; }

    /// <summary>Area it covers inside the trim line, all sides and repeats.</summary>
    public Computed<Area>? NetArea { get; init; }

    /// <summary>Area cut, with trim allowance and overlaps, all sides and repeats.</summary>
    public Computed<Area>? CutArea { get; init; }

    /// <summary>Dry fibre (or core, or insert) mass inside the trim line.</summary>
    public Computed<Mass>? NetMass { get; init; }

    /// <summary>Dry mass cut.</summary>
    public Computed<Mass>? CutMass { get; init; }

    /// <summary>
    /// Resin content after the bag has done its work. A content that the part states (on the ply, or in `wet-out` for cloth) is the one
    /// laid by hand: what the layers of the bag carry away comes off it. A figure of the material for the process, or a default, is what
    /// stays: what is carried away is laid on top of it. Mats and veils hold what their own figures say.
    /// </summary>
    public Computed<Content>? Content { get; init; }

    /// <summary>Resin that stays in the line inside the trim line (for a core: in both faces).</summary>
    public Computed<Mass>? NetResin { get; init; }

    /// <summary>Resin that the cut pieces hold, trim included.</summary>
    public Computed<Mass>? CutResin { get; init; }

    /// <summary>
    /// Resin to lay on the cut pieces: what they hold, and their share of what the bag carries away. Null where nothing is laid wet.
    /// </summary>
    public Computed<Mass>? LaidResin { get; init; }

    /// <summary>Cured thickness of the line, all repeats.</summary>
    public Computed<Length>? Thickness { get; init; }

    /// <summary>Time to wet it out with the hands there are.</summary>
    public Computed<Duration>? WetOut { get; init; }

    /// <summary>What is cut.</summary>
    public ImmutableArray<PiecePlan> Pieces { get; init; } = [];
}

/// <summary>Pieces of one size cut from one material.</summary>
/// <param name="Length">Length along the roll before rotation: along the part.</param>
/// <param name="Width">Width across the part.</param>
/// <param name="Count">How many (all sides and repeats).</param>
/// <param name="RollAngle">Angle of the piece to the roll, degrees.</param>
/// <param name="WidthOnRoll">Width that the piece takes across the roll at that angle.</param>
/// <param name="LengthOnRoll">Length that one piece takes along the roll at that angle.</param>
/// <param name="RollWidth">Usable width of the roll, or null when not known.</param>
/// <param name="Joins">Join lines needed to fit the roll; 0 when it fits.</param>
/// <param name="Mirrored">Whether half of the pieces are mirror images (a mould in two halves).</param>
public sealed record PiecePlan(Length Length, Length Width, int Count, double RollAngle, Length WidthOnRoll, Length LengthOnRoll, Length? RollWidth, int Joins, bool Mirrored)
{
    /// <summary>Width across the roll of each of the strips that a joined piece is made of, overlap included; null for one that is not joined.</summary>
    public Length? StripWidth { get; init; }
}

/// <summary>The laminate as a whole.</summary>
public sealed record LaminatePlan
{
    /// <summary>Dry fibre inside the trim line.</summary>
    public required Computed<Mass> Fibre { get; init; }

    /// <summary>Resin inside the trim line, core faces included.</summary>
    public required Computed<Mass> Resin { get; init; }

    /// <summary>Cores inside the trim line.</summary>
    public required Computed<Mass> Core { get; init; }

    /// <summary>Coats on the mould.</summary>
    public required Computed<Mass> Coats { get; init; }

    /// <summary>Inserts.</summary>
    public required Computed<Mass> Inserts { get; init; }

    /// <summary>What the join adds to the part; null when it has none or joins parts of their own.</summary>
    public Computed<Mass>? Join { get; init; }

    /// <summary>The trimmed part with the band it should lie in.</summary>
    public required Computed<Banded<Mass>> TrimmedMass { get; init; }

    /// <summary>Thickness of the full-cover stack.</summary>
    public required Computed<Length> Thickness { get; init; }

    /// <summary>Resin as a share of fibre and resin by mass, in the plies: what core faces drink is left out.</summary>
    public required Computed<double> ResinFraction { get; init; }

    /// <summary>
    /// The same share when it was laid, before the bag carried resin away, over the pieces as cut; null where nothing is laid wet.
    /// </summary>
    public Computed<double>? LaidResinFraction { get; init; }

    /// <summary>Fibre as a share of fibre and resin by volume, in the plies; null when a density is missing.</summary>
    public Computed<double>? FibreVolumeFraction { get; init; }
}

/// <summary>What a line of the resin sum is.</summary>
public enum ResinUse
{
    /// <summary>Stays in the cut plies.</summary>
    Laminate,

    /// <summary>Goes into core faces.</summary>
    CoreFaces,

    /// <summary>Carried away by a layer of the bag.</summary>
    Pickup,

    /// <summary>Stays in lines and trap of an infusion.</summary>
    Lines,

    /// <summary>Stays in pot, brush and roller.</summary>
    Loss,

    /// <summary>Spare on top.</summary>
    Spare,
}

/// <summary>One line of the resin sum.</summary>
/// <param name="Use">What it is for.</param>
/// <param name="Label">In words: "peel ply, 0.12 m2 at 40 g/m2".</param>
/// <param name="Mass">How much.</param>
public sealed record ResinLine(ResinUse Use, string Label, Computed<Mass> Mass);

/// <summary>From laminate to pot.</summary>
public sealed record ResinPlan
{
    /// <summary>The resin.</summary>
    public required ResinSystem System { get; init; }

    /// <summary>The sum, in order.</summary>
    public required ImmutableArray<ResinLine> Lines { get; init; }

    /// <summary>What the part needs without spare.</summary>
    public required Computed<Mass> Need { get; init; }

    /// <summary>What is to be mixed (the author's pots, or the need with spare).</summary>
    public required Computed<Mass> ToMix { get; init; }

    /// <summary>Whether the author gave the pots.</summary>
    public required bool PotsStated { get; init; }
}

/// <summary>One pot.</summary>
public sealed record PotPlan
{
    /// <summary>From 1.</summary>
    public required int Number { get; init; }

    /// <summary>Mass mixed.</summary>
    public required Computed<Mass> Mass { get; init; }

    /// <summary>Resin in it; null when the ratio is unknown.</summary>
    public Computed<Mass>? Resin { get; init; }

    /// <summary>Hardener in it; null when the ratio is unknown.</summary>
    public Computed<Mass>? Hardener { get; init; }

    /// <summary>How far the hardener may be off, plus or minus; null when unknown.</summary>
    public Mass? HardenerTolerance { get; init; }

    /// <summary>Names of the stack lines it wets out, in order.</summary>
    public ImmutableArray<string> For { get; init; } = [];

    /// <summary>When it is mixed, from the first mix.</summary>
    public required Computed<Duration> MixedAt { get; init; }

    /// <summary>When it is used up, from the first mix.</summary>
    public required Computed<Duration> UsedUpAt { get; init; }

    /// <summary>How long it can be used from mixing, at today's temperature and its mass; null when no pot life is known.</summary>
    public Computed<Duration>? PotLife { get; init; }

    /// <summary>How hot it gets on the mean when it is left standing for two days; null when not known. The middle of a real pot gets hotter.</summary>
    public Computed<Temperature>? StandingPeak { get; init; }

    /// <summary>When it is dead, from the first mix; null when no pot life is known.</summary>
    public Computed<Duration>? DeadAt { get; init; }
}

/// <summary>First mix to full vacuum.</summary>
public sealed record ClockPlan
{
    /// <summary>Mixing and wetting out.</summary>
    public required Computed<Duration> WetOut { get; init; }

    /// <summary>Laying the bag and closing it.</summary>
    public required Computed<Duration> Bagging { get; init; }

    /// <summary>Drawing down to the level.</summary>
    public required Computed<Duration> DrawDown { get; init; }

    /// <summary>The sum: what the job needs.</summary>
    public required Computed<Duration> Need { get; init; }

    /// <summary>What the resin on the part allows at today's temperature; null when not known.</summary>
    public Computed<Duration>? FilmLife { get; init; }

    /// <summary>
    /// The same with the band that a part warmer or colder than the room says, and tins that differ, give it; null when not known.
    /// </summary>
    public Computed<Banded<Duration>>? FilmLifeBand { get; init; }
}
