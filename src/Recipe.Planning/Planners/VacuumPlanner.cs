using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;
using LeakRate = Recipe.Engineering.LeakRate;

namespace Recipe.Planning.Planners;

/// <summary>The vacuum while the plan is made; pressures in Pa.</summary>
internal sealed record VacuumWork(Num Below, Num Absolute, Num Ceiling, Num? LeakCheck, Num? RiseAtMost, PumpWork? Pump)
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
        var hose = bag is null ? null : HoseWork.Of(context);
        var volume = hose is null ? (Num?)null : FreeVolume(context, bag!, hose);
        var leak = Leak(volume, time, rise);
        var pump = hose is null ? null : PumpPlanner.Work(context, new Line(volume!.Value, hose, bag!.Bags), ambient, absolute, leak);
        var (air, hole) = Meaning(leak, ambient, absolute);
        return new VacuumWork(below, absolute, ambient, time, rise, pump) { LeakOfAir = air, Hole = hole };
    }

    public static VacuumLevels Publish(PlanLedger ledger, VacuumWork work) => new()
    {
        BelowAmbient = ledger.PublishPressure(work.Below),
        Absolute = ledger.PublishPressure(work.Absolute),
        Ceiling = ledger.PublishPressure(work.Ceiling),
        LeakCheck = ledger.PublishTime(work.LeakCheck),
        RiseAtMost = ledger.PublishPressure(work.RiseAtMost),
        PumpDown = ledger.PublishTime(work.Pump?.Down),
        HoseSlows = ledger.PublishTime(work.Pump?.HoseSlows),
        PumpMargin = ledger.PublishNumber(work.Pump?.Margin),
        PumpNeeded = work.Pump?.Needed is { } needed ? ledger.Publish(VolumeFlow.FromCubicMetersPerSecond(needed.Si), needed.On) : null,
        HoseTakes = ledger.PublishNumber(work.Pump?.HoseTakes),
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

    private static Num FreeVolume(PlanContext context, BagWork bag, HoseWork hose)
    {
        var pot = (context.Part.Bag!.CatchPot is { } trap ? context.Figures.Volume(trap.Material.Volume, Owner.Of(trap.Material), "volume") : null)
            ?? context.Take(Defaults.CatchPot);
        var gap = context.Take(Defaults.BagGap);
        var volume = Vacuum.BagFreeVolume(
            Area.FromSquareMeters(bag.FilmArea.Si),
            Length.FromMeters(gap.Si),
            Length.FromMeters(hose.Bore.Si),
            Length.FromMeters(hose.Length.Si * bag.Bags),
            Volume.FromCubicMeters(pot.Si));
        return new Num(volume.CubicMeters, bag.FilmArea.On | hose.On | pot.On | gap.On);
    }
}
