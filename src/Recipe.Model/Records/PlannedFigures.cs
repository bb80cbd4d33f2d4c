using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>
/// What the plan said of a part when its record was begun: kept in the record, so that it can be read after the recipe has moved on.
/// </summary>
public sealed record PlannedFigures
{
    /// <summary>How it is made, or null.</summary>
    public Process? Process { get; init; }

    /// <summary>Name of the resin, or null.</summary>
    public string? Resin { get; init; }

    /// <summary>Mass of the trimmed part.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Lower end of the band it should lie in.</summary>
    public Mass? MassLow { get; init; }

    /// <summary>Upper end of it.</summary>
    public Mass? MassHigh { get; init; }

    /// <summary>Thickness of the full stack.</summary>
    public Length? Thickness { get; init; }

    /// <summary>Dry fibre inside the trim line.</summary>
    public Mass? Fibre { get; init; }

    /// <summary>What is neither fibre nor its resin: coats, cores with what they drink, inserts, join.</summary>
    public Mass? Other { get; init; }

    /// <summary>Dry mass of all pieces as cut.</summary>
    public Mass? Kit { get; init; }

    /// <summary>Resin to mix.</summary>
    public Mass? Mixed { get; init; }

    /// <summary>Time to wet out.</summary>
    public Duration? WetOut { get; init; }

    /// <summary>Pairs of hands.</summary>
    public int? Laminators { get; init; }

    /// <summary>Vacuum to draw, as it is written, or null.</summary>
    public string? Vacuum { get; init; }

    /// <summary>The same as a level, or null.</summary>
    public VacuumLevel? VacuumLevel { get; init; }

    /// <summary>Largest rise that the leak check accepts.</summary>
    public Pressure? RiseAtMost { get; init; }

    /// <summary>Time of the leak check.</summary>
    public Duration? RiseTime { get; init; }

    /// <summary>The hottest that the cure is to get.</summary>
    public Temperature? Hottest { get; init; }

    /// <summary>How long the cure lasts.</summary>
    public Duration? CureTime { get; init; }

    /// <summary>The hottest that the weakest thing in the heat can stand.</summary>
    public Temperature? HeatLimit { get; init; }

    /// <summary>The cloths, mould side first.</summary>
    public ImmutableArray<PlannedCloth> Cloths { get; init; } = [];

    /// <summary>Names of the bag's layers, from the part outwards.</summary>
    public ImmutableArray<string> Bag { get; init; } = [];
}

/// <summary>A cloth of the stack as planned.</summary>
/// <param name="Material">Its name.</param>
/// <param name="Fibre">Dry mass inside the trim line.</param>
/// <param name="Content">Resin share by weight that it should hold.</param>
/// <param name="Where">Its line in the record, or null when it comes from a plan.</param>
public sealed record PlannedCloth(string Material, Mass Fibre, double Content, SourceSpan? Where);
