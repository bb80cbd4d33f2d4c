using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using UnitsNet;

namespace Recipe.HouseRules;

/// <summary>The facts of what is not a line of the stack: release, coats, pots, bag, cure, finishing, loads.</summary>
internal static class ElementFacts
{
    public static FactNode Release(ReleaseCoat coat, int index) => new FactNode(FactTable.Release, coat.Where)
        .Set("agent", Facts.WordOn(coat.Agent.Name, coat.Where))
        .Set("kind", coat.Agent.Kind is { } kind ? Facts.Word(PlanFacts.Kebab(kind)) : null)
        .Set("position", Facts.Number(index + 1))
        .Set("coats", Facts.Of(coat.Coats, n => (double)n, $"coats of {coat.Agent.Name}"))
        .Set("wait", Facts.Time(coat.Wait, $"wait of {coat.Agent.Name}"))
        .Set("dry", Facts.Time(coat.Dry, $"dry of {coat.Agent.Name}"));

    public static FactNode Coat(Coat coat, int index) => new FactNode(FactTable.Coat, coat.Where)
        .Set("material", Facts.WordOn(coat.Material.Name, coat.Where))
        .Set("chemistry", Facts.Word(PlanFacts.ChemistryOf(coat.Material)))
        .Set("position", Facts.Number(index + 1))
        .Set("areal-weight", Facts.ArealWeight(coat.ArealWeight, $"weight of {coat.Material.Name}"))
        .Set("wait", Facts.Time(coat.Wait, "wait"));

    public static FactNode FinishStep(FinishStep step, int index) => new FactNode(FactTable.FinishStep, step.Where)
        .Set("step", Facts.WordOn(step.Verb, step.Where))
        .Set("position", Facts.Number(index + 1))
        .Set("text", Facts.Word(step.Text));

    public static ImmutableArray<FactNode> Pots(Plan plan)
    {
        var where = plan.Part.WetOut?.Where ?? plan.Part.ResinWhere ?? plan.Part.Where;
        var pots = ImmutableArray.CreateBuilder<FactNode>();
        pots.AddRange(plan.Pots.Select(pot => Pot(pot, "laminate", where)));
        foreach (var mix in plan.OwnMixes)
        {
            var (use, at) = mix.Use switch
            {
                OwnMixUse.Coat => ("coat", plan.Part.Coats.FirstOrDefault(coat => coat.Material == mix.System)?.Where),
                OwnMixUse.SeamResin => ("seam", plan.Part.Join?.Where),
                _ => ("adhesive", plan.Part.Join?.AdhesiveWhere),
            };
            pots.AddRange(mix.Pots.Select(pot => Pot(pot, use, at ?? where)));
        }

        return pots.ToImmutable();
    }

    public static ImmutableArray<FactNode> BagLayers(Plan plan)
    {
        var layers = plan.Part.Bag?.Layers ?? [];
        return [.. layers.Select((layer, i) => BagLayer(layer, plan.Bag?.Layers.FirstOrDefault(computed => computed.Layer == layer), i))];
    }

    public static ImmutableArray<FactNode> CureSteps(Plan plan) => plan.Cure is { } cure
        ? [.. cure.Steps.Select((step, i) => CureStep(step.Step, i)
            .Set("from", Facts.Number(step.From.Kelvins))
            .Set("to", Facts.Number(step.To.Kelvins).StatedAt(step.Step.Temperature?.Where))
            .Set("lasts", Lasts(step))
            .Set("start", Facts.Time(step.Start))
            .Set("end", Facts.Time(step.End))
            .Set("bagged", Facts.YesNo(step.Bagged))
            .Set("in-mould", Facts.YesNo(step.InMould)))]
        : [.. (plan.Part.Cure?.Steps ?? []).Select(CureStep)];

    public static ImmutableArray<FactNode> Loads(Plan plan) =>
        [.. plan.Part.Loads.Select(load => Load(load, plan.Stiffness?.Loads.FirstOrDefault(computed => computed.Load == load)))];

    private static FactNode Pot(PotPlan pot, string use, SourceSpan where) => new FactNode(FactTable.Pot, where)
        .Set("use", Facts.Word(use))
        .Set("number", Facts.Number(pot.Number))
        .Set("mass", Facts.Mass(pot.Mass))
        .Set("resin", Facts.Mass(pot.Resin))
        .Set("hardener", Facts.Mass(pot.Hardener))
        .Set("mixed-at", Facts.Time(pot.MixedAt))
        .Set("used-up-at", Facts.Time(pot.UsedUpAt))
        .Set("life", Facts.Time(pot.PotLife))
        .Set("time-left", pot.DeadAt is { } dead ? Facts.Time((Computed<Duration>?)new Computed<Duration>(dead.Value - pot.UsedUpAt.Value, Both(dead.RestsOn, pot.UsedUpAt.RestsOn))) : null)
        .Set("standing-peak", Facts.Heat(pot.StandingPeak));

    private static FactNode BagLayer(BagLayer layer, BagLayerPlan? plan, int index) => new FactNode(FactTable.BagLayer, layer.Where)
        .Set("class", Facts.Word(PlanFacts.Kebab(layer.Class)))
        .Set("material", layer.ChosenByDefault ? Facts.Word(layer.Material.Name) : Facts.WordOn(layer.Material.Name, layer.Where))
        .Set("stuff", Facts.Word(layer.Material.Stuff))
        .Set("position", Facts.Number(index + 1))
        .Set("sheets", Facts.Number(layer.Count))
        .Set("reused", Facts.YesNo(layer.Reused))
        .Set("coated", layer.Material.Coated is { } coated ? Facts.YesNo(coated) : null)
        .Set("perforation", Facts.Word(layer.Perforation, open => PlanFacts.Kebab(open), "perforation"))
        .Set("heat-limit", Facts.Heat(layer.Material.HeatLimit, $"heat limit of {layer.Material.Name}"))
        .Set("pickup", Facts.Mass(plan?.Pickup))
        .Set("area", plan is null ? null : Facts.Area(plan.Area));

    private static FactNode CureStep(CureStep step, int index) => new FactNode(FactTable.CureStep, step.Where)
        .Set("action", Facts.Word(PlanFacts.Kebab(step.Action)))
        .Set("position", Facts.Number(index + 1))
        .Set("rate", Facts.Of(step.Rate, rate => rate.DegreesCelsiusPerSecond, "rate"))
        .Set("lasts", Facts.Time(step.Duration, "time"));

    private static FactValue? Lasts(CureStepPlan step) =>
        Facts.Time((Computed<Duration>?)new Computed<Duration>(step.End.Value - step.Start.Value, Both(step.Start.RestsOn, step.End.RestsOn))).StatedAt(step.Step.Duration?.Where);

    private static FactNode Load(StatedLoad load, LoadPlan? plan) => new FactNode(FactTable.Load, load.Where)
        .Set("name", Facts.Word(load.Name))
        .Set("way", Facts.Word(PlanFacts.Kebab(load.Direction)))
        .Set("times-over", plan is { IsComplete: true, First: { } first } ? Facts.Share(first.Factor) : null)
        .Set("sag", Facts.Length(plan?.Sag));

    private static ImmutableArray<string> Both(ImmutableArray<string> a, ImmutableArray<string> b) =>
        [.. (a.IsDefault ? [] : a).Union(b.IsDefault ? [] : b, StringComparer.Ordinal).Order(StringComparer.Ordinal)];
}
