using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>How the part is made.</summary>
public enum Process
{
    /// <summary>Brush and roller, no bag.</summary>
    Hand,

    /// <summary>Wet lay-up under a vacuum bag.</summary>
    Bagged,

    /// <summary>Dry lay-up, resin drawn in by vacuum.</summary>
    Infused,

    /// <summary>Pre-impregnated cloth under vacuum in an oven.</summary>
    Prepreg,
}

/// <summary>Wetting out: who, how warm, how fast, how much.</summary>
public sealed record WetOut
{
    /// <summary>Where the block stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Room temperature (the upper end when a range was given is <see cref="RoomHigh"/>).</summary>
    public Figure<Temperature>? Room { get; init; }

    /// <summary>Upper end of a room temperature range, or null.</summary>
    public Figure<Temperature>? RoomHigh { get; init; }

    /// <summary>Temperature of the resin when mixed.</summary>
    public Figure<Temperature>? ResinTemperature { get; init; }

    /// <summary>Temperature of the mould.</summary>
    public Figure<Temperature>? MouldTemperature { get; init; }

    /// <summary>Pairs of hands.</summary>
    public Figure<int>? Laminators { get; init; }

    /// <summary>Time per square metre and ply for one pair of hands.</summary>
    public Figure<Pace>? Pace { get; init; }

    /// <summary>Content laid (before bleeding).</summary>
    public Figure<Content>? Content { get; init; }

    /// <summary>Number of pots the author plans.</summary>
    public Figure<int>? Pots { get; init; }

    /// <summary>Masses of the pots the author plans, in order; empty when the program is to plan them.</summary>
    public ImmutableArray<Figure<Mass>> PotMasses { get; init; } = [];

    /// <summary>Whether the pot is a shallow tray.</summary>
    public Figure<bool>? Tray { get; init; }

    /// <summary>Mixing time of one pot.</summary>
    public Figure<Duration>? Mixing { get; init; }

    /// <summary>Resin lost in pot, brush and roller.</summary>
    public Figure<Mass>? Loss { get; init; }

    /// <summary>Spare on top of the need, 0 to 1.</summary>
    public Figure<double>? Spare { get; init; }

    /// <summary>Relative humidity of the room, 0 to 1.</summary>
    public Figure<double>? Humidity { get; init; }

    /// <summary>Planned start, a time of day.</summary>
    public Figure<TimeOnly>? Start { get; init; }
}

/// <summary>Infusion: feed, path, clamp, test.</summary>
public sealed record Infusion
{
    /// <summary>Where the block stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Length of one feed line.</summary>
    public Figure<Length>? FeedLine { get; init; }

    /// <summary>Inner diameter of feed and vacuum lines.</summary>
    public Figure<Length>? LineDiameter { get; init; }

    /// <summary>Number of feed lines; of each half where the mould has halves.</summary>
    public Figure<int>? FeedLines { get; init; }

    /// <summary>How long the mixed resin stands under vacuum first.</summary>
    public Figure<Duration>? Degas { get; init; }

    /// <summary>Longest way the resin flows.</summary>
    public Figure<Length>? Path { get; init; }

    /// <summary>Resin temperature.</summary>
    public Figure<Temperature>? ResinTemperature { get; init; }

    /// <summary>Mould temperature.</summary>
    public Figure<Temperature>? MouldTemperature { get; init; }

    /// <summary>When to clamp the feed, in words.</summary>
    public string? ClampFeed { get; init; }

    /// <summary>Where the vent is, in words.</summary>
    public string? Vent { get; init; }

    /// <summary>The line that says so, or null.</summary>
    public SourceSpan? VentWhere { get; init; }

    /// <summary>Resin kept in reserve in the feed pot, 0 to 1.</summary>
    public Figure<double>? Reserve { get; init; }

    /// <summary>The drop test before the feed opens.</summary>
    public LeakCheck? DropTest { get; init; }
}

/// <summary>A leak check: shut off, wait, read.</summary>
/// <param name="Duration">How long.</param>
/// <param name="RiseAtMost">The rise of absolute pressure that is still accepted; null when not given.</param>
/// <param name="Isolated">Whether the author says that the bag is shut off from the pump.</param>
/// <param name="Where">The line.</param>
public sealed record LeakCheck(Figure<Duration>? Duration, Figure<Pressure>? RiseAtMost, bool Isolated, SourceSpan Where);

/// <summary>Vacuum: level, test, hold.</summary>
public sealed record VacuumPlan
{
    /// <summary>Where the block stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>The level to draw.</summary>
    public Figure<VacuumLevel>? Draw { get; init; }

    /// <summary>Time to reach it.</summary>
    public Figure<Duration>? Within { get; init; }

    /// <summary>Time to let it settle before the test.</summary>
    public Figure<Duration>? Settle { get; init; }

    /// <summary>The leak check, or null when there is none.</summary>
    public LeakCheck? LeakCheck { get; init; }

