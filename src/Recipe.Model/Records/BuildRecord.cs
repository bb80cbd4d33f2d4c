using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>What happened at the bench, kept as written: word, values, place.</summary>
/// <param name="Word">The first word of the line.</param>
/// <param name="Text">The rest of the line as written.</param>
/// <param name="Where">The line.</param>
public sealed record BuildLine(string Word, string Text, SourceSpan Where);

/// <summary>
/// A build record: one part that was made. Everything may be absent, since a record never refuses what happened; of a word that
/// stands once only, the last line counts.
/// </summary>
/// <param name="Part">Name of the part built.</param>
/// <param name="Number">Serial number, or null.</param>
/// <param name="On">The day, or null.</param>
/// <param name="Lines">What was written down, in order, each line as written.</param>
/// <param name="Where">The head of the record.</param>
public sealed record BuildRecord(string Part, int? Number, DateOnly? On, ImmutableArray<BuildLine> Lines, SourceSpan Where)
{
    /// <summary>Revision of the recipe it was built from, or null.</summary>
    public Figure<string>? Revision { get; init; }

    /// <summary>Initials of who made it, or null.</summary>
    public string? By { get; init; }

    /// <summary>Initials of who helped, or null.</summary>
    public string? Helper { get; init; }

    /// <summary>Parts pulled since the mould was last waxed or coated.</summary>
    public Figure<int>? PullsSinceRelease { get; init; }

    /// <summary>Dry mass of all pieces in the kit box.</summary>
    public Figure<Mass>? Kit { get; init; }

    /// <summary>Pinholes in the worst square decimetre.</summary>
    public Figure<int>? Pinholes { get; init; }

    /// <summary>How the peel ply looked when it came off: dry, even or wet; null when not written down.</summary>
    public string? PeelPly { get; init; }

    /// <summary>Why it went as it went, in words, or null.</summary>
    public string? Cause { get; init; }

    /// <summary>What changes next time, in words, or null.</summary>
    public string? Action { get; init; }

    /// <summary>What was changed on purpose since the part before, in words, or null.</summary>
    public Figure<string>? Changed { get; init; }

    /// <summary>Room temperature.</summary>
    public Figure<Temperature>? Room { get; init; }

    /// <summary>Relative humidity, 0 to 1.</summary>
    public Figure<double>? Humidity { get; init; }

    /// <summary>What was taken from the shelf.</summary>
    public ImmutableArray<UsedStock> Used { get; init; } = [];

    /// <summary>The pots, in the order in which they were mixed.</summary>
    public ImmutableArray<RecordedPot> Pots { get; init; } = [];

    /// <summary>Resin mixed in all pots together, as one figure; see <see cref="MixedMass"/>.</summary>
    public Figure<Mass>? Mixed { get; init; }

    /// <summary>What was left in pots, brush and roller.</summary>
    public Figure<Mass>? Left { get; init; }

    /// <summary>Wetting out, one line for each stretch of it.</summary>
    public ImmutableArray<RecordedWetOut> WetOut { get; init; } = [];

    /// <summary>The vacuum, or null.</summary>
    public RecordedVacuum? Vacuum { get; init; }

    /// <summary>Rise of absolute pressure in the leak check.</summary>
    public Figure<Pressure>? Rise { get; init; }

    /// <summary>Time in which it rose so.</summary>
    public Figure<Duration>? RiseTime { get; init; }

    /// <summary>Resin that layers of the bag carried away.</summary>
    public ImmutableArray<RecordedPickup> Pickups { get; init; } = [];

    /// <summary>The hottest that the part got.</summary>
    public Figure<Temperature>? Hottest { get; init; }

    /// <summary>How long the cure lasted.</summary>
    public Figure<Duration>? CureTime { get; init; }

    /// <summary>How long after the first mix the part left the mould.</summary>
    public Figure<Duration>? Demould { get; init; }

    /// <summary>Temperature it was kept at until then.</summary>
    public Figure<Temperature>? DemouldTemperature { get; init; }

    /// <summary>Mass before trimming.</summary>
    public Figure<Mass>? Untrimmed { get; init; }

    /// <summary>Mass of the trimmed part.</summary>
    public Figure<Mass>? Mass { get; init; }

    /// <summary>Thickness where it was measured.</summary>
    public ImmutableArray<Figure<Length>> Thickness { get; init; } = [];

    /// <summary>What is wrong with the part.</summary>
    public ImmutableArray<RecordedDefect> Defects { get; init; } = [];

    /// <summary>What was done otherwise than the recipe says.</summary>
    public ImmutableArray<RecordedDeviation> Deviations { get; init; } = [];

    /// <summary>What was decided, or null while nothing is.</summary>
    public RecordedDisposition? Disposition { get; init; }

    /// <summary>Hold points that were signed.</summary>
    public ImmutableArray<RecordedSignature> Signatures { get; init; } = [];

    /// <summary>What the plan said when the form was written, or null.</summary>
    public PlannedFigures? Planned { get; init; }

    /// <summary>Values that were left as blanks: the word of their line, and the place.</summary>
    public ImmutableArray<(string Word, SourceSpan Where)> Blanks { get; init; } = [];

    /// <summary>Name and number as people say it: <c>hatch-lid no 3</c>.</summary>
    public string Title => Number is { } number ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Part} no {number}") : Part;

    /// <summary>Resin mixed: the figure given for all pots, else the sum of pots that were all weighed, else null.</summary>
    public Mass? MixedMass
    {
        get
        {
            if (Mixed is { } mixed)
            {
                return mixed.Value;
            }

            return Pots.IsEmpty || Pots.Any(pot => pot.Total is null) ? null : UnitsNet.Mass.FromKilograms(Pots.Sum(pot => pot.Total!.Value.Kilograms));
        }
    }
}
