using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>One pot while the plan is made, SI.</summary>
internal sealed record PotWork(Num Mass, ImmutableArray<string> For, Num MixedAt, Num UsedUpAt, Num? Life, Known<Temperature>? Peak);

/// <summary>What is split into pots.</summary>
/// <param name="System">The liquid.</param>
/// <param name="ToMix">How much of it, kg.</param>
/// <param name="Laying">Time to lay all of it, s.</param>
/// <param name="Mixing">Time to mix one pot, s.</param>
/// <param name="Largest">Largest pot, kg.</param>
/// <param name="ByMassOnly">Whether the time to lay it plays no part.</param>
internal readonly record struct PotJob(ResinSystem System, Num ToMix, Num Laying, Num Mixing, Num Largest, bool ByMassOnly);

/// <summary>
/// Splits the resin into pots and holds each against its own clock. Pots are mixed one after the other by the hands that lay them: a
/// pot is mixed when the one before is used up. A pot wets out the lines of the stack in order, on one side after the other, so much
/// of them as its share of the resin reaches; brushes, felts and spare are taken to draw evenly on all pots.
/// </summary>
/// <remarks>
/// The author's pots stand. Planned ones are alike (one mix card serves for all), no heavier than the largest pot, and laid within a
/// share of their pot life at today's temperature and their mass (Recipe.Engineering Batches, PotLife). Where no split can do that,
/// pots of the largest mass are planned all the same and a gap says so.
/// </remarks>
internal static class PotPlanner
{
    /// <summary>More pots than this are no plan.</summary>
    public const int MostPots = 99;

    private const string Subject = "pots that are used up in time";

    public static ImmutableArray<PotWork> Work(PlanContext context, ResinWork? resin, PotLives? lives, LayingOrder laying, int sides, FlowWork? flow, bool withLives = true)
    {
        if (resin is null || lives is null)
        {
            return [];
        }

        var mixing = Mixing(context);
        var masses = resin.Stated.IsEmpty ? Plan(context, resin, lives, laying.Total, mixing) : resin.Stated;
        if (context.Process != Process.Infused)
        {
            return Schedule(masses, (from, to) => laying.Between(from, to, sides), mixing, lives, withLives);
        }

        // Under constant pressure the front slows as it goes: what it has drawn grows with the root of time.
        var fill = flow?.Time;
        if (fill is null)
        {
            context.Miss("when the pots of the infusion are used up", flow is null ? "the time to fill the part is not known" : "the resin never fills the part");
        }

        return Schedule(
            masses,
            (from, to) => (laying.Between(from, to, sides).Names, fill is { } whole ? whole * ((to * to) - (from * from)) : Num.Zero),
            mixing,
            lives,
            withLives);
    }

    /// <summary>The pots of a liquid of its own, laid evenly in the time it takes.</summary>
    public static ImmutableArray<PotWork> Work(PlanContext context, PotJob job, PotLives lives) =>
        Schedule(Split(context, job, lives), (from, to) => ([], job.Laying * (to - from)), job.Mixing, lives);

    public static ImmutableArray<PotPlan> Publish(PlanContext context, ImmutableArray<PotWork> pots, ResinSystem system)
    {
        if (pots.IsEmpty)
        {
            return [];
        }

        var ledger = context.Ledger;
        var ratio = MixRatios.ByWeight(context, system);
        var plans = ImmutableArray.CreateBuilder<PotPlan>(pots.Length);
        foreach (var pot in pots)
        {
            var share = ratio is { } r ? new Num(r.Value.HardenerShare.DecimalFractions, r.On) : (Num?)null;
            var hardener = pot.Mass * share;
            plans.Add(new PotPlan
            {
                Number = plans.Count + 1,
                Mass = ledger.PublishMass(pot.Mass),
                Resin = ledger.PublishMass(pot.Mass - hardener),
                Hardener = ledger.PublishMass(hardener),
                HardenerTolerance = hardener is { } h ? Mass.FromKilograms(Math.Min(0.001, 0.02 * h.Si)) : null,
                For = pot.For,
                MixedAt = ledger.PublishTime(pot.MixedAt),
                UsedUpAt = ledger.PublishTime(pot.UsedUpAt),
                PotLife = ledger.PublishTime(pot.Life),
                DeadAt = ledger.PublishTime(pot.MixedAt + pot.Life),
            });
        }

        return plans.MoveToImmutable();
    }

    /// <summary>The same pots with how hot they get when they are left standing, which is a model's word.</summary>
    public static ImmutableArray<PotPlan> WithPeaks(PlanLedger ledger, ImmutableArray<PotPlan> plans, ImmutableArray<PotWork> pots)
    {
        var with = ImmutableArray.CreateBuilder<PotPlan>(plans.Length);
        for (var i = 0; i < plans.Length; i++)
        {
            with.Add(plans[i] with { StandingPeak = ledger.Publish(pots[i].Peak) });
        }

        return with.MoveToImmutable();
    }

