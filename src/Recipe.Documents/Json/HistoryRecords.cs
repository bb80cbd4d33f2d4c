using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Recipe.Documents.Histories;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>The root of <c>recipe/history/1</c>.</summary>
internal sealed record HistoryRecord(string Schema, string Part, ImmutableArray<BuiltRecord> Builds, RunChartRecord? MassChart)
{
    public static HistoryRecord Of(BuildLog log) => new(
        HistoryReport.Schema, log.Part, [.. log.Builds.Select(BuiltRecord.Of)], RunChart.Of(log, RunFigure.MassFigure) is var (builds, chart) ? RunChartRecord.Of(builds, chart) : null);
}

internal sealed record BuiltRecord(
    string File, int? Serial, string? Day, string? Revision, bool RevisionIsOfToday, double? MassKg, double? PlannedMassKg, double? PlannedMassLowKg, double? PlannedMassHighKg, double? ResinFraction,
    double? MixedKg, double? LeftKg, ImmutableArray<double> ThicknessM, [property: JsonPropertyName("rise_Pa")] double? RisePa, double? RiseTimeS,
    [property: JsonPropertyName("room_K")] double? RoomK, [property: JsonPropertyName("hottest_K")] double? HottestK, ImmutableArray<DefectRecord> Defects, string? Disposition)
{
    public static BuiltRecord Of(LoggedBuild build)
    {
        var (record, planned) = (build.Record, build.Planned);
        return new(
            record.Where.Source.Name, record.Number, record.On is { } day ? Quantities.Numbers.Day(day) : null, record.Revision?.Value, build.IsOfToday,
            record.Mass?.Value.Kilograms, planned?.Mass?.Kilograms, planned?.MassLow?.Kilograms, planned?.MassHigh?.Kilograms, ResinFound.Share(record, planned),
            record.MixedMass?.Kilograms, record.Left?.Value.Kilograms, [.. record.Thickness.Select(one => one.Value.Meters)],
            record.Rise?.Value.Pascals, (record.RiseTime?.Value ?? planned?.RiseTime)?.Seconds, record.Room?.Value.Kelvins, record.Hottest?.Value.Kelvins,
            [.. record.Defects.Select(defect => new DefectRecord(defect.Code, defect.What, defect.At, defect.Size?.Value.Meters))],
            record.Disposition?.Decision.ToString().ToLowerInvariant());
    }
}

internal sealed record DefectRecord(string? Code, string What, string? At, double? SizeM);

internal sealed record RunChartRecord(double MeanKg, double MeanMovingRangeKg, double? LowKg, double? HighKg, ImmutableArray<SignalRecord> Signals)
{
    public static RunChartRecord Of(ImmutableArray<BuildRecord> builds, IndividualsChart chart) => new(
        chart.Mean, chart.MovingRange, chart.IsEnough ? chart.Low : null, chart.IsEnough ? chart.High : null,
        [.. builds.Zip(chart.Signals).Where(pair => pair.Second != ChartSignal.None).Select(pair => new SignalRecord(pair.First.Number, pair.Second.ToString().ToLowerInvariant()))]);
}

internal sealed record SignalRecord(int? Serial, string Signal);
