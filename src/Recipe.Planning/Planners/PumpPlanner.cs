using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;
using LeakRate = Recipe.Engineering.LeakRate;

namespace Recipe.Planning.Planners;

/// <summary>The hose from one bag to the pump.</summary>
/// <param name="Bore">Inner diameter, m.</param>
/// <param name="Length">Length, m.</param>
internal sealed record HoseWork(Num Bore, Num Length)
{
    /// <summary>What both rest on.</summary>
    public Rests On => Bore.On | Length.On;

    /// <summary>The hose of the bag, with what is not written of it assumed.</summary>
    public static HoseWork Of(PlanContext context) => new(
        BoreOf(context) ?? context.Take(Defaults.HoseBore),
        (context.Part.Bag?.Hose is { Material: var hose } placed
            ? context.Figures.Length(hose.Length, Owner.Of(hose), "length")?.And(Chosen(context, placed))
            : null) ?? context.Take(Defaults.HoseLength));

    /// <summary>Inner diameter of the hose that the bag names; null when it names none, or the hose does not say.</summary>
    public static Num? BoreOf(PlanContext context) => context.Part.Bag?.Hose is { Material: var hose } placed
        ? context.Figures.Length(hose.InnerDiameter, Owner.Of(hose), "inner-diameter")?.And(Chosen(context, placed))
        : null;

    private static Rests Chosen(PlanContext context, Placed<Fitting> hose) =>
        hose.ChosenByDefault ? context.ChosenByDefault(hose.Material) : Rests.None;
}

/// <summary>What is drawn on: each of so many bags through a hose of its own.</summary>
/// <param name="Volume">Air of all bags, hoses and the catch pot, m3.</param>
/// <param name="Hose">The hose of one.</param>
/// <param name="Bags">How many.</param>
internal sealed record Line(Num Volume, HoseWork Hose, int Bags);

/// <summary>What the pump does through the hose.</summary>
/// <param name="Down">Time to the level, s; null when it never gets there.</param>
/// <param name="Margin">How many times over it carries off the accepted leak.</param>
/// <param name="Needed">The smallest pump that carries it off five times, m3/s; null when none does.</param>
/// <param name="HoseTakes">Share of what the pump would carry off at the level that the hose takes, 0 to 1.</param>
internal sealed record PumpWork(Num? Down, Num? Margin, Num? Needed, Num? HoseTakes)
{
    /// <summary>How much of the time is due to the hose, s; null with it.</summary>
    public Num? HoseSlows { get; init; }
}

/// <summary>
/// Air under the film, in hose and catch pot, drawn off at what the hose leaves of the pump's free flow; what leaks in may be a fifth of what goes out.
/// </summary>
internal static class PumpPlanner
{
    private const string Subject = "time to draw the bag down";

    public static PumpWork? Work(PlanContext context, Line line, Num ambient, Num level, Known<LeakRate>? leak)
    {
        var figures = context.Figures;
        if (figures.Flow(context.Shop?.Pump, context.ShopOwner, "pump") is not { } flow)
        {
            return null;
        }

        var ultimate = figures.Pressure(context.Shop?.PumpUltimate, context.ShopOwner, "pump ultimate") ?? context.Take(Defaults.PumpUltimate);
        try
        {
            return Work(context, line, new Pump(flow, ultimate), ambient, level, leak);
        }
        catch (ArgumentOutOfRangeException)
        {
            context.Miss(Subject, "its figures are beyond what the model answers for");
            return null;
        }
    }

    private static PumpWork Work(PlanContext context, Line line, Pump pump, Num ambient, Num level, Known<LeakRate>? leak)
    {
        // Bags alike share the pump: each has its part of it, of the air and of the leak.
        var on = pump.Flow.On | pump.Ultimate.On | line.Hose.On | level.On;
        var hose = new VacuumHose(Length.FromMeters(line.Hose.Bore.Si), Length.FromMeters(line.Hose.Length.Si));
        var (share, bottom) = (VolumeFlow.FromCubicMetersPerSecond(pump.Flow.Si / line.Bags), Pressure.FromPascals(pump.Ultimate.Si));
        var (bag, outside) = (Pressure.FromPascals(level.Si), Pressure.FromPascals(ambient.Si));

        var above = level.Si - pump.Ultimate.Si;
        var carried = above > 0 ? hose.EffectiveSpeed(share, bag, bottom).CubicMetersPerSecond * level.Si : 0;
        Num? takes = above > 0 ? new Num(Math.Clamp(1 - (carried / (share.CubicMetersPerSecond * above)), 0, 1), on) : null;
        Num? margin = null;
        Num? needed = null;
        if (leak is { } known)
        {
            var air = known.Value.PascalCubicMetresPerSecond / line.Bags;
            margin = new Num(carried / air, on | known.On | line.Volume.On);
            needed = hose.PumpFor(LeakRate.FromPascalCubicMetresPerSecond(air * VacuumLevels.EnoughMargin), bag, bottom) is { } least
                ? new Num(least.CubicMetersPerSecond * line.Bags, (on | known.On | line.Volume.On))
                : null;
        }

        if (level.Si <= 0 || line.Volume.Si <= 0)
        {
            return new PumpWork(null, margin, needed, takes);
        }

        var volume = Volume.FromCubicMeters(line.Volume.Si / line.Bags);
        if (hose.PumpDownTime(volume, share, outside, bag, bottom) is not { } down)
        {
            context.Miss(Subject, "the pump does not get to that level");
            return new PumpWork(null, margin, needed, takes);
        }

        on = on | line.Volume.On | ambient.On;
        var alone = Vacuum.PumpDownTime(volume, share, outside, bag, bottom) ?? down;
        return new PumpWork(new Num(down.Seconds, on), margin, needed, takes) { HoseSlows = new Num(Math.Max(0, (down - alone).Seconds), on) };
    }

    private sealed record Pump(Num Flow, Num Ultimate);
}