    /// <summary>Time to mix one pot, s.</summary>
    public static Num Mixing(PlanContext context) =>
        context.Figures.Time(context.Part.WetOut?.Mixing, context.PartOwner, "mixing") ?? context.Take(Defaults.Mixing);

    private static ImmutableArray<Num> Plan(PlanContext context, ResinWork resin, PotLives lives, Num laying, Num mixing)
    {
        if (context.Figures.Count(context.Part.WetOut?.Pots, context.PartOwner, "pots") is { Value: <= MostPots } stated)
        {
            return Alike(resin.ToMix.And(stated.On), stated.Value);
        }

        var largest = LargestPot(context, resin.System) ?? LargestByProcess(context);
        return Split(context, new PotJob(resin.System, resin.ToMix, laying, mixing, largest, context.Process == Process.Infused), lives);
    }

    private static ImmutableArray<Num> Split(PlanContext context, PotJob job, PotLives lives)
    {
        var (toMix, largest, laying, mixing) = (job.ToMix, job.Largest, job.Laying, job.Mixing);
        var byMass = Math.Clamp((int)Math.Min(MostPots + 1, Math.Ceiling(toMix.Si / largest.Si * (1 - 1e-9))), 1, MostPots + 1);
        if (byMass > MostPots)
        {
            context.Miss(Subject, $"{MostPots} pots of {Words.Grams(largest.Si)} do not hold {Words.Grams(toMix.Si)} of {job.System.Name}");
            return Alike(toMix.And(largest.On), MostPots);
        }

        if (lives.Reference is not { } reference || !lives.InRange || job.ByMassOnly)
        {
            return Alike(toMix.And(largest.On), byMass);
        }

        var share = context.Take(Defaults.PotLifeShare);
        var split = Batches.Split(new BatchRequest
        {
            Total = Mass.FromKilograms(toMix.Si),
            PotLimit = Mass.FromKilograms(largest.Si),
            LayingTime = Duration.FromSeconds(laying.Si),
            PotLife = reference.Value,
            Temperature = lives.Temperature.Value,
            FractionOfLife = Ratio.FromDecimalFractions(share.Si),
            MixingTime = Duration.FromSeconds(mixing.Si),
            Shape = lives.Shape.Value,
            MostPots = MostPots,
        });
        if (split is { } found)
        {
            var bound = found.BoundBy == BatchLimit.PotLimit ? largest.On : largest.On | lives.Reference.Value.On | lives.Temperature.On | lives.Shape.On
                | lives.Rules(found.Assumptions) | laying.On | mixing.On | share.On;
            return Alike(toMix.And(bound), found.Pots);
        }

        context.Miss(Subject, $"no split of {job.System.Name} into {MostPots} pots or fewer is used up within its pot life: a slower hardener, more hands or a cooler shop");
        return Alike(toMix.And(largest.On | lives.Reference.Value.On | laying.On | mixing.On | share.On), byMass);
    }

    /// <summary>The largest pot that the liquid's own sheet allows, kg; null when it says nothing.</summary>
    public static Num? LargestPot(PlanContext context, ResinSystem resin) =>
        context.Figures.Mass(resin.LargestPot, Owner.Of(resin), "largest-pot");

    private static Num LargestByProcess(PlanContext context) =>
        context.Process == Process.Infused ? context.Take(Defaults.LargestFeedPot)
        : context.Part.WetOut?.Tray?.Value == true ? context.Take(Defaults.LargestTray)
        : context.Take(Defaults.LargestPot);

    private static ImmutableArray<Num> Alike(Num total, int pots)
    {
        var masses = ImmutableArray.CreateBuilder<Num>(pots);
        for (var i = 0; i < pots; i++)
        {
            masses.Add(total / pots);
        }

        return masses.MoveToImmutable();
    }

    private static ImmutableArray<PotWork> Schedule(
        ImmutableArray<Num> masses, Func<double, double, (ImmutableArray<string> Names, Num Time)> laying, Num mixing, PotLives lives, bool withLives = true)
    {
        var total = 0.0;
        foreach (var mass in masses)
        {
            total += mass.Si;
        }

        var pots = ImmutableArray.CreateBuilder<PotWork>(masses.Length);
        var clock = Num.Zero;
        var poured = 0.0;

        // Pots that are alike, as planned ones are, live alike and warm alike.
        var (alike, life, peak) = (double.NaN, (Num?)null, (Known<Temperature>?)null);
        foreach (var mass in masses)
        {
            var (names, time) = laying(poured / total, (poured + mass.Si) / total);
            poured += mass.Si;
            var used = clock + mixing + time.And(mass.On);
            (life, peak) = alike == mass.Si ? (life, peak) : withLives ? (lives.Of(mass), lives.Peak(mass)) : (null, null);
            alike = mass.Si;
            pots.Add(new PotWork(mass, names, clock, used, life, peak));
            clock = used;
        }

        return pots.MoveToImmutable();
    }
}
