using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>From what loads and cooling do to the stack to its JSON shape.</summary>
internal static class LoadMapping
{
    public static LoadRecord Of(LoadPlan plan)
    {
        var strip = plan.Load as StripLoad;
        return new(
            plan.Load.Name,
            Keys.Of(plan.Load.Direction),
            Si.Number((plan.Load as PullLoad)?.Pull.Value.NewtonsPerMeter),
            Si.Of(strip?.Width.Value),
            Si.Of(strip?.Span.Value),
            Si.Number(strip?.Load.Value.Newtons),
            Si.Of(plan.First?.Factor),
            plan.First?.Line,
            plan.First is { } first ? Keys.Of(first.Mode) : null,
            plan.First?.BagSideStretched,
            plan.WithoutLimits,
            plan.PartlyJudged,
            Si.Of(plan.Sag),
            [.. plan.Lines.Select(line => new LineStressRecord(line.Name, Si.Of(line.Along), Si.Of(line.Across), Si.Of(line.Shear)))],
            Si.RestsOn(
                ("factor_to_first_limit", plan.First?.Factor.RestsOn),
                ("sag_m", plan.Sag?.RestsOn),
                ("lines", plan.Lines.IsEmpty ? null : plan.Lines[0].Along.RestsOn)));
    }

    public static CurlRecord Of(CurlPlan curl) => new(
        curl.IsSymmetric,
        Si.Of(curl.StressFree),
        Si.Of(curl.Room),
        Si.Number(curl.Along.Value.InverseMeters),
        Si.Number(curl.Across.Value.InverseMeters),
        Si.Number(curl.Twist.Value.InverseMeters),
        Si.Of(curl.Length),
        Si.Of(curl.Width),
        Si.Of(curl.RiseAlong),
        Si.Of(curl.RiseAcross),
        Si.Of(curl.CornerRise),
        Si.RestsOn(
            ("stress_free", curl.StressFree?.RestsOn),
            ("room", curl.Room.RestsOn),
            ("curvature_along_per_m", curl.Along.RestsOn),
            ("curvature_across_per_m", curl.Across.RestsOn),
            ("twist_per_m", curl.Twist.RestsOn),
            ("rise_along_m", curl.RiseAlong.RestsOn),
            ("rise_across_m", curl.RiseAcross.RestsOn),
            ("corner_rise_m", curl.CornerRise.RestsOn)));
}
