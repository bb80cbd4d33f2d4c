using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Documents.Mixing;

/// <summary>One pot. A round mark stands for the first liquid, a square one for the second, so that a copy without colours tells them apart.</summary>
internal static class MixCard
{
    private const double Boils = 100;
    private const int MostDoubts = 3;

    public static Station Of(PaperContext context, MixRun run, PotPlan pot)
    {
        var say = context.Wording;
        var title = say.Say($"{run.Name} {Numbers.Whole(pot.Number)} of {Numbers.Whole(run.Pots.Length)}");
        return new Station(title,
        [
            Head(context, run, pot),
            .. Doubts(context),
            .. Peroxide(context, run),
            MixSteps.Of(context, run, pot),
            Times(context, run, pot),
            After(context, run),
            Sums(context, run),
            new IfBox(Ifs(context, run, pot)),
        ]);
    }

    private static Facts Head(PaperContext context, MixRun run, PotPlan pot)
    {
        var (say, system) = (context.Wording, run.System);
        var plies = pot.For.IsEmpty || context.Part.Process.Value == Process.Infused ? run.Use : string.Join(", ", pot.For);
        var facts = ImmutableArray.CreateBuilder<Fact>();
        var ratio = system.Mix is not { } mix ? say.Say("ratio not known: data sheet")
            : mix.Value.Basis == MixBasis.Volume ? say.Say($"{QuantityText.Written(mix)}; weigh as below")
            : QuantityText.Written(mix);
        var step = context.Text.ScaleStep;
        var scale = context.Plan.Shop?.ScaleResolution is null ? say.Say($"scale in {step} steps, assumed") : say.Say($"scale in {step} steps");
        facts.Add(new(say.Say("For"), $"{plies}; {ratio}; {scale}"));
        facts.Add(new("● A", Words.Of((Material)system), Lot(context, system, isHardener: false)));
        var second = (run.TakesPeroxide, system.Hardener) switch
        {
            (true, null) => say.Say("peroxide"),
            (true, { } which) => say.Say($"peroxide {which}"),
            (false, null) => say.Say("hardener"),
            (false, { } which) => say.Say($"hardener {which}"),
        };
        facts.Add(new("■ B", second, Lot(context, system, isHardener: true)));
        return new Facts(facts.ToImmutable());
    }

    // Whoever mixes has this card in hand and not the cover: what the checks doubt about resin, ratio and pots stands here too.
    private static IEnumerable<Block> Doubts(PaperContext context)
    {
        var doubts = Notes.Open(context).Where(finding => finding.Severity >= Severity.Warning && FindingFamilies.StageOf(finding.Descriptor.Code) == BenchStage.Laying).ToList();
        if (doubts.Count > 0)
        {
            yield return new Caution(
                context.Wording.Say("Before you mix: the checks doubt this"),
                [.. doubts.Take(MostDoubts).Select(doubt => (Phrase)$"{doubt.Descriptor.ShortCode} {doubt.Message}"), .. doubts.Count > MostDoubts ? [(Phrase)context.Wording.Say($"and {Numbers.Whole(doubts.Count - MostDoubts)} more, on the cover")] : Array.Empty<Phrase>()]);
        }
    }

    // Of the tins on the shelf the one that expires first is used first; the tin itself has the last word.
    private static Blank Lot(PaperContext context, ResinSystem system, bool isHardener)
    {
        var lines = context.Plan.Takeoff.Where(line => ReferenceEquals(line.Material, system)).ToList();
        var line = isHardener ? lines.LastOrDefault() : lines.FirstOrDefault();
        var tin = line?.Shelf.OrderBy(shelf => shelf.Expires ?? DateOnly.MaxValue).FirstOrDefault(shelf => shelf.Lot is not null);
        var known = tin is null ? "" : tin.Expires is { } day ? $"{tin.Lot}, {Numbers.Day(day)}?" : $"{tin.Lot}?";
        return new Blank(isHardener ? context.Wording.Say("lot and use-before date of B") : context.Wording.Say("lot and use-before date of A"), known.Length > 0 && lines.Count > (isHardener ? 1 : 0) ? known : context.Wording.Say("lot, use before"));
    }

    private static IEnumerable<Block> Peroxide(PaperContext context, MixRun run)
    {
        if (run.TakesPeroxide || run.System.Chemistry == Chemistry.Unknown)
        {
            yield return new Caution(
                context.Wording.Say("Accelerator first, peroxide last"), [.. Cautions.Of(context.Plan, context.Wording, Danger.Peroxide).Select(caution => (Phrase)caution.Text)]);
        }
    }

