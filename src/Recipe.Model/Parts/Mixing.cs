using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>What a line of the mixing does.</summary>
public enum MixAction
{
    /// <summary>Pours the resin.</summary>
    AddResin,

    /// <summary>Pours the hardener, or the peroxide.</summary>
    AddHardener,

    /// <summary>Pours what makes the peroxide work.</summary>
    AddAccelerator,

    /// <summary>Adds a powder that thickens.</summary>
    AddFiller,

    /// <summary>Adds colour.</summary>
    AddPigment,

    /// <summary>Adds thinner.</summary>
    AddSolvent,

    /// <summary>Stirs.</summary>
    Stir,

    /// <summary>Scrapes sides, corners and stick.</summary>
    Scrape,

    /// <summary>Pours it into a clean second cup and stirs again.</summary>
    SecondCup,
}

/// <summary>What a pot is mixed in.</summary>
public enum MixingCup
{
    /// <summary>Clean plastic or unwaxed paper.</summary>
    Clean,

    /// <summary>Waxed paper.</summary>
    Waxed,

    /// <summary>Plastic foam.</summary>
    Foam,
}

/// <summary>One line of the mixing.</summary>
/// <param name="Action">What it does.</param>
/// <param name="Where">The line.</param>
public sealed record MixStep(MixAction Action, SourceSpan Where)
{
    /// <summary>Parts to 100 of resin, by weight; null when not given.</summary>
    public Figure<double>? Parts { get; init; }

    /// <summary>How long it is stirred.</summary>
    public Figure<Duration>? Time { get; init; }
}

/// <summary>How a pot is mixed.</summary>
public sealed record Mixing
{
    /// <summary>Where the block stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>The steps in order.</summary>
    public ImmutableArray<MixStep> Steps { get; init; } = [];

    /// <summary>What it is mixed in.</summary>
    public Figure<MixingCup>? Cup { get; init; }

    /// <summary>Whether a blob of each pot is kept in a labelled cup.</summary>
    public bool KeepsSample { get; init; }
}

/// <summary>How a prepreg is handled before the oven.</summary>
public sealed record PrepregHandling
{
    /// <summary>Where the block stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>How cold it is stored.</summary>
    public Figure<Temperature>? Freezer { get; init; }

    /// <summary>How long it warms up before its wrap is opened.</summary>
    public Figure<Duration>? Thaw { get; init; }

    /// <summary>Whether it warms up in its sealed wrap; null when not said.</summary>
    public bool? ThawsSealed { get; init; }

    /// <summary>Time out of the freezer so far.</summary>
    public Figure<Duration>? OutTime { get; init; }

    /// <summary>Vacuum on the stack after so many plies.</summary>
    public Figure<int>? DebulkEvery { get; init; }

    /// <summary>How long each time.</summary>
    public Figure<Duration>? DebulkFor { get; init; }

    /// <summary>Whether air leaves at the edges.</summary>
    public Figure<bool>? EdgesBreathe { get; init; }
}
