using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Planning;

namespace Recipe.Documents.Histories;

/// <summary>One row for each build, the columns that pay when it is asked why the fourth was bad.</summary>
internal static class HistoryRows
{
    private static readonly ImmutableArray<(string Name, Func<LoggedBuild, object?> Value)> Columns =
    [
        ("serial", b => b.Record.Number),
        ("day", b => b.Record.On),
        ("revision", b => b.Record.Revision?.Value),
        ("by", b => b.Record.By),
        ("helper", b => b.Record.Helper),
        ("changed", b => b.Record.Changed?.Value),
        ("room_degC", b => b.Record.Room?.Value.DegreesCelsius),
        ("humidity_percent", b => b.Record.Humidity?.Value * 100),
        ("pulls_since_release", b => b.Record.PullsSinceRelease?.Value),
        ("kit_g", b => b.Record.Kit?.Value.Grams),
        ("mixed_g", b => b.Record.MixedMass?.Grams),
        ("left_g", b => b.Record.Left?.Value.Grams),
        ("first_mix", b => Clock(b.Record.Pots.Select(pot => pot.MixedAt).FirstOrDefault())),
        ("wet_out_min", b => b.Record.WetOut.Any(line => line.Took is not null) ? b.Record.WetOut.Sum(line => line.Took?.Minutes ?? 0) : null),
        ("vacuum_on", b => Clock(b.Record.Vacuum?.On)),
        ("vacuum_reached", b => b.Record.Vacuum?.Written),
        ("rise_mbar", b => b.Record.Rise?.Value.Millibars),
        ("rise_min", b => (b.Record.RiseTime?.Value ?? b.Planned?.RiseTime)?.Minutes),
        ("hottest_degC", b => b.Record.Hottest?.Value.DegreesCelsius),
        ("cure_h", b => b.Record.CureTime?.Value.Hours),
        ("demould_h", b => b.Record.Demould?.Value.Hours),
        ("untrimmed_g", b => b.Record.Untrimmed?.Value.Grams),
        ("mass_g", b => b.Record.Mass?.Value.Grams),
        ("planned_mass_g", b => b.Planned?.Mass?.Grams),
        ("resin_percent", b => ResinFound.Share(b.Record, b.Planned) * 100),
        ("thickness_mm", b => b.Record.Thickness.IsEmpty ? null : b.Record.Thickness.Average(one => one.Value.Millimeters)),
        ("pinholes", b => b.Record.Pinholes?.Value),
        ("peel_ply", b => b.Record.PeelPly),
        ("defects", b => Joined(b.Record.Defects.Select(defect => defect.Code ?? defect.What))),
        ("cause", b => b.Record.Cause),
        ("action", b => b.Record.Action),
        ("deviations", b => Joined(b.Record.Deviations.Select(deviation => deviation.What))),
        ("disposition", b => b.Record.Disposition?.Decision.ToString().ToLowerInvariant()),
    ];

    public static DataTable Of(BuildLog log) => new(
        [.. Columns.Select(column => column.Name)],
        [.. log.Builds.Select(build => Columns.Select(column => Rounded(column.Value(build))).ToImmutableArray())]);

    // What was written as 70.8 g comes back as that, and not with what its way through kilograms added.
    private static object? Rounded(object? value) => value is double number ? Math.Round(number, 6) : value;

    private static string? Clock(TimeOnly? time) => time?.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    private static string? Joined(IEnumerable<string> words) => string.Join("; ", words) is { Length: > 0 } text ? text : null;
}
