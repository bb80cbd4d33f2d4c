using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;
using LeakRate = Recipe.Engineering.LeakRate;

namespace Recipe.Planning.Planners;

/// <summary>The vacuum while the plan is made; pressures in Pa.</summary>
internal sealed record VacuumWork(Num Below, Num Absolute, Num Ceiling, Num? LeakCheck, Num? RiseAtMost, Num? PumpDown, Num? PumpMargin)
{
    /// <summary>Air of the shop that the accepted rise lets in, m3/s.</summary>
    public Num? LeakOfAir { get; init; }

    /// <summary>Diameter of the one hole that lets it in, m.</summary>
    public Num? Hole { get; init; }
}

/// <summary>Levels in both conventions, the ceiling at this height, and what the pump has in hand.</summary>
internal static class VacuumPlanner
{
    private const string Subject = "vacuum level";

    public static VacuumWork? Work(PlanContext context, Conditions conditions, BagWork? bag)
    {
        if (context.Part.Vacuum is not { } vacuum)
        {
            return null;
        }

        var ambient = conditions.Ambient;
        if (Level(context, vacuum, ambient) is not { } below)
        {
            return null;
        }

        var test = vacuum.LeakCheck ?? context.Part.Infusion?.DropTest;
        var time = context.Figures.Time(test?.Duration, context.PartOwner, "leak-check");
        var rise = context.Figures.Pressure(test?.RiseAtMost, context.PartOwner, "rise");

        // A level beyond the air there is gives nothing, not less than nothing; the ceiling beside it tells.
        var absolute = ambient - below;
        absolute = absolute.Si < 0 ? absolute with { Si = 0 } : absolute;
        var volume = bag is null ? (Num?)null : FreeVolume(context, bag);
        var leak = Leak(volume, time, rise);
        var (down, margin) = Pump(context, volume, ambient, absolute, leak);
        var (air, hole) = Meaning(leak, ambient, absolute);
        return new VacuumWork(below, absolute, ambient, time, rise, down, margin) { LeakOfAir = air, Hole = hole };
    }

    public static VacuumLevels Publish(PlanLedger ledger, VacuumWork work) => new()
    {
        BelowAmbient = ledger.PublishPressure(work.Below),
        Absolute = ledger.PublishPressure(work.Absolute),
        Ceiling = ledger.PublishPressure(work.Ceiling),
        LeakCheck = ledger.PublishTime(work.LeakCheck),
        RiseAtMost = ledger.PublishPressure(work.RiseAtMost),
        PumpDown = ledger.PublishTime(work.PumpDown),
        PumpMargin = ledger.PublishNumber(work.PumpMargin),
        LeakOfAir = work.LeakOfAir is { } air ? ledger.Publish(VolumeFlow.FromCubicMetersPerSecond(air.Si), air.On) : null,
        Hole = ledger.PublishLength(work.Hole),
    };

    private static Num? Level(PlanContext context, Model.VacuumPlan vacuum, Num ambient)
    {
        if (vacuum.Draw is not { } draw)
        {
            context.Miss(Subject, "the recipe draws to no level");
            return null;
        }

        var pascals = draw.Value.Value.Pascals;
        var on = context.Figures.Basis(draw, context.PartOwner, "draw");
        if (!(pascals is >= 0 and < 1e9))
        {
            context.Miss(Subject, $"'{draw.Written}' cannot be used");
            return null;
        }

        switch (draw.Value.Convention)
        {
            case VacuumConvention.BelowAmbient:
                return new Num(pascals, on);
            case VacuumConvention.Absolute:
                // More than the air outside is no vacuum, not less than none.
                var below = ambient - new Num(pascals, on);
                return below.Si < 0 ? below with { Si = 0 } : below;
            default:
                context.Miss(Subject, "it does not say whether it is below ambient or absolute");
                return null;
        }
    }

    // Air under the film, in hose and catch pot, drawn off at the pump's free flow; what leaks in may be a fifth of what goes out.
    private static (Num? Down, Num? Margin) Pump(PlanContext context, Num? free, Num ambient, Num level, Known<LeakRate>? leak)
    {
        var figures = context.Figures;
        if (free is not { } volume || figures.Flow(context.Shop?.Pump, context.ShopOwner, "pump") is not { } flow)
        {
            return (null, null);
        }

        var ultimate = figures.Pressure(context.Shop?.PumpUltimate, context.ShopOwner, "pump ultimate") ?? context.Take(Defaults.PumpUltimate);
        var on = flow.On | ultimate.On | volume.On | level.On | ambient.On;
        var speed = VolumeFlow.FromCubicMetersPerSecond(flow.Si);
        var bottom = Pressure.FromPascals(ultimate.Si);
        Num? margin = null;
        if (leak is { } known)
        {
            margin = new Num(Vacuum.PumpMargin(speed, Pressure.FromPascals(level.Si), bottom, known.Value), on | known.On);
        }

        if (level.Si <= 0 || volume.Si <= 0)
        {
            return (null, margin);
        }

        var down = Vacuum.PumpDownTime(Volume.FromCubicMeters(volume.Si), speed, Pressure.FromPascals(ambient.Si), Pressure.FromPascals(level.Si), bottom);
        if (down is { } seconds)
        {
            return (new Num(seconds.Seconds, on), margin);
        }

        context.Miss("time to draw the bag down", "the pump does not get to that level");
        return (null, margin);
    }

    // The leak that the check accepts.
    private static Known<LeakRate>? Leak(Num? volume, Num? time, Num? rise) =>
        volume is { Si: > 0 } free && rise is { Si: > 0 } allowed && time is { Si: > 0 } over
            ? new Known<LeakRate>(
                LeakRate.FromRise(Volume.FromCubicMeters(free.Si), Pressure.FromPascals(allowed.Si), Duration.FromSeconds(over.Si)), free.On | allowed.On | over.On)
            : null;

    // What it means: so much air a minute, through a hole so small.
    private static (Num? Air, Num? Hole) Meaning(Known<LeakRate>? leak, Num ambient, Num level)
    {
        if (leak is not { } known || level.Si >= ambient.Si)
        {
            return (null, null);
        }

        var (outside, on) = (Pressure.FromPascals(ambient.Si), known.On | ambient.On);
        var hole = Pinhole.DiameterFor(known.Value, outside, Pressure.FromPascals(level.Si));
        return (new Num(known.Value.FreeAir(outside).CubicMetersPerSecond, on), new Num(hole.Meters, on | level.On));
    }

    private static Num FreeVolume(PlanContext context, BagWork bag)
    {
        var parts = context.Part.Bag!;
        var figures = context.Figures;
        var bore = (parts.Hose is { } hose ? figures.Length(hose.Material.InnerDiameter, Owner.Of(hose.Material), "inner-diameter") : null)
            ?? context.Take(Defaults.HoseBore);
        var pot = (parts.CatchPot is { } trap ? figures.Volume(trap.Material.Volume, Owner.Of(trap.Material), "volume") : null)
            ?? context.Take(Defaults.CatchPot);
        var gap = context.Take(Defaults.BagGap);
        var length = context.Take(Defaults.HoseLength) * bag.Bags;
        var volume = Vacuum.BagFreeVolume(
            Area.FromSquareMeters(bag.FilmArea.Si), Length.FromMeters(gap.Si), Length.FromMeters(bore.Si), Length.FromMeters(length.Si), Volume.FromCubicMeters(pot.Si));
        return new Num(volume.CubicMeters, bag.FilmArea.On | bore.On | pot.On | gap.On | length.On);
    }
}