    private static KeyNumbers Times(PaperContext context, MixRun run, PotPlan pot)
    {
        var say = context.Wording;
        var warm = context.Text.Temperature(context.Plan.Conditions.Resin.Value).Main;
        var items = ImmutableArray.CreateBuilder<KeyNumber>();
        items.Add(new(say.Say("Mixed at"), Planned(context, run, pot), null, new Blank(say.Say("mixed at"))));
        items.Add(pot.PotLife is { } life
            ? new(say.Say("Dead at"), say.Say($"mixed + {QuantityText.Minutes(life.Value, Rounding.Down)}"), Rule(context, warm, life), new Blank(say.Say("dead at")))
            : new(say.Say("Dead at"), say.Say("not known"), say.Say("pot life: see the data sheet"), new Blank(say.Say("dead at"))));
        return new KeyNumbers("", items.ToImmutable());
    }

    private static string Rule(PaperContext context, string warm, Computed<Duration> life)
    {
        var rests = context.RestsOn(life.RestsOn);
        return rests is null ? context.Wording.Say($"at {warm}; warmer is sooner") : context.Wording.Say($"at {warm}; warmer is sooner; {rests}");
    }

    private static string Planned(PaperContext context, MixRun run, PotPlan pot)
    {
        if (run.Own is not null)
        {
            return pot.Number == 1 ? context.Wording.Say("time:") : WorkClock.Minute(context.Wording, pot.MixedAt.Value, Rounding.Nearest);
        }

        return new WorkClock(context.Plan, context.Wording).TimeOfDay(pot.MixedAt.Value, Rounding.Nearest) ?? WorkClock.Minute(context.Wording, pot.MixedAt.Value, Rounding.Nearest);
    }

    private static Facts After(PaperContext context, MixRun run)
    {
        var say = context.Wording;
        return new Facts(
        [
            new(say.Say("Left in pot"), Phrase.Empty, new Blank(say.Say("left in the pot"), context.Text.ScaleUnit)),
            run.Own?.Use == OwnMixUse.Coat
                ? new(say.Say("Coat laid"), Phrase.Empty, new Blank(say.Say("coat laid"), context.Text.ScaleUnit))
                : new(say.Say("Witness cup"), Phrase.Empty, new Blank(say.Say("number of the witness cup"))),
        ]);
    }

    private static ImmutableArray<IfThen> Ifs(PaperContext context, MixRun run, PotPlan pot)
    {
        var say = context.Wording;
        var hot = pot.StandingPeak is { Value.DegreesCelsius: > Boils } ? say.Say($"; can pass {context.Text.Temperature(Temperature.FromDegreesCelsius(Boils)).Main}") : "";
        return
        [
            new(say.Say("It warms or draws strings"), say.Say($"spread it outdoors in a tray{hot}")),
            new(say.Say("The scale is past the band"), say.Say("scrape nothing out; set the pot aside")),
            new(
                run.TakesPeroxide ? say.Say("Peroxide on skin, in an eye") : say.Say("Resin or hardener on skin"),
                run.TakesPeroxide ? say.Say("rinse 15 min with water; get a doctor") : say.Say("wipe dry, wash with soap; no solvent")),
        ];
    }

    private static Table Sums(PaperContext context, MixRun run)
    {
        var (say, text) = (context.Wording, context.Text);
        var total = run.Pots.Aggregate(Mass.Zero, (sum, pot) => sum + MixRun.Total(text, pot));
        var hasParts = run.Pots.All(pot => pot is { Resin: not null, Hardener: not null });
        string Of(Func<PotPlan, Mass> part) => hasParts ? text.Weight(run.Pots.Aggregate(Mass.Zero, (sum, pot) => sum + text.OnScale(part(pot)))).Main : "";
        return new Table(
            say.Say("All pots of this liquid"),
            [new(say.Say("Pot"), NamesTheRow: true), new("● A", Align.Right, 32), new("■ B", Align.Right, 32), new(say.Say("Together"), Align.Right, 32)],
            [
                .. run.Pots.Where(_ => run.Pots.Length > 1).Select(pot => new CellRow(
                [
                    pot.For.IsEmpty ? Numbers.Whole(pot.Number) : $"{Numbers.Whole(pot.Number)}: {string.Join(", ", pot.For)}",
                    pot.Resin is { } resin ? text.Weight(resin.Value).Main : "", pot.Hardener is { } hardener ? text.Weight(hardener.Value).Main : "", text.Weight(MixRun.Total(text, pot)).Main,
                ])),
                new CellRow(
                [
                    new TextCell(say.Say($"Sum; required {text.Weight(run.ToMix.Value).Main}"), context.RestsOn(run.ToMix.RestsOn)),
                    Of(pot => pot.Resin!.Value.Value), Of(pot => pot.Hardener!.Value.Value), text.Weight(total).Main,
                ],
                IsSum: true),
            ]);
    }
}
