using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Planning;

namespace Recipe.Documents.Mixing;

/// <summary>The mix cards: one card for each pot, a page of its own, to lie beside the scale.</summary>
internal static class MixCardsPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        ImmutableArray<Station> cards = [.. MixRun.Of(context).SelectMany(run => run.Pots.Select(pot => MixCard.Of(context, run, pot)))];
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

    private static string Nothing(PaperContext context) => context.Part.Process.Value == Model.Process.Prepreg
        ? context.Wording.Say("Nothing is mixed for this part.")
        : context.Wording.Say("No pot could be planned; the cover says what is missing. Mix nothing by guess.");

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
