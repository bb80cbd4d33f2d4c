using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>The clock while the plan is made, s.</summary>
internal sealed record ClockWork(Num WetOut, Num Bagging, Num DrawDown, Num? FilmLife, (double Low, double High, Rests On)? Band)
{
    /// <summary>What the job needs.</summary>
    public Num Need => WetOut + Bagging + DrawDown;
}

/// <summary>
/// First mix to full vacuum of a bagged wet lay-up: mixing every pot, wetting out, bagging, drawing down. The time within which the
/// author says the level is reached includes finding leaks; without it a leak hunt is planned.
/// </summary>
internal static class ClockPlanner
{
    private const string Subject = "first mix to full vacuum";

    public static ClockWork? Work(
        PlanContext context, Ground? ground, ImmutableArray<LineWork> stack, BagWork? bag, VacuumWork? vacuum, ImmutableArray<PotWork> pots, PotLives? lives, Conditions conditions)
    {
        if (context.Process != Process.Bagged)
        {
            return null;
        }

        if (pots.IsEmpty || !IsTimed(stack))
        {
            context.Miss(Subject, pots.IsEmpty ? "the pots are not known" : "the area of a ply is not known");
            return null;
        }

        if (Bagging(context, ground, bag, conditions) is not { } bagging)
        {
            context.Miss(Subject, "the recipe has no bag to time");
            return null;
        }

        // The last pot is used up when everything is laid.
        var hunt = context.Figures.Time(context.Part.Vacuum?.Within, context.PartOwner, "within");
        var down = hunt ?? context.Take(Defaults.LeakHunt) + (vacuum?.Pump?.Down ?? Num.Zero);
        var film = lives?.InFilm(conditions.Film);
        return new ClockWork(pots[^1].UsedUpAt, bagging, down, film, film is { Si: > 0 } life ? Band(context, lives!, conditions.Film, life) : null);
    }

    // Two causes that know nothing of each other: their shares of the life are added as squares of logarithms.
    private static (double Low, double High, Rests On) Band(PlanContext context, PotLives lives, Known<Temperature> room, Num life)
    {
        var (kelvins, tin) = (context.Take(Defaults.RoomBand), context.Take(Defaults.SheetTimeScatter));
        var scatter = Math.Log(1 + tin.Si);
        return (life.Si / Factor(kelvins.Si), life.Si * Factor(-kelvins.Si), life.On | kelvins.On | tin.On);

        // Beyond the range of the rule its edge is the best there is.
        double Factor(double warmer)
        {
            var shifted = lives.InFilm(room with { Value = Clamp(room.Value + TemperatureDelta.FromKelvins(warmer)) }) ?? life;
            var change = Math.Log(life.Si / shifted.Si);
            return Math.Exp(Math.Sqrt((change * change) + (scatter * scatter)));
        }
    }

    private static Temperature Clamp(Temperature at) =>
        at < PotLife.LowestTemperature ? PotLife.LowestTemperature : at > PotLife.HighestTemperature ? PotLife.HighestTemperature : at;

    public static ClockPlan Publish(PlanLedger ledger, ClockWork work) => new()
    {
        WetOut = ledger.PublishTime(work.WetOut),
        Bagging = ledger.PublishTime(work.Bagging),
        DrawDown = ledger.PublishTime(work.DrawDown),
        Need = ledger.PublishTime(work.Need),
        FilmLife = ledger.PublishTime(work.FilmLife),
        FilmLifeBand = work is { FilmLife: { } life, Band: var (low, high, on) }
            ? ledger.Publish(new Banded<Duration>(Duration.FromSeconds(life.Si), Duration.FromSeconds(low), Duration.FromSeconds(high)), on)
            : null,
    };

    private static bool IsTimed(ImmutableArray<LineWork> stack)
    {
        foreach (var line in stack)
        {
            if (line.WetOut is null)
            {
                return false;
            }
        }

        return true;
    }

    private static Num? Bagging(PlanContext context, Ground? ground, BagWork? bag, Conditions conditions)
    {
        if (context.Part.Bag is not { } parts)
        {
            return null;
        }

        if (context.Figures.Time(parts.Time, context.PartOwner, "time") is { } stated)
        {
            return stated;
        }

        if (bag is null || ground is null)
        {
            return null;
        }

        var (layers, peel) = (0, false);
        foreach (var layer in parts.Layers)
        {
            peel |= layer.Class == LayerClass.PeelPly;
            layers += layer.Class is LayerClass.PeelPly or LayerClass.BagFilm ? 0 : Math.Clamp(layer.Count, 1, 1000);
        }

        var area = ground.Area * ground.Sides;
        var people = conditions.Laminators;
        var time = WorkingTime.Bagging(
            Area.FromSquareMeters(area.Si), Length.FromMeters(bag.TapeLine.Si), layers, peel, WorkPace.Experienced, people.Value);
        var on = area.On | bag.TapeLine.On | people.On | context.Ledger.Assume(Defaults.ClosingPace);
        on = peel ? on | context.Ledger.Assume(Defaults.PeelPlyPace) : on;
        on = layers > 0 ? on | context.Ledger.Assume(Defaults.LayerPace) : on;
        return new Num(time.Seconds, on);
    }
}
