using System.Collections.Immutable;
using System.Text;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;

namespace Recipe.HouseRules;

/// <summary>Reads the facts of a part out of its plan.</summary>
public static class PlanFacts
{
    /// <summary>All facts of a part. What its plan does not know is not there.</summary>
    /// <param name="plan">The plan.</param>
    public static FactNode Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var elements = ImmutableDictionary.CreateBuilder<string, ImmutableArray<FactNode>>(StringComparer.Ordinal);
        elements[FactTable.Release.Word] = [.. (plan.Part.Mould?.Release ?? []).Select(ElementFacts.Release)];
        elements[FactTable.Coat.Word] = [.. plan.Part.Coats.Select(ElementFacts.Coat)];
        elements[FactTable.Ply.Word] = [.. Lines<PlyItem>(plan).Select(line => StackFacts.Ply(line.Item, line.Plan, line.Position))];
        elements[FactTable.Core.Word] = [.. Lines<CoreItem>(plan).Select(line => StackFacts.Core(line.Item, line.Plan, line.Position))];
        elements[FactTable.Insert.Word] = [.. Lines<InsertItem>(plan).Select(line => StackFacts.Insert(line.Item, line.Plan, line.Position))];
        elements[FactTable.Pot.Word] = ElementFacts.Pots(plan);
        elements[FactTable.BagLayer.Word] = ElementFacts.BagLayers(plan);
        elements[FactTable.CureStep.Word] = ElementFacts.CureSteps(plan);
        elements[FactTable.FinishStep.Word] = [.. plan.Part.Finish.Select(ElementFacts.FinishStep)];
        elements[FactTable.Load.Word] = ElementFacts.Loads(plan);
        var node = new FactNode(FactTable.Part, plan.Part.Where) { Elements = elements.ToImmutable() };
        SetStated(node, plan.Part);
        SetMould(node, plan);
        SetComputed(node, plan);
        return node;
    }

    /// <summary>A word of the language for a choice of the model: <c>PeelPly</c> is <c>peel-ply</c>.</summary>
    internal static string Kebab<T>(T choice)
        where T : struct, Enum
    {
        var text = new StringBuilder();
        foreach (var letter in choice.ToString())
        {
            if (char.IsAsciiLetterUpper(letter) && text.Length > 0)
            {
                text.Append('-');
            }

            text.Append(char.ToLowerInvariant(letter));
        }

        return text.ToString();
    }

    internal static string? ChemistryOf(ResinSystem? resin) => resin is null or { Chemistry: Chemistry.Unknown } ? null : Kebab(resin.Chemistry);

    private static IEnumerable<(T Item, StackPlan? Plan, int Position)> Lines<T>(Plan plan)
        where T : StackItem
    {
        var stack = plan.Part.Stack;
        for (var i = 0; i < stack.Length; i++)
        {
            if (stack[i] is T item)
            {
                yield return (item, i < plan.Stack.Length && plan.Stack[i].Item == item ? plan.Stack[i] : plan.Stack.FirstOrDefault(line => line.Item == item), i + 1);
            }
        }
    }

    private static void SetStated(FactNode node, Part part) => node
        .Set("name", Facts.Word(part.Name))
        .Set("title", Facts.Word(part.Title))
        .Set("variant-of", Facts.Word(part.VariantOf))
        .Set("process", Facts.Word(part.Process, process => Kebab(process), "process"))
        .Set("use", Facts.Word(part.Use, use => Kebab(use), "use"))
        .Set("outdoors", Facts.YesNo(part.Outdoors, "outdoors"))
        .Set("colour", Facts.Word(part.Colour, colour => Kebab(colour), "colour"))
        .Set("quantity", Facts.Number(part.Quantity))
        .Set("trim", Facts.Length(part.Trim, "trim"))
        .Set("overlap", Facts.Length(part.Overlap, "overlap"))
        .Set("stagger", Facts.Length(part.Stagger, "stagger"))
        .Set("service", Facts.Heat(part.Service, "service"))
        .Set("target-mass", Facts.Of(part.TargetMass, m => m.Kilograms, "target mass"))
        .Set("resin-name", Facts.Word(part.Resin?.Name, part.ResinWhere))
        .Set("hardener-name", Facts.Word(part.Resin?.Hardener))
        .Set("chemistry", Facts.Word(ChemistryOf(part.Resin)))
        .Set("humidity", Facts.Of(part.WetOut?.Humidity, h => h, "humidity"))
        .Set("tray", Facts.YesNo(part.WetOut?.Tray, "tray"))
        .Set("mixing", Facts.Time(part.WetOut?.Mixing, "mixing"))
        .Set("loss", Facts.Of(part.WetOut?.Loss, m => m.Kilograms, "loss"))
        .Set("spare", Facts.Of(part.WetOut?.Spare, s => s, "spare"))
        .Set("feed-path", Facts.Length(part.Infusion?.Path, "path"))
        .Set("join-within", Facts.Time(part.Join?.Within, "within"));

    private static void SetMould(FactNode node, Plan plan)
    {
        var mould = plan.Part.Mould;
        node.Set("mould-name", Facts.Word(mould?.Name, plan.Part.MouldWhere))
            .Set("mould-material", Facts.Word(mould?.MadeOf?.Name, mould?.MadeOfWhere))
            .Set("mould-state", Facts.Word(mould?.State, state => Kebab(state), "state of the mould"))
            .Set("mould-pulls", Facts.Of(mould?.Pulls, n => (double)n, "pulls"))
            .Set("mould-pulls-since-release", Facts.Of(mould?.PullsSinceRelease, n => (double)n, "pulls since release"))
            .Set("mould-heat-limit", Facts.Heat(mould?.HeatLimit, $"heat limit of {mould?.Name}"))
            .Set("flange", Facts.Length(mould?.Flange, "flange"))
            .Set("inside-radius", Facts.Length(mould?.InsideRadius, "radius"))
            .Set("draft", Facts.Of(mould?.Draft, a => a.Radians, "draft"));
        if (plan.Geometry is { } geometry)
        {
            node.Set("halves", Facts.Number(geometry.Sides))
                .Set("area", Facts.Number(geometry.Area.SquareMeters * geometry.Sides))
                .Set("rim", Facts.Number(geometry.Rim.Meters))
                .Set("depth", Facts.Number(geometry.Depth.Meters))
                .Set("flat", Facts.YesNo(geometry.Flat))
                .Set("doubly-curved", Facts.YesNo(geometry.DoublyCurved));
        }
    }

    private static void SetComputed(FactNode node, Plan plan)
    {
        var (part, laminate, stiffness, vacuum, progress) = (plan.Part, plan.Laminate, plan.Stiffness, plan.Vacuum, plan.Cure?.Progress);
        node.Set("room", Facts.Heat(plan.Conditions.Room).StatedAt((part.WetOut?.RoomHigh ?? part.WetOut?.Room)?.Where))
            .Set("night", Facts.Heat(plan.Conditions.Night))
            .Set("resin-temperature", Facts.Heat(plan.Conditions.Resin).StatedAt(part.WetOut?.ResinTemperature?.Where))
            .Set("laminators", Facts.Of((Computed<int>?)plan.Conditions.Laminators, n => (double)n).StatedAt(part.WetOut?.Laminators?.Where))
            .Set("altitude", Facts.Length(plan.Conditions.Altitude))
            .Set("mass", Facts.Of(plan.TrimmedMass, m => m.Value.Kilograms))
            .Set("fibre-mass", Facts.Mass(laminate?.Fibre))
            .Set("resin-mass", Facts.Mass(laminate?.Resin))
            .Set("core-mass", Facts.Mass(laminate?.Core))
            .Set("coat-mass", Facts.Mass(laminate?.Coats))
            .Set("insert-mass", Facts.Mass(laminate?.Inserts))
            .Set("thickness", Facts.Length(laminate?.Thickness))
            .Set("resin-content", Facts.Share(laminate?.ResinFraction).StatedAt(ResinStated(part)))
            .Set("fibre-volume", Facts.Share(laminate?.FibreVolumeFraction))
            .Set("resin", Facts.Mass(plan.Resin?.ToMix))
            .Set("pots", plan.Resin is null ? null : Facts.Number(plan.Pots.Length))
            .Set("wet-out-time", Facts.Time(plan.Clock?.WetOut))
            .Set("bagging-time", Facts.Time(plan.Clock?.Bagging))
            .Set("draw-down", Facts.Time(plan.Clock?.DrawDown))
            .Set("to-vacuum", Facts.Time(plan.Clock?.Need))
            .Set("film-life", Facts.Time(plan.Clock?.FilmLife))
            .Set("clock-left", ClockLeft(plan))
            .Set("bending-along", Facts.Of(stiffness?.StripAlong, t => t.NewtonMeters))
            .Set("bending-across", Facts.Of(stiffness?.StripAcross, t => t.NewtonMeters))
            .Set("modulus-along", Facts.Pressure(stiffness?.Along))
            .Set("modulus-across", Facts.Pressure(stiffness?.Across))
            .Set("times-over", Figure(plan, PartFigure.TimesOver))
            .Set("vacuum-below", Facts.Pressure(vacuum?.BelowAmbient))
            .Set("vacuum-absolute", Facts.Pressure(vacuum?.Absolute))
            .Set("leak-check", Facts.Time(vacuum?.LeakCheck).StatedAt(part.Vacuum?.LeakCheck?.Duration?.Where))
            .Set("rise-at-most", Facts.Pressure(vacuum?.RiseAtMost).StatedAt(part.Vacuum?.LeakCheck?.RiseAtMost?.Where))
            .Set("pump-down", Facts.Time(vacuum?.PumpDown))
            .Set("fill", Facts.Time(plan.Flow?.Fill))
            .Set("cure-end", Facts.Time(plan.Cure?.Total))
            .Set("hottest", Facts.Heat(plan.Cure?.Peak))
            .Set("hottest-inside", Facts.Heat(plan.Cure?.Inside))
            .Set("softens-at", Facts.Of(progress?.Transition, t => t.Value.Kelvins))
            .Set("degree-of-cure", Facts.Share(progress?.Degree))
            .Set("demould-at", Facts.Time(progress?.PlannedDemould))
            .Set("softens-at-demould", Facts.Heat(progress?.TransitionAtDemould))
            .Set("cost", plan.Cost is { WithoutPrice: 0 } cost ? Facts.Number((double)cost.Total) with { Currency = cost.Currency } : null)
            .Set("seam", Facts.Length(plan.Join?.Seam));
    }

    // What is written behind `fibre-content` is no resin content: another value of that may not take its place.
    private static SourceSpan? ResinStated(Part part) => part.WetOut?.Content?.Where is { } where && Facts.StandsBehind(where, "resin-content") ? where : null;

    private static FactValue? ClockLeft(Plan plan) => plan.Clock is { FilmLife: { } life } clock
        ? new FactValue { Si = WholeMinutes.Left(life.Value, clock.Need.Value).Seconds, RestsOn = [.. Keys(life.RestsOn).Union(Keys(clock.Need.RestsOn), StringComparer.Ordinal).Order(StringComparer.Ordinal)] }
        : null;

    // The figure does not say what it rests on; it is that of the limits of the stack, which the plan names among its assumptions.
    private static FactValue? Figure(Plan plan, PartFigure figure)
    {
        if (PlanFigures.Of(figure, plan) is not { } value)
        {
            return null;
        }

        var keys = (plan.Stiffness?.Loads ?? []).SelectMany(load => load.First is { } first ? Keys(first.Factor.RestsOn) : []);
        return new FactValue { Si = value, RestsOn = [.. keys.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)] };
    }

    private static ImmutableArray<string> Keys(ImmutableArray<string> keys) => keys.IsDefault ? [] : keys;
}
