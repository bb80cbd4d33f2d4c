using Recipe.Documents.Languages;
using Recipe.Documents.Layout;
using Recipe.Documents.Mixing;
using Recipe.Documents.Shared;
using Recipe.Documents.Takeoffs;
using Recipe.Documents.Travellers;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>From the plan to its JSON shape.</summary>
internal static class PlanMapping
{
    public static PlanRecord Of(PaperInput input)
    {
        var plan = input.Plan;
        var part = plan.Part;
        var context = new PaperContext(input);
        var lines = JobTakeoff.Lines(context);
        var stations = TravellerPaper.Build(input with { Language = "en" }).Stations;
        return new PlanRecord(
            PlanJson.Schema,
            input.SourceName,
            input.Revision,
            input.Printed,
            Of(part, context.Parts),
            plan.Shop is { } shop ? new(shop.Name, Keys.Of(shop.Units), Keys.Of(shop.Paper), shop.Currency, Si.Of(shop.ScaleResolution?.Value)) : null,
            Conditions(plan),
            plan.Geometry is { } surface ? Of(surface, plan) : null,
            [.. (part.Mould?.Release ?? []).Select(Of)],
            [.. part.Coats.Select(coat => Of(plan, coat))],
            [.. plan.Stack.Select(StackMapping.Of)],
            plan.Laminate is { } laminate ? ResinMapping.Of(laminate) : null,
            plan.Stiffness is { } stiffness ? StackMapping.Of(stiffness) : null,
            plan.Resin is { } resin ? ResinMapping.Of(resin, part.WetOut?.Tray?.Value ?? false) : null,
            [.. plan.Pots.Select(pot => ResinMapping.Of(pot, part.WetOut?.Mixing?.Value))],
            [.. plan.OwnMixes.Select(mix => ResinMapping.Of(mix, part.WetOut?.Mixing?.Value))],
            plan.Clock is { } clock ? ResinMapping.Of(clock, new WorkClock(plan, Wording.English)) : null,
            BagMapping.Of(plan),
            BagMapping.Vacuum(plan),
            part.Infusion is { } infusion ? BagMapping.Of(infusion, plan.Flow, plan.Feed) : null,
            plan.Cure is { } cure ? CureMapping.Of(cure) : null,
            [.. part.Finish.Select(Of)],
            part.Join is { } join ? Of(plan, join) : null,
            [.. plan.Nests.Select(nest => NestMapping.Of(plan, nest))],
            [.. lines.Select(TakeoffMapping.Of)],
            [.. TakeoffMapping.Sums(lines)],
            TakeoffMapping.Total(lines, plan.Cost),
            plan.Cost is { } cost ? TakeoffMapping.Of(cost, lines, context.Parts) : null,
            [.. stations.Select((station, i) => new StationRecord(i + 1, station.Title))],
            [.. stations.SelectMany(station => station.Blocks.OfType<HoldPoint>(), Of)],
            [.. Cautions.Of(plan, Wording.English).Select(caution => new CautionRecord(Keys.Of(caution.Danger), Plain(caution.Text), caution.Source))],
            [.. Cautions.Hazards(plan).Select(hazard => new HazardRecord(hazard.Material, hazard.Hazard))],
            [.. plan.Assumptions.Select((assumption, i) => new AssumptionRecord(
                PaperContext.AssumptionId(i + 1), assumption.Key, assumption.What, assumption.Value, assumption.Source, assumption.HowToReplace))],
            [.. plan.Gaps.Select(gap => new GapRecord(gap.Subject, gap.Missing))],
            [.. input.Findings.Select(FindingRecord.Of)],
            [.. part.Waivers.Select(waiver => new WaiverRecord(waiver.Code, waiver.Because, waiver.Until))],
            [.. input.NotChecked.Select(NotCheckedRecord.Of)]);
    }

    private static PartRecord Of(Part part, int quantity) => new(
        part.Name,
        part.Label,
        part.VariantOf,
        Keys.Of(part.Process.Value),
        part.Use is { } use ? Keys.Of(use.Value) : null,
        quantity,
        part.Mould?.Name,
        part.Mould?.Label,
        part.Mould?.Pulls?.Value,
        Si.Of(part.Mould?.HeatLimit?.Value),
        part.Mould?.Halves ?? [],
        part.Resin?.Name,
        part.Resin?.Label,
        part.Resin?.Hardener,
        part.Axis,
        Si.Of(part.TargetMass?.Value),
        part.TargetMass?.Written,
        Si.Of(part.TargetTolerance?.Value),
        Si.Of(part.Trim?.Value),
        Si.Of(part.Overlap?.Value),
        Si.Of(part.Service?.Value));