    /// <summary>How long the vacuum is held.</summary>
    public Figure<Duration>? Hold { get; init; }

    /// <summary>When it comes off, in words, or null.</summary>
    public string? Off { get; init; }

    /// <summary>The line that says so, or null.</summary>
    public SourceSpan? OffWhere { get; init; }
}

/// <summary>What a line of the cure does.</summary>
public enum CureAction
{
    /// <summary>Holds a temperature for a time.</summary>
    Hold,

    /// <summary>Goes up (or down) to a temperature at a rate.</summary>
    Ramp,

    /// <summary>Goes down to a temperature, at a rate or by itself.</summary>
    Cool,

    /// <summary>Lets the vacuum go.</summary>
    Vent,

    /// <summary>Takes the bag off.</summary>
    Debag,

    /// <summary>Takes the part off the mould.</summary>
    Demould,
}

/// <summary>One step of the cure.</summary>
public sealed record CureStep
{
    /// <summary>What it does.</summary>
    public required CureAction Action { get; init; }

    /// <summary>The line.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>The temperature held or reached; null for vent, debag, demould, and for <c>room</c> until the plan fills it in.</summary>
    public Figure<Temperature>? Temperature { get; init; }

    /// <summary>Whether the author wrote <c>room</c>.</summary>
    public bool AtRoom { get; init; }

    /// <summary>How long it is held.</summary>
    public Figure<Duration>? Duration { get; init; }

    /// <summary>Rate of change, always positive.</summary>
    public Figure<TemperatureChangeRate>? Rate { get; init; }

    /// <summary>Whether the author says that the vacuum is on.</summary>
    public bool UnderVacuum { get; init; }

    /// <summary>Whether no vacuum is left once it is done.</summary>
    public bool LetsVacuumGo => Action is CureAction.Vent or CureAction.Debag or CureAction.Demould;

    /// <summary>What supports the part once it is off the mould, or null.</summary>
    public string? Support { get; init; }
}

/// <summary>The cure, from the first hold down.</summary>
public sealed record Cure
{
    /// <summary>Where the block stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>The steps in order.</summary>
    public ImmutableArray<CureStep> Steps { get; init; } = [];

    /// <summary>Number of thermocouples, or null.</summary>
    public Figure<int>? Thermocouples { get; init; }

    /// <summary>What heats, in words, or null.</summary>
    public string? Oven { get; init; }

    /// <summary>The line that says so, or null.</summary>
    public SourceSpan? OvenWhere { get; init; }
}

/// <summary>One line of finishing, kept as written.</summary>
/// <param name="Verb">The first word: trim, wash, abrade, weigh.</param>
/// <param name="Text">The rest of the line as written, without the quotes of a lone text.</param>
/// <param name="Where">The line.</param>
public sealed record FinishStep(string Verb, string Text, SourceSpan Where);

/// <summary>How halves or parts are joined.</summary>
public enum JoinManner
{
    /// <summary>Both halves wet, closed together.</summary>
    WetInWet,

    /// <summary>Both cured, then a tape of wet cloth over the seam.</summary>
    CuredThenTaped,

    /// <summary>Both cured, then adhesive.</summary>
    CuredThenBonded,
}

/// <summary>The join of two halves or parts.</summary>
public sealed record Join
{
    /// <summary>Where the block stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>How.</summary>
    public Figure<JoinManner>? Manner { get; init; }

    /// <summary>Names of the parts joined, when they are parts of their own.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];

    /// <summary>Overlap.</summary>
    public Figure<Length>? Overlap { get; init; }

    /// <summary>Length of the seam.</summary>
    public Figure<Length>? Seam { get; init; }

    /// <summary>Adhesive or thickened resin.</summary>
    public ResinSystem? Adhesive { get; init; }

    /// <summary>The line of the adhesive, or null.</summary>
    public SourceSpan? AdhesiveWhere { get; init; }

    /// <summary>Bond line thickness.</summary>
    public Figure<Length>? BondLine { get; init; }

    /// <summary>Cloth taped over the seam.</summary>
    public Reinforcement? Tape { get; init; }

    /// <summary>Width of the tape.</summary>
    public Figure<Length>? TapeWidth { get; init; }

    /// <summary>Layers of tape.</summary>
    public int TapeLayers { get; init; } = 1;

    /// <summary>Longest time from the first mix to the closed mould.</summary>
    public Figure<Duration>? Within { get; init; }

    /// <summary>Mass of filler per length of seam.</summary>
    public Figure<LinearDensity>? Fillet { get; init; }

    /// <summary>The least that is mixed at once for the seam; null when just as much as it needs.</summary>
    public Figure<Mass>? Pot { get; init; }

    /// <summary>Vent hole diameter.</summary>
    public Figure<Length>? Vent { get; init; }

    /// <summary>What aligns the halves, in words, or null.</summary>
    public string? Align { get; init; }

    /// <summary>Preparation lines (prepare, abrade), kept as written.</summary>
    public ImmutableArray<FinishStep> Preparation { get; init; } = [];
}
