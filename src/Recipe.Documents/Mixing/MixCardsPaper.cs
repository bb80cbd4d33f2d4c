using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Mixing;

/// <summary>The mix cards: one card for each pot, a page of its own, to lie beside the scale.</summary>
internal static class MixCardsPaper
{
    /// <summary>Whether anything is mixed for the part: for one of prepreg alone nothing is.</summary>
    public static bool Applies(PaperInput input) =>
        input.Plan.Part is var part && (part.Process.Value != Process.Prepreg || part.IsAssembly || !part.Coats.IsEmpty || part.Join?.Adhesive is not null || input.Plan.OwnMixes.Any(mix => !mix.Pots.IsEmpty));

    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        ImmutableArray<Station> cards = [.. MixRun.Of(context).SelectMany(run => run.Pots.Select(pot => MixCard.Of(context, run, pot))), .. Unplanned(context)];
        return new Document
        {
            Kind = "Mix cards",
            Identity = context.Identity(ofOneBuild: true),
            Paper = context.Paper,
            ForTheBench = true,
            Stations = cards.IsEmpty ? [new Station("Mix", [new Paragraph(Nothing(context))])] : cards,
            Data = Data(context),
        };
    }

    // A liquid of the recipe that no pot could be planned for must not be forgotten.
    private static IEnumerable<Station> Unplanned(PaperContext context)
    {
        var say = context.Wording;
        var planned = MixRun.Of(context).Select(run => run.System.Name).ToHashSet(StringComparer.Ordinal);
        var onMould = context.IsWrapped ? say.Say("coat on the mandrel") : say.Say("coat on the mould");
        var liquids = context.Part.Coats.Select(coat => (Use: onMould, System: coat.Material))
            .Concat(context.Part is { Resin: { } resin, Process.Value: not Process.Prepreg } ? [(Use: say.Say("plies"), System: resin)] : Array.Empty<(string Use, ResinSystem System)>())
            .Concat(context.Part.Join?.Adhesive is { } adhesive ? [(Use: say.Say("join"), System: adhesive)] : Array.Empty<(string Use, ResinSystem System)>());
        foreach (var (use, system) in liquids.Where(liquid => !planned.Contains(liquid.System.Name)).DistinctBy(liquid => liquid.System.Name))
        {
            var order = Liquids.TakesPeroxide(system) ? say.Say("Stir the accelerator in first. Peroxide last.") : say.Say("A first, B second. Mix, scrape, second cup.");
            yield return new Station(say.Say("Pot without a plan"),
            [
                new Facts(
                [
                    new(say.Say("For"), use), new(say.Say("Liquid"), Words.Of(system, say)), new(say.Say("Ratio"), system.Mix is { } mix ? QuantityText.Written(mix) : say.Say("not known: data sheet")),
                    new(say.Say("Lot"), Phrase.Empty, new Blank(say.Say("lot and use-before date"))), new(say.Say("Mixed"), Phrase.Empty, new Blank(say.Say("mixed"), context.Text.ScaleUnit)),
                ]),
                .. Liquids.TakesPeroxide(system)
                    ? [new Caution(say.Say("Accelerator first, peroxide last"), [.. Cautions.Of(context.Plan, context.Wording, Danger.Peroxide).Select(caution => (Phrase)caution.Text)])]
                    : ImmutableArray<Block>.Empty,
                new Paragraph(say.Say("The amount is not known. Work it out by the data sheet before you mix.")),
                new TickList([order]),
                new IfBox(
                [
                    new(say.Say("The pot warms or draws strings"), say.Say("spread it in a tray outdoors")),
                    new(say.Say("The ratio is not on the tin"), say.Say("mix nothing; ask for the data sheet")),
                    new(say.Say("It is on your skin"), say.Say("wipe dry, wash with soap; no solvent")),
                ]),
            ]);
        }
    }

    private static string Nothing(PaperContext context) => context.Wording.Say("No pot could be planned; the cover says what is missing. Mix nothing by guess.");

    private static DataTable Data(PaperContext context) => new(
        ["use", "liquid", "pot", "of", "for", "total_g", "a_g", "b_g", "scale_shows_g", "tolerance_g", "mixed_at_min", "used_up_at_min", "pot_life_min", "dead_at_min"],
        [
            .. MixRun.Of(context).SelectMany(run => run.Pots.Select(pot => ImmutableArray.Create<object?>(
                run.Use,
                run.System.Name,
                pot.Number,
                run.Pots.Length,
                string.Join(" ", pot.For),
                Grams(pot.Mass.Value),
                pot.Resin is { } resin ? Grams(context.Text.OnScale(resin.Value)) : null,
                pot.Hardener is { } hardener ? Grams(context.Text.OnScale(hardener.Value)) : null,
                Grams(MixRun.Total(context.Text, pot)),
                pot.HardenerTolerance is { } off ? Grams(off) : null,
                Minutes(pot.MixedAt.Value),
                Minutes(pot.UsedUpAt.Value),
                pot.PotLife is { } life ? Minutes(life.Value) : null,
                pot.DeadAt is { } dead ? Minutes(dead.Value) : null))),
        ]);

    private static double Grams(UnitsNet.Mass mass) => Math.Round(mass.Grams, 4);

    private static double Minutes(UnitsNet.Duration time) => Math.Round(time.Minutes, 2);
}
