using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>One step of the cure while the plan is made.</summary>
/// <param name="Step">As written.</param>
/// <param name="From">Temperature at its start.</param>
/// <param name="To">Temperature at its end, with what it rests on.</param>
/// <param name="Start">Start, s.</param>
/// <param name="End">End, s.</param>
/// <param name="Bagged">Whether the bag is still on as it begins.</param>
/// <param name="InMould">Whether the part is still in the mould as it begins.</param>
internal sealed record CureStepWork(CureStep Step, Temperature From, Known<Temperature> To, Num Start, Num End, bool Bagged, bool InMould)
{
    /// <summary>The hotter of its ends.</summary>
    public Temperature Hottest => From > To.Value ? From : To.Value;
}

/// <summary>The cure while the plan is made.</summary>
/// <param name="Steps">The steps.</param>
/// <param name="Peak">The hottest it gets.</param>
/// <param name="VacuumOff">When the vacuum comes off, s; null where there is no bag.</param>
/// <param name="Limits">What is in the heat.</param>
/// <param name="Thermal">The steps as Recipe.Engineering has them, one for each.</param>
/// <param name="Schedule">The temperature over time.</param>
internal sealed record CureWork(
    ImmutableArray<CureStepWork> Steps, Known<Temperature> Peak, Num? VacuumOff, ImmutableArray<HeatLimitWork> Limits, ImmutableArray<ScheduleStep> Thermal, CureSchedule Schedule);

/// <summary>
/// The cure against the clock, from the room's temperature on. A hold at another temperature than the last is taken to begin at once
/// (the part is moved into that heat); `hold room` is at the night's temperature, the coldest that it gets. The bag is on until it is
/// vented, taken off, or the part demoulded; the mould is there until the part is demoulded.
/// </summary>
/// <remarks>Straight pieces: Recipe.Engineering CureSchedule. The oven's own set point, not the part's temperature.</remarks>
internal static class CurePlanner
{
    public static CureWork? Work(PlanContext context, Conditions conditions)
    {
        if (context.Part.Cure is not { Steps.IsEmpty: false } cure)
        {
            return null;
        }

        var thermal = new List<ScheduleStep>(cure.Steps.Length);
        var on = new List<(Rests Temperature, Rests Time)>(cure.Steps.Length);
        var now = conditions.Room;
        foreach (var step in cure.Steps)
        {
            var (scheduled, temperature, time) = Schedule(context, conditions, step, thermal.Count + 1, now);
            thermal.Add(scheduled);
            on.Add((temperature.On, time));
            now = temperature;
        }

        var schedule = CureSchedule.Create(conditions.Room.Value, thermal);
        var steps = Steps(cure, schedule, on, conditions.Room.On, HasBag(context.Part));
        return new CureWork(steps, Peak(steps, conditions.Room), VacuumOff(context, steps), HeatLimits.Work(context, steps), [.. thermal], schedule);
    }

    public static CurePlan Publish(PlanLedger ledger, CureWork work, HeatingWork? heating)
    {
        var steps = ImmutableArray.CreateBuilder<CureStepPlan>(work.Steps.Length);
        foreach (var s in work.Steps)
        {
            steps.Add(new CureStepPlan(s.Step, s.From, s.To.Value, ledger.PublishTime(s.Start), ledger.PublishTime(s.End), s.Bagged, s.InMould));
        }

        var limits = ImmutableArray.CreateBuilder<HeatLimit>(work.Limits.Length);
        foreach (var l in work.Limits)
        {
            limits.Add(new HeatLimit(l.Item, l.Material, ledger.Publish(l.Limit), l.Hottest, l.HottestStep, l.Where));
        }

        return new CurePlan
        {
            Steps = steps.MoveToImmutable(),
            Peak = ledger.Publish(work.Peak),
            Total = ledger.PublishTime(work.Steps[^1].End),
            VacuumOff = ledger.PublishTime(work.VacuumOff),
            Limits = limits.MoveToImmutable(),
            Inside = ledger.Publish(heating?.Peak),
            InsideAt = ledger.PublishTime(heating?.At),
        };
    }

    private static bool HasBag(Part part) => part.Bag is not null || part.Vacuum is not null;

    private static (ScheduleStep Step, Known<Temperature> At, Rests Time) Schedule(PlanContext context, Conditions conditions, CureStep step, int number, Known<Temperature> now)
    {
        if (step.LetsVacuumGo)
        {
            return (new HoldStep(now.Value, Duration.Zero), now, Rests.None);
        }

        var at = step.AtRoom ? conditions.RoomLow : context.Figures.Temperature(step.Temperature, context.PartOwner, "cure temperature");
        if (at is null)
        {
            context.Miss("cure against the clock", $"step {number} gives no temperature");
        }

        var to = at ?? now;
        if (step.Action == CureAction.Hold)
        {
            var time = context.Figures.Time(step.Duration, context.PartOwner, "cure time");
            if (time is null)
            {
                context.Miss("cure against the clock", $"step {number} does not say how long");
            }

            return (new HoldStep(to.Value, Duration.FromSeconds(time?.Si ?? 0)), to, time?.On ?? Rests.None);
        }

        var rate = context.Figures.Rate(step.Rate, context.PartOwner, "cure rate")
            ?? context.Take(step.Action == CureAction.Ramp ? Defaults.RampRate : Defaults.CoolRate);
        var ramp = new RampStep(to.Value, TemperatureChangeRate.FromDegreesCelsiusPerSecond(rate.Si));

        // How long it takes depends on both temperatures and on the rate; a step that changes nothing takes no time at any rate.
        return (ramp, to, to.Value.DegreesCelsius == now.Value.DegreesCelsius ? Rests.None : now.On | to.On | rate.On);
    }

    private static ImmutableArray<CureStepWork> Steps(Cure cure, CureSchedule schedule, List<(Rests Temperature, Rests Time)> on, Rests start, bool bagged)
    {
        var steps = ImmutableArray.CreateBuilder<CureStepWork>(cure.Steps.Length);
        var (bag, mould) = (bagged, true);
        var clock = Rests.None;
        for (var i = 0; i < cure.Steps.Length; i++)
        {
            var segment = schedule.Segments[i];
            var begun = clock;
            clock |= on[i].Time;
            steps.Add(new CureStepWork(
                cure.Steps[i],
                segment.From,
                new Known<Temperature>(segment.To, on[i].Temperature),
                new Num(segment.Start.Seconds, begun),
                new Num(segment.Start.Seconds + segment.Lasts.Seconds, clock),
                bag,
                mould));
            mould &= cure.Steps[i].Action != CureAction.Demould;
            bag &= !cure.Steps[i].LetsVacuumGo;
        }

        return steps.MoveToImmutable();
    }

    private static Num? VacuumOff(PlanContext context, ImmutableArray<CureStepWork> steps)
    {
        if (!steps[0].Bagged)
        {
            return null;
        }

        var letGo = steps.FirstOrDefault(step => step.Step.LetsVacuumGo)?.Start ?? steps[^1].End;
        return context.Figures.Time(context.Part.Vacuum?.Hold, context.PartOwner, "time under vacuum") is { } hold && hold.Si < CurePlan.SameTime * letGo.Si ? hold : letGo;
    }

    private static Known<Temperature> Peak(ImmutableArray<CureStepWork> steps, Known<Temperature> start)
    {
        var peak = start;
        foreach (var step in steps)
        {
            peak = step.To.Value > peak.Value ? step.To : peak;
        }

        return peak;
    }
}
