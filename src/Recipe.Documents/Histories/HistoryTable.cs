using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Histories;

/// <summary>A line for each build: planned and found.</summary>
internal static class HistoryTable
{
    public static Table Of(BuildLog log, QuantityText text) => new(
        "",
        [
            new("No.", Align.Right, NamesTheRow: true), new("Day"), new("Recipe"), new("Mass", Align.Right), new("Planned", Align.Right), new("Off", Align.Right), new("Resin", Align.Right),
            new("Thickness", Align.Right), new("Leak", Align.Right), new("Room", Align.Right), new("Faults"), new("Decided"),
        ],
        [.. log.Builds.Select(build => new CellRow([.. Cells(build, text)]))]);

    /// <summary>The serial number, or the day, or a dash.</summary>
    public static string NumberOf(BuildRecord record) => record.Number is { } number ? Numbers.Whole(number) : record.On is { } day ? Numbers.Day(day) : "-";

    private static IEnumerable<Cell> Cells(LoggedBuild build, QuantityText text)
    {
        var (record, planned) = (build.Record, build.Planned);
        yield return NumberOf(record);
        yield return record.On is { } day ? Numbers.Day(day) : "";
        yield return record.Revision is { } revision ? revision.Value + (build.IsOfToday ? "" : "*") : "";
        yield return record.Mass is { } mass ? text.Weight(mass.Value).Main : "";
        yield return planned?.Mass is { } wanted ? text.About(wanted).Main : "";
        yield return record.Mass is { } found && planned?.Mass is { Kilograms: > 0 } plan ? Signed((found.Value / plan) - 1) : "";
        yield return ResinFound.Share(record, planned) is { } share ? QuantityText.Share(share) : "";
        yield return record.Thickness.IsEmpty ? "" : text.Thickness(Length.FromMeters(record.Thickness.Average(one => one.Value.Meters))).Main;
        yield return record.Rise is { } rise ? text.Pressure(rise.Value).Main + ((record.RiseTime?.Value ?? planned?.RiseTime) is { } time ? $" in {QuantityText.Minutes(time)}" : "") : "";
        yield return record.Room is { } room ? text.Temperature(room.Value).Main : "";
        yield return string.Join(", ", record.Defects.Select(defect => defect.Code ?? defect.What));
        yield return record.Disposition?.Decision.ToString().ToLowerInvariant() ?? "";
    }

    private static string Signed(double share) => (share > 0 ? "+" : share < 0 ? "−" : "") + QuantityText.Share(Math.Abs(share));
}
