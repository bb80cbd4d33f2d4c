using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>How one resin cures and when it is glass.</summary>
/// <param name="Kinetics">Its rate.</param>
/// <param name="Options">Its glass transition and brake, where they are known.</param>
/// <param name="IsOwn">Whether the rate is the resin's own; else the usual shape, scaled to its gel time.</param>
/// <param name="Refusal">Why its glass transition is not known, or does not go through the data sheet's; null when all is well.</param>
internal sealed record CureModel(CureKinetics Kinetics, CureOptions Options, bool IsOwn, string? Refusal)
{
    // A fit takes some twenty cures, and a thousand variants share one resin. The table forgets a resin when nobody else knows it.
    private static readonly ConditionalWeakTable<ResinSystem, Made> Known = [];

    /// <summary>The model of a resin, with what it rests on; null, with a gap, where nothing is known to make one from.</summary>
    public static Known<CureModel>? Of(PlanContext context, ResinSystem resin, string subject)
    {
        var made = Known.GetValue(resin, static r => Make(r));
        if (made.Model is not { } model)
        {
            context.Miss(subject, made.Missing!);
            return null;
        }

        if (model.Refusal is { } refusal)
        {
            context.Miss("glass transition of " + resin.Label, refusal);
        }

        var owner = Owner.Of(resin);
        var on = KineticsBasis(context, resin);
        if (model.Options.GlassTransition is not null)
        {
            on |= On(context, resin.GlassTransitionLimit, owner, "glass-transition-limit") | On(context, resin.GlassTransition, owner, "glass-transition")
                | context.Ledger.Assume(Defaults.TransitionCurve);
        }

        return new Known<CureModel>(model, on);
    }

    /// <summary>The model of a resin, or null; without a word about why.</summary>
    public static CureModel? Find(ResinSystem resin) => Known.GetValue(resin, static r => Make(r)).Model;

    /// <summary>What its rate rests on.</summary>
    public static Rests KineticsBasis(PlanContext context, ResinSystem resin) => resin.Kinetics is { } own
        ? OwnBasis(context, own, Owner.Of(resin))
        : context.Ledger.Assume(Defaults.CureShape) | On(context, resin.GelTime, Owner.Of(resin), "gel-time");

    private static Rests OwnBasis(PlanContext context, Kinetics kinetics, Owner owner) => kinetics.Basis == Basis.Assumed
        ? context.Ledger.Assume(owner.Figure("kinetics", kinetics.Model, kinetics.Source))
        : Rests.None;

    private static Rests On<T>(PlanContext context, Figure<T>? figure, Owner owner, string word) =>
        figure is null ? Rests.None : context.Figures.Basis(figure, owner, word);

    private static Made Make(ResinSystem resin)
    {
        try
        {
            return resin.Kinetics is { } own
                ? Named(own) is { } kinetics
                    ? new Made(WithTransition(resin, kinetics, isOwn: true), null)
                    : new Made(null, $"kinetics '{own.Model}' of {resin.Name} lack constants or are no model of this program")
                : Usual(resin);
        }
        catch (ArgumentException)
        {
            return new Made(null, $"the kinetics of {resin.Name} are beyond what the model answers for");
        }
    }

    private static CureKinetics? Named(Kinetics kinetics) => kinetics.Model switch
    {
        "kamal-sourour" => Constants(kinetics.Constants, "a1", "e1-over-r", "a2", "e2-over-r", "m", "n") is [var a1, var e1, var a2, var e2, var m, var n]
            ? Kamal(a1, e1, a2, e2, m, n)
            : null,
        "lee-loos-springer" when kinetics.Constants.IsEmpty => new LeeLoosSpringer(),
        _ => null,
    };

    private static double[]? Constants(ImmutableSortedDictionary<string, double> all, params ReadOnlySpan<string> names)
    {
        var values = new double[names.Length];
        for (var i = 0; i < names.Length; i++)
        {
            if (!all.TryGetValue(names[i], out values[i]))
            {
                return null;
            }
        }

        return values;
    }

    private static KamalSourour Kamal(double a1, double e1, double a2, double e2, double m, double n) => new(
        Frequency.FromHertz(a1), TemperatureDelta.FromKelvins(e1), Frequency.FromHertz(a2), TemperatureDelta.FromKelvins(e2), m, n);

    // Both factors times the same number: the whole cure goes so much faster at every temperature, and its shape stays.
    private static Made Usual(ResinSystem resin)
    {
        if (resin.Chemistry is not (Chemistry.Epoxy or Chemistry.Unknown))
        {
            return new Made(null, $"{resin.Name} gives no kinetics, and only an epoxy's usual shape is known");
        }

        if (resin.GelTime is not { Value: { Time.Seconds: > 0 and < 1e9 and var gel, At: var at } })
        {
            return new Made(null, $"{resin.Name} gives neither kinetics nor a gel time");
        }

        var (a1, e1, a2, e2) = Defaults.CureShapeConstants;
        var whole = CureSchedule.Create(at, [new HoldStep(at, Duration.FromDays(1000))]);
        if (CureSimulation.Along(Kamal(a1, e1, a2, e2, 1, 2), whole).TimeTo(GelPoint.Usual) is not { Seconds: > 0 and var usual })
        {
            return new Made(null, $"the gel time of {resin.Name} is given at a temperature at which no cure is known");
        }

        var faster = usual / gel;
        return new Made(WithTransition(resin, Kamal(a1 * faster, e1, a2 * faster, e2, 1, 2), isOwn: false), null);
    }

    private static CureModel WithTransition(ResinSystem resin, CureKinetics kinetics, bool isOwn)
    {
        var options = new CureOptions { IdleBelowRange = kinetics is LeeLoosSpringer };
        if (resin.GlassTransitionLimit is not { Value: var limit })
        {
            return new CureModel(kinetics, options, isOwn, $"{resin.Name} gives no `glass-transition-limit`; without it a cold cure runs on as if it never turned to glass");
        }

        if (resin.GlassTransition is not { Value: { Tg: var sheet, After: { } soak } } || sheet >= limit)
        {
            var usual = new DiBenedetto(DiBenedetto.UsualUncured, limit);
            return new CureModel(kinetics, options with { GlassTransition = usual, Brake = DiffusionBrake.Usual }, isOwn, null);
        }

        var fit = DiffusionBrake.Through(kinetics, CureSchedule.Create(soak.At, [new HoldStep(soak.At, soak.For)]), sheet, limit);
        return new CureModel(
            kinetics,
            options with { GlassTransition = fit.Curve, Brake = fit.Brake },
            isOwn,
            fit.GoesThrough
                ? null
                : FormattableString.Invariant($"its kinetics and its glass transition contradict each other: after the cure of the sheet they give {fit.Reached.DegreesCelsius:0} degC, not {sheet.DegreesCelsius:0} degC"));
    }

    private sealed record Made(CureModel? Model, string? Missing);
}
