using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>What several checks of records ask.</summary>
internal static class RecordFacts
{
    // Rounding of figures that a form keeps: nobody meant a change by it.
    private const double Same = 0.005;

    // As far as a good gauge and the eye before it are off: from memory of the trade.
    private const double GaugeError = 0.05;

    /// <summary>Whether the part is made: it was weighed, or something was decided about it.</summary>
    public static bool IsMade(this BuildRecord record) => record.Mass is not null || record.Disposition is not null;

    /// <summary>The record before this one in the log, or null.</summary>
    public static LoggedBuild? Before(this BuildLog log, LoggedBuild build)
    {
        var place = log.Builds.IndexOf(build);
        return place > 0 ? log.Builds[place - 1] : null;
    }

    /// <summary>The last line of the record with this word, else its head.</summary>
    public static SourceSpan LineOf(this BuildRecord record, string word) => record.Lines.LastOrDefault(line => line.Word == word)?.Where ?? record.Where;

    /// <summary>Whether the trimmed part weighs what the plan allows; null when one of them is not known.</summary>
    public static bool? IsInBand(this LoggedBuild build) =>
        build is { Record.Mass: { } mass, Planned: { MassLow: { } low, MassHigh: { } high } } ? mass.Value >= low && mass.Value <= high : null;

    /// <summary>The limits that were kept with the record and are broken: the word of the line that tells, and what it tells.</summary>
    public static IEnumerable<(string Word, string Message)> BrokenLimits(this LoggedBuild build)
    {
        var (record, planned) = (build.Record, build.Planned);
        if (record.Vacuum is { Reached: { } reached, Written: { } gauge } && planned is { VacuumLevel: { } wanted, Vacuum: { } level } && IsShort(reached, wanted))
        {
            yield return ("vacuum", $"the vacuum reached {gauge}; {level} is planned");
        }

        if (record.Rise is { } found && planned?.RiseAtMost is { } most)
        {
            // What was watched for longer may have risen in proportion; what was watched for less was still settling.
            var longer = record.RiseTime is { } watched && planned.RiseTime is { Seconds: > 0 } asked && watched.Value > asked ? watched.Value / asked : 1;
            if (found.Value > most * longer)
            {
                var time = longer > 1 ? $" in {Say.Of(record.RiseTime!.Value)}" : "";
                yield return ("rise", $"the pressure rose by {Say.Of(found)}{time}; at most {Say.Of(most * longer, found.Written)} is accepted");
            }
        }

        if (record.Hottest is { } hottest && planned?.HeatLimit is { } limit && hottest.Value > limit)
        {
            yield return ("cure", $"it got {Say.Of(hottest)} hot; the weakest thing in the heat stands {Say.Of(limit, hottest.Written)}");
        }

        if (record.Mass is { } mass && build.IsInBand() == false)
        {
            yield return ("mass", $"the part weighs {Say.Of(mass)}; its band is {Say.Of(planned!.MassLow!.Value, mass.Written)} to {Say.Of(planned.MassHigh!.Value, mass.Written)}");
        }
    }

    // Of one gauge only: below ambient and absolute differ by the weather. Counted against the air of the standard atmosphere.
    private static bool IsShort(VacuumLevel reached, VacuumLevel wanted)
    {
        var air = Pressure.FromAtmospheres(1);
        return reached.Convention == wanted.Convention && (wanted.Convention switch
        {
            VacuumConvention.BelowAmbient => reached.Value < wanted.Value * (1 - GaugeError),
            VacuumConvention.Absolute => reached.Value - wanted.Value > (air - wanted.Value) * GaugeError,
            _ => false,
        });
    }

    /// <summary>What is planned otherwise in two plans, a few words for each thing that can be changed by itself.</summary>
    public static IReadOnlyList<string> Differences(PlannedFigures was, PlannedFigures now)
    {
        var different = new List<string>();
        Add(was.Process != now.Process && was.Process is not null, "process");
        Add(was.Resin != now.Resin && was.Resin is not null, "resin");
        Add(!was.Cloths.IsEmpty && !Alike(was, now), "plies");
        Add(!was.Cloths.IsEmpty && Alike(was, now) && was.Cloths.Zip(now.Cloths).Any(pair => Math.Abs(pair.First.Content - pair.Second.Content) > Same), "resin content");
        Add(!was.Bag.IsEmpty && !was.Bag.SequenceEqual(now.Bag), "bag");
        Add(was.Vacuum is not null && was.Vacuum != now.Vacuum, "vacuum");
        Add(was.Hottest is { } hottest && (now.Hottest is not { } other || Math.Abs(hottest.Kelvins - other.Kelvins) > 0.6), "cure temperature");
        Add(was.CureTime is { } time && (now.CureTime is not { } otherTime || Math.Abs(time.Seconds - otherTime.Seconds) > 60 + (time.Seconds * Same)), "cure time");
        Add(was.Laminators is not null && was.Laminators != now.Laminators, "pairs of hands");
        return different;

        void Add(bool differs, string what)
        {
            if (differs)
            {
                different.Add(what);
            }
        }
    }

    /// <summary><c>a, b and c</c>.</summary>
    public static string And(IReadOnlyList<string> words) => words.Count < 2 ? string.Concat(words) : string.Join(", ", words.Take(words.Count - 1)) + " and " + words[^1];

    private static bool Alike(PlannedFigures was, PlannedFigures now) =>
        was.Cloths.Length == now.Cloths.Length
        && was.Cloths.Zip(now.Cloths).All(pair => pair.First.Material == pair.Second.Material && Math.Abs(pair.First.Fibre.Grams - pair.Second.Fibre.Grams) <= 0.06 + (pair.First.Fibre.Grams * Same));
}
