using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>The progress of the cure while the plan is made.</summary>
internal sealed record ProgressWork(
    CureCurve Curve, CureMilestones Moments, double Demould, (double Low, double High)? Transition, PostCureLead? Lead, double LeadFrom, TemperatureChangeRate? Ramp, bool IsOwn, Rests On,
    ImmutableArray<double> Degrees);

/// <summary>What the resin makes of the schedule: Recipe.Engineering CureSimulation along the steps of <see cref="CurePlanner"/>.</summary>
internal static class CureProgressPlanner
{
    private const string Subject = "progress of the cure";

    // Enough for a chart as wide as a page.
    private const int CurvePieces = 60;

    public static ProgressWork? Work(PlanContext context, CureWork? cure)
    {
        if (cure is null || context.Part.Resin is not { } resin)
        {
            return null;
        }

        // The shape of a room-temperature epoxy says nothing of a prepreg.
        if (context.Process == Process.Prepreg && resin.Kinetics is null)
        {
            context.Miss(Subject, $"{resin.Name} gives no kinetics");
            return null;
        }

        // Not counted as no time at all: a firm part would be called wet.
        if (context.Part.Cure is { } written && written.Steps.FirstOrDefault(step => step is { Action: CureAction.Hold, Duration: null }) is { } untimed)
        {
            context.Miss(Subject, $"step {written.Steps.IndexOf(untimed) + 1} of the cure does not say how long");
            return null;
        }

        if (CureModel.Of(context, resin, Subject) is not { } known)
        {
            return null;
        }

        try
        {
            return Progress(context, cure, known);
        }
        catch (ArgumentException)
        {
            context.Miss(Subject, $"a temperature of the cure is beyond what the kinetics of {resin.Name} answer for");
            return null;
        }
    }

    public static CureProgress Publish(PlanLedger ledger, ProgressWork work)
    {
        var (curve, on, moments) = (work.Curve, work.On, work.Moments);
        var pulled = Duration.FromSeconds(work.Demould);
        return new CureProgress
        {
            Gel = Time(moments.Gel),
            VacuumOff = Time(moments.VacuumOff),
            Demould = Time(moments.Demould),
            PlannedDemould = ledger.Publish(pulled, on),
            DegreeAtDemould = ledger.Publish(curve.DegreeAt(pulled).DecimalFractions, on),
            TransitionAtDemould = curve.GlassTransitionAt(pulled) is { } then ? ledger.Publish(then, on) : null,
            Degree = ledger.Publish(curve.FinalDegree.DecimalFractions, on),
            Transition = work.Transition is var (low, high) && curve.GlassTransitionAt(curve.Total) is { } end
                ? ledger.Publish(new Banded<Temperature>(end, Temperature.FromKelvins(low), Temperature.FromKelvins(high)), on)
                : null,
            LeadOffMould = work.Lead is { } lead ? ledger.Publish(lead.Least, on) : null,
            LeadOffMouldAt = work.Lead is { } least ? ledger.Publish(Duration.FromSeconds(work.LeadFrom) + least.At, on) : null,
            FastestRamp = work.Ramp is { } ramp ? ledger.Publish(ramp, on) : null,
            Curve = [.. Enumerable.Range(0, CurvePieces + 1).Select(i => Duration.FromSeconds(curve.Total.Seconds * i / CurvePieces)).Select(at => new CureMoment(
                at, curve.DegreeAt(at).DecimalFractions, curve.GlassTransitionAt(at)))],
            StepDegrees = [.. work.Degrees.Select(degree => ledger.Publish(degree, on))],
            OwnKinetics = work.IsOwn,
        };

        Computed<Duration>? Time(Duration? time) => time is { } t ? ledger.Publish(t, on) : null;
    }

