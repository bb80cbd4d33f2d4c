using Recipe.Documents.Shared;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>From the cure to its JSON shape.</summary>
internal static class CureMapping
{
    public static CureRecord Of(CurePlan cure) => new(
        [.. cure.Steps.Select(Of)],
        Si.Of(cure.Peak),
        Si.Of(cure.Total),
        Si.Of(cure.VacuumOff),
        [.. cure.Limits.Select(Of)],
        Si.Of(cure.Inside),
        Si.Of(cure.InsideAt),
        cure.Progress is { } progress ? Of(progress) : null,
        Si.RestsOn(("peak", cure.Peak.RestsOn), ("total_s", cure.Total.RestsOn), ("vacuum_off_s", cure.VacuumOff?.RestsOn), ("inside", cure.Inside?.RestsOn)));

    private static CureProgressRecord Of(CureProgress progress) => new(
        progress.OwnKinetics,
        Si.Of(progress.Gel),
        Si.Of(progress.VacuumOff),
        Si.Of(progress.Demould),
        Si.Of(progress.PlannedDemould),
        Si.Of(progress.DegreeAtDemould),
        Si.Of(progress.TransitionAtDemould),
        Si.Of(progress.Degree),
        Si.Of(progress.Transition?.Value.Value),
        Si.Of(progress.Transition?.Value.Low),
        Si.Of(progress.Transition?.Value.High),
        Si.Number(progress.LeadOffMould?.Value.Kelvins),
        Si.Of(progress.LeadOffMouldAt),
        Si.Number(progress.FastestRamp?.Value.DegreesCelsiusPerSecond),
        [.. progress.Curve.Select(moment => new CureMomentRecord(Si.Of(moment.At), Si.Number(moment.Degree), Si.Of(moment.Transition)))],
        Si.RestsOn(("degree_fraction", progress.Degree.RestsOn), ("glass_transition", progress.Transition?.RestsOn)));

    private static CureStepRecord Of(CureStepPlan step) => new(
        Keys.Of(step.Step.Action),
        Si.Of(step.From),
        Si.Of(step.To),
        Si.Of(step.Start),
        Si.Of(step.End),
        Si.Number(step.Step.Rate?.Value.DegreesCelsiusPerSecond),
        step.Step.AtRoom,
        step.Bagged,
        step.InMould,
        step.Step.Support,
        Si.RestsOn(("start_s", step.Start.RestsOn), ("end_s", step.End.RestsOn)));

    private static HeatLimitRecord Of(HeatLimit limit) => new(
        limit.Item,
        limit.Material,
        Si.Of(limit.Limit),
        Si.Of(limit.Hottest),
        limit.HottestStep,
        Si.RestsOn(("limit", limit.Limit?.RestsOn)));
}
