using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>From bag, vacuum and infusion to their JSON shapes. What the plan did not compute still shows what the author wrote.</summary>
internal static class BagMapping
{
    public static BagRecord? Of(Plan plan)
    {
        var (bag, sizes) = (plan.Part.Bag, plan.Bag);
        if (bag is null && sizes is null)
        {
            return null;
        }

        var layers = sizes is not null ? sizes.Layers.Select(layer => Of(layer.Layer, layer)) : bag!.Layers.Select(layer => Of(layer, null));
        return new(
            [.. layers],
            bag?.SealantTape?.Material.Name,
            bag?.SealantTape?.Material.Label,
            Si.Of(sizes?.SealantTape),
            Si.Of(sizes?.Pickup),
            Si.Of(sizes?.CouldTake),
            [.. Fittings(bag)],
            bag?.GaugeAt,
            bag?.Pleats?.Value,
            bag?.IsEnvelope ?? false,
            Si.Of(bag?.Time?.Value),
            sizes?.Bags,
            Si.RestsOn(("sealant_tape_m", sizes?.SealantTape.RestsOn), ("pickup_kg", sizes?.Pickup?.RestsOn), ("could_take_kg", sizes?.CouldTake?.RestsOn)));
    }

    public static VacuumRecord? Vacuum(Plan plan)
    {
        var (written, levels) = (plan.Part.Vacuum, plan.Vacuum);
        return written is null && levels is null ? null : new(
            written?.Draw?.Written,
            Si.Of(levels?.BelowAmbient),
            Si.Of(levels?.Absolute),
            Si.Of(levels?.Ceiling),
            Si.Of(written?.Within?.Value),
            Si.Of(written?.Settle?.Value),
            Si.Of(levels?.LeakCheck) ?? Si.Of(written?.LeakCheck?.Duration?.Value),
            Si.Of(levels?.RiseAtMost) ?? Si.Of(written?.LeakCheck?.RiseAtMost?.Value),
            Si.Of(written?.Hold?.Value),
            written?.Off,
            Si.Of(levels?.PumpDown),
            Si.Of(levels?.HoseSlows),
            Si.Of(levels?.PumpMargin),
            Si.Number(levels?.PumpNeeded?.Value.CubicMetersPerSecond),
            Si.Of(levels?.HoseTakes),
            Si.Number(levels?.LeakOfAir?.Value.CubicMetersPerSecond),
            Si.Of(levels?.Hole),
            Si.RestsOn(
                ("below_ambient_Pa", levels?.BelowAmbient.RestsOn),
                ("absolute_Pa", levels?.Absolute.RestsOn),
                ("ceiling_Pa", levels?.Ceiling.RestsOn),
                ("leak_check_s", levels?.LeakCheck?.RestsOn),
                ("rise_at_most_Pa", levels?.RiseAtMost?.RestsOn),
                ("pump_down_s", levels?.PumpDown?.RestsOn),
                ("hose_slows_s", levels?.HoseSlows?.RestsOn),
                ("pump_margin", levels?.PumpMargin?.RestsOn),
                ("pump_needed_m3_per_s", levels?.PumpNeeded?.RestsOn),
                ("hose_takes_fraction", levels?.HoseTakes?.RestsOn),
                ("leak_of_air_m3_per_s", levels?.LeakOfAir?.RestsOn),
                ("hole_m", levels?.Hole?.RestsOn)));
    }

    public static InfusionRecord Of(Infusion infusion, InfusionFlow? flow, FeedPlan? feed) => new(
        Si.Of(feed?.Length) ?? Si.Of(infusion.FeedLine?.Value),
        feed?.Lines.Value,
        Si.Of(feed?.Bore),
        Si.Of(infusion.Path?.Value),
        Si.Of(infusion.ResinTemperature?.Value),
        Si.Of(infusion.MouldTemperature?.Value),
        infusion.ClampFeed,
        infusion.Vent,
        Si.Number(infusion.Reserve?.Value),
        Si.Of(infusion.DropTest?.Duration?.Value),
        Si.Of(infusion.DropTest?.RiseAtMost?.Value),
        flow is null ? null : Of(flow),
        Si.RestsOn(("feed_line_m", feed?.Length?.RestsOn), ("feed_lines", feed?.Lines.RestsOn), ("line_diameter_m", feed?.Bore.RestsOn)));

    private static FlowRecord Of(InfusionFlow flow) => new(
        flow.FromALine,
        Si.Of(flow.Drive),
        Si.Of(flow.Permeability),
        Si.Of(flow.Porosity),
        Si.Number(flow.Viscosity.Value.PascalSeconds),
        Si.Of(flow.Fill),
        Si.Of(flow.FillAtBest),
        Si.Of(flow.FillAtWorst),
        Si.Of(flow.Reach),
        Si.Of(flow.Thickens),
        Si.Of(flow.Gel),
        Si.Of(flow.LongestPath),
        Si.RestsOn(
            ("fill_s", flow.Fill?.RestsOn),
            ("permeability_m2", flow.Permeability.RestsOn),
            ("reach_m", flow.Reach.RestsOn),
            ("thickens_s", flow.Thickens.RestsOn),
            ("gel_s", flow.Gel?.RestsOn)));

    private static BagLayerRecord Of(BagLayer layer, BagLayerPlan? plan) => new(
        Keys.Of(layer.Class),
        layer.Material.Name,
        layer.Material.Label,
        layer.ChosenByDefault,
        layer.Count,
        layer.Perforation is { } perforation ? Keys.Of(perforation.Value) : null,
        Si.Of(layer.Smaller?.Value),
        Si.Of(layer.Beyond?.Value),
        Si.Of(plan?.Length),
        Si.Of(plan?.Width),
        plan?.Sheets,
        Si.Of(plan?.Area),
        Si.Of(plan?.Pickup),
        Si.RestsOn(("length_m", plan?.Length.RestsOn), ("width_m", plan?.Width.RestsOn), ("area_m2", plan?.Area.RestsOn), ("pickup_kg", plan?.Pickup?.RestsOn)));

    private static IEnumerable<FittingRecord> Fittings(Bag? bag)
    {
        ImmutableArray<Placed<Fitting>?> placed = bag is null ? [] : [.. bag.Ports, bag.Hose, bag.CatchPot];
        return placed.OfType<Placed<Fitting>>().Select(fitting => new FittingRecord(
            Keys.Of(fitting.Material.Kind), fitting.Material.Name, fitting.Material.Label, fitting.At, fitting.Sits is { } seat ? Keys.Of(seat) : null));
    }
}