    private static ProgressWork Progress(PlanContext context, CureWork cure, Known<CureModel> known)
    {
        var model = known.Value;
        var off = cure.Steps.TakeWhile(step => step.Step.Action != CureAction.Demould).Count();
        var demould = off < cure.Steps.Length ? cure.Steps[off].Start : cure.Steps[^1].End;
        var on = known.On | cure.Steps[^1].End.On | cure.Peak.On;
        foreach (var step in cure.Steps)
        {
            on |= step.To.On;
        }

        var curve = CureSimulation.Along(model.Kinetics, cure.Schedule, model.Options);
        (double, double)? band = null;
        if (curve.GlassTransitionAt(curve.Total) is { } end)
        {
            var (temperature, method) = (context.Take(Defaults.PartTemperatureBand), context.Take(Defaults.TransitionScatter));
            band = Band(model, cure, end.Kelvins, temperature.Si, method.Si);
            on |= temperature.On | method.On;
        }

        var (lead, ramp) = OffMould(model, cure, curve, off, demould.Si);
        var moments = CureMilestones.Of(curve);
        if (context.Part.Resin!.Demould is { Value: { Time.Seconds: > 0 and < 1e9 } sheet } figure)
        {
            // The sheet knows more than a model: the later of the two is the earliest.
            var bySheet = cure.Schedule.TimeWorth(sheet.Time, sheet.At);
            moments = moments with { Demould = moments.Demould is { } firm && bySheet is { } later ? (later > firm ? later : firm) : null };
            on |= context.Figures.Basis(figure, Owner.Of(context.Part.Resin), "demould");
        }

        return new ProgressWork(
            curve, moments, demould.Si, band, lead, demould.Si, ramp, model.IsOwn, on,
            [.. cure.Steps.Select(step => curve.DegreeAt(Duration.FromSeconds(step.End.Si)).DecimalFractions)]);
    }

    // A part that is colder or warmer than its schedule all along, and two laboratories that find different transitions of one part.
    private static (double Low, double High) Band(CureModel model, CureWork cure, double end, double temperature, double method)
    {
        var (cold, warm) = (End(-temperature), End(temperature));
        return (end - Both(end - cold), end + Both(warm - end));

        double End(double shift) => model.Options.GlassTransition!.At(CureSimulation.Along(model.Kinetics, Shifted(cure, shift), model.Options).FinalDegree).Kelvins;

        double Both(double change) => Math.Sqrt((Math.Max(0, change) * Math.Max(0, change)) + (method * method));
    }

    private static CureSchedule Shifted(CureWork cure, double kelvins)
    {
        var steps = new List<ScheduleStep>(cure.Thermal.Length);
        var shift = TemperatureDelta.FromKelvins(kelvins);
        foreach (var step in cure.Thermal)
        {
            steps.Add(step switch
            {
                HoldStep hold => hold with { At = hold.At + shift },
                RampStep ramp => ramp with { To = ramp.To + shift },
                _ => step,
            });
        }

        return CureSchedule.Create(cure.Schedule.Start + shift, steps);
    }

    // Free-standing from here on: nothing but its own stiffness holds the shape while it is warmed.
    private static (PostCureLead? Lead, TemperatureChangeRate? Ramp) OffMould(CureModel model, CureWork cure, CureCurve curve, int off, double demould)
    {
        if (model.Options.GlassTransition is null || off >= cure.Steps.Length)
        {
            return (null, null);
        }

        var start = cure.Steps[off].From;
        var rest = CureSchedule.Create(start, [.. cure.Thermal.Skip(off)]);
        if (rest.Total.Seconds <= 0 || rest.Peak <= start)
        {
            return (null, null);
        }

        var options = model.Options with { Start = curve.DegreeAt(Duration.FromSeconds(demould)) };
        var lead = PostCure.LeadOf(CureSimulation.Along(model.Kinetics, rest, options));
        return (lead, lead.Least.Kelvins >= 0 ? null : PostCure.FastestRamp(model.Kinetics, start, rest.Peak, TemperatureDelta.FromKelvins(Defaults.LeadToKeep), options));
    }
}
