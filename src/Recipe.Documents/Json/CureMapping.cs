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
        [.. cure.Limits.Select(Of)],
        Si.RestsOn(("peak", cure.Peak.RestsOn), ("total_s", cure.Total.RestsOn)));

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