    private static ConditionsRecord Conditions(Plan plan)
    {
        var conditions = plan.Conditions;
        return new(
            Si.Of(conditions.Room),
            Si.Of(conditions.Night),
            Si.Of(conditions.Resin),
            Si.Of(conditions.Film),
            conditions.Laminators.Value,
            Si.Number((plan.Part.WetOut?.Humidity ?? plan.Shop?.Humidity)?.Value),
            Si.Of(conditions.Altitude),
            Si.Of(conditions.Ambient),
            plan.Part.WetOut?.Start?.Value,
            Si.RestsOn(
                ("room", conditions.Room.RestsOn),
                ("night", conditions.Night?.RestsOn),
                ("resin", conditions.Resin.RestsOn),
                ("film", conditions.Film?.RestsOn),
                ("laminators", conditions.Laminators.RestsOn),
                ("altitude_m", conditions.Altitude.RestsOn),
                ("ambient_Pa", conditions.Ambient.RestsOn)));
    }

    private static GeometryRecord Of(GeometryPlan surface, Plan plan) => new(
        Words.Of(surface.Shape),
        surface.Sides,
        Si.Of(surface.Area),
        Si.Of(surface.Rim),
        Si.Of(surface.Depth),
        Si.Of(surface.DevelopedLength),
        Si.Of(surface.DevelopedWidth),
        surface.DoublyCurved,
        surface.Flat,
        ShapeRecord.Of(plan));

    private static ReleaseRecord Of(ReleaseCoat line) => new(
        line.Agent.Name,
        line.Agent.Label,
        line.Agent.Kind is { } kind ? Keys.Of(kind) : null,
        line.Coats?.Value,
        Si.Of(line.Wait?.Value),
        Si.Of(line.Dry?.Value));

    private static CoatRecord Of(Plan plan, Coat coat) => new(
        coat.Material.Name,
        coat.Material.Label,
        Si.Of(coat.ArealWeight?.Value),
        Si.Of(Liquids.OnTheMould(plan, coat)),
        Si.Of(Liquids.ToMix(plan, coat)),
        coat.Material.Mix?.Written);

    private static FinishRecord Of(FinishStep step) => new(step.Verb, step.Text);

    private static JoinRecord Of(Plan plan, Join join) => new(
        join.Manner is { } manner ? Keys.Of(manner.Value) : null,
        join.Parts,
        Si.Of(join.Overlap?.Value),
        Si.Of(join.Seam?.Value) ?? Si.Of(plan.Join?.Seam),
        join.Adhesive?.Name,
        join.Adhesive?.Label,
        Si.Of(join.BondLine?.Value),
        join.Tape?.Name,
        join.Tape?.Label,
        Si.Of(join.TapeWidth?.Value),
        join.TapeLayers,
        Si.Of(join.Within?.Value),
        Si.Number(join.Fillet?.Value.KilogramsPerMeter),
        Si.Of(Liquids.FillerOf(plan)),
        Si.Of(join.Pot?.Value),
        Si.Of(join.Vent?.Value),
        join.Align,
        [.. join.Preparation.Select(Of)],
        Si.Of(plan.Join?.Adhesive),
        Si.Of(plan.Join?.TapeArea),
        Si.Of(plan.Join?.TapeCloth),
        Si.Of(plan.Join?.TapeResin),
        plan.Join?.SameSession,
        Si.Of(plan.Join?.Mass),
        [.. (plan.Join?.Parts ?? []).Select(part => new JoinedPartRecord(part.Name, Si.Of(part.Mass.Value.Value), Si.Of(part.Mass.Value.Low), Si.Of(part.Mass.Value.High)))],
        Si.Of(plan.Join?.Whole?.Value.Value),
        Si.Of(plan.Join?.Whole?.Value.Low),
        Si.Of(plan.Join?.Whole?.Value.High),
        Si.RestsOn(
            ("seam_m", plan.Join?.Seam?.RestsOn),
            ("filler_kg", plan.Join?.Fillet?.RestsOn),
            ("adhesive_kg", plan.Join?.Adhesive?.RestsOn),
            ("tape_area_m2", plan.Join?.TapeArea?.RestsOn),
            ("tape_cloth_kg", plan.Join?.TapeCloth?.RestsOn),
            ("tape_resin_kg", plan.Join?.TapeResin?.RestsOn),
            ("mass_kg", plan.Join?.Mass.RestsOn),
            ("whole_kg", plan.Join?.Whole?.RestsOn)));

    private static HoldPointRecord Of(Station station, HoldPoint hold) => new(
        hold.Id,
        station.Title,
        hold.Title,
        [.. hold.Checks.Select(check => Plain(check.Plain))],
        [.. hold.Blanks(Wording.English).Select(blank => blank.Unit.Length == 0 ? blank.What : $"{blank.What}, {blank.Unit}")]);

    // No-break spaces are for papers.
    private static string Plain(string text) => Quantities.PlainText.Spaced(text);
}
