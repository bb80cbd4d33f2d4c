using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Planning;

/// <summary>
/// A shop's own figures, from its build records. Each record gives one value of a figure at most; what is concluded from them, and
/// from how few nothing is, <see cref="Engineering.Estimate"/> says.
/// </summary>
public static class ShopLearner
{
    /// <summary>The figures that the records tell of, in a fixed order; those with a single value too, so that it can be said that it is too few.</summary>
    public static ImmutableArray<LearntFigure> Learn(IEnumerable<BuildLog> logs)
    {
        ArgumentNullException.ThrowIfNull(logs);
        var builds = logs.SelectMany(log => log.Builds).ToList();
        return
        [
            .. Figures(LearntKind.ResinContent, builds, Contents),
            .. Figures(LearntKind.Pickup, builds, Pickups),
            .. Figures(LearntKind.Pace, builds, Paces),
            .. Figures(LearntKind.Loss, builds, Losses),
            .. Figures(LearntKind.LeakRise, builds, Rises),
            .. Figures(LearntKind.Demould, builds, build => build is { Record.Demould: { } time, Planned.Resin: { } resin } ? [(resin, null, time.Value.Seconds)] : []),
        ];
    }

    private static IEnumerable<LearntFigure> Figures(LearntKind kind, List<LoggedBuild> builds, Func<LoggedBuild, IEnumerable<(string? Of, Process? Process, double Si)>> values) => builds
        .SelectMany(build => values(build).Select(value => (value.Of, value.Process, Value: new LearntValue(build.Record, value.Si))))
        .GroupBy(value => (value.Of, value.Process))
        .OrderBy(group => group.Key.Of ?? "", StringComparer.Ordinal)
        .ThenBy(group => group.Key.Process)
        .Select(group => new LearntFigure(kind, group.Key.Of, group.Key.Process, [.. group.Select(value => value.Value)]));

    private static IEnumerable<(string? Of, Process? Process, double Si)> Contents(LoggedBuild build) =>
        ResinFound.Cloths(build.Record, build.Planned).Select(cloth => ((string?)cloth.Material, build.Planned!.Process, cloth.Share));

    // What is left over of an infusion is the reserve of its feed pot, not what brush and roller keep.
    private static IEnumerable<(string? Of, Process? Process, double Si)> Losses(LoggedBuild build) =>
        build.Record.Left is { } left && build.Planned?.Process != Process.Infused ? [(null, null, left.Value.Kilograms)] : [];

    // A layer on two lines is one layer.
    private static IEnumerable<(string? Of, Process? Process, double Si)> Pickups(LoggedBuild build) => build.Record.Pickups
        .Where(line => line.Over.Value.SquareMeters > 0)
        .GroupBy(line => line.Material, StringComparer.Ordinal)
        .Select(layer => ((string?)layer.Key, (Process?)null, layer.Sum(line => line.Mass.Value.Kilograms) / layer.Sum(line => line.Over.Value.SquareMeters)));

    // The pace of the shop, and that of each pair of initials.
    private static IEnumerable<(string? Of, Process? Process, double Si)> Paces(LoggedBuild build)
    {
        var stretches = build.Record.WetOut.Where(line => line is { Took.Seconds: > 0, Over.Value.SquareMeters: > 0 }).ToList();
        if (stretches.Count == 0)
        {
            yield break;
        }

        if (Pace(stretches) is > 0 and var pace)
        {
            yield return (null, null, pace);
        }

        foreach (var person in stretches.GroupBy(line => line.By ?? build.Record.By, StringComparer.Ordinal).Where(person => person.Key is not null))
        {
            if (Pace([.. person]) is > 0 and var own)
            {
                yield return (person.Key, null, own);
            }
        }
    }

    // The plan adds the handling of each piece to the pace, so here it comes off.
    private static double Pace(List<RecordedWetOut> stretches) =>
        stretches.Sum(line => (line.Took!.Value.Seconds * line.Laminators) - (line.Pieces * Defaults.PieceHandling.Value.Seconds)) / stretches.Sum(line => line.Over!.Value.SquareMeters);

    private static IEnumerable<(string? Of, Process? Process, double Si)> Rises(LoggedBuild build) =>
        build.Record.Rise is { } rise && (build.Record.RiseTime?.Value ?? build.Planned?.RiseTime) is { Seconds: > 0 } time
            ? [(null, null, rise.Value.Pascals / time.Seconds)]
            : [];
}
