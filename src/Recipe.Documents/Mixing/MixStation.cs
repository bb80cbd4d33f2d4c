using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Mixing;

/// <summary>Weighing and mixing each pot, after H3.</summary>
internal static class MixStation
{
    public static Station Build(BenchContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.AddRange(context.Caution(Danger.Peroxide));
        blocks.Add(new Paragraph(Ratio(context)));
        if (context.Plan.Pots.IsEmpty)
        {
            blocks.Add(new Paragraph("No pot could be planned; what is missing is listed at the end. Mix nothing by guess."));
        }
        else
        {
            blocks.Add(BenchContext.Steps("", [.. context.Plan.Pots.SelectMany(pot => Pot(context, pot)), Witness()]));
        }

        blocks.Add(new IfBox(
        [
            new("A pot warms or draws strings", $"use it no more; spread it in a tray outdoors; mix the next{Standing(context)}"),
            new("The scale is past the band", "scrape nothing out; work out the other liquid, or set the pot aside"),
        ]));
        blocks.AddRange(context.Foot("H3"));
        return new Station("Mix", blocks.ToImmutable());
    }

    // A figure beyond that would be more than the model knows.
    private static string Standing(BenchContext context)
    {
        const double boils = 100;
        var hot = context.Plan.Pots.FirstOrDefault(pot => pot.StandingPeak is { Value.DegreesCelsius: > boils });
        return hot is null ? "" : $". Left standing, pot {Numbers.Whole(hot.Number)} can pass {context.Text.Temperature(UnitsNet.Temperature.FromDegreesCelsius(boils)).Main}";
    }

    /// <summary>The resin of the plies.</summary>
    public static ResinSystem? System(BenchContext context) => context.Plan.Resin?.System ?? context.Part.Resin;

    /// <summary>The mix ratio, in words.</summary>
    public static Phrase Ratio(BenchContext context)
    {
        if (System(context) is not { Mix: { } mix } resin)
        {
            return "No mix ratio is known: take it from the data sheet, and mix nothing before";
        }

        var byVolume = mix.Value.Basis == MixBasis.Volume ? "; the weights below come from the densities" : "";
        return (Phrase)$"{Words.Of(resin)}: mix " + Phrase.Strong(QuantityText.Written(mix)) + byVolume;
    }

    private static IEnumerable<Row> Pot(BenchContext context, PotPlan pot)
    {
        var text = context.Text;
        yield return new GroupRow(Title(context, pot));
        if (pot is not { Resin: { } resin, Hardener: { } hardener })
        {
            yield return BenchContext.Step(
                "Weigh and mix by the data sheet: no mix ratio is known", new BigCell(text.Weight(pot.Mass.Value).Main, "in all"), new Blank("mixed", text.ScaleUnit));
        }
        else if (MixOrder.IsWritten(context.Part))
        {
            foreach (var row in MixOrder.Rows(context, System(context), resin.Value, hardener.Value, pot.HardenerTolerance))
            {
                yield return row;
            }

            if (context.Part.WetOut?.Tray?.Value == true)
            {
                yield return BenchContext.Tick("Pour it into the tray at once.", "");
            }
        }
        else
        {
            foreach (var row in Weighing.Pour(context, System(context), resin.Value, hardener.Value, pot.HardenerTolerance))
            {
                yield return row;
            }

            var mixing = context.Part.WetOut?.Mixing is { } time ? new BigCell(QuantityText.Span(time.Value)) : (Cell)"until no streak is left";
            var tray = context.Part.WetOut?.Tray?.Value == true ? " Pour it into the tray at once." : "";
            yield return BenchContext.Tick($"Mix, scrape the cup. Second cup, mix again.{tray}", mixing);
        }

        yield return End(context, pot);
    }

    private static string Title(BenchContext context, PotPlan pot)
    {
        var at = context.Clock.TimeOfDay(pot.MixedAt.Value, Rounding.Nearest) is { } planned ? $" ({planned})" : "";
        var dead = pot.PotLife is { } life ? $", dead {QuantityText.Minutes(life.Value, Rounding.Down)} later" : ", pot life not known";
        var plies = pot.For.IsEmpty || context.Process == Process.Infused ? "" : $", for {string.Join(", ", pot.For)}";
        return $"Pot {Numbers.Whole(pot.Number)} of {Numbers.Whole(context.Plan.Pots.Length)}: mix at {WorkClock.Minute(pot.MixedAt.Value, Rounding.Nearest)}{at}{dead}{plies}";
    }

    // An infusion draws on its pot for as long as the front runs: its end is the end of the pot's life.
    private static CellRow End(BenchContext context, PotPlan pot)
    {
        if (context.Process == Process.Infused)
        {
            return BenchContext.Step(
                "Write the time. The front must be home before the pot is dead.",
                pot.PotLife is { } life ? new BigCell(QuantityText.Minutes(life.Value, Rounding.Down), "after mixing") : "pot life not known",
                new Blank("time mixed"));
        }

        var by = context.Clock.TimeOfDay(pot.UsedUpAt.Value, Rounding.Up) is { } planned ? $", {planned}" : "";
        return BenchContext.Step(
            "Write the time. Use the pot up by", new BigCell(QuantityText.Minutes(pot.UsedUpAt.Value, Rounding.Up), "after first mix" + by), new Blank("time mixed"));
    }

    private static CellRow Witness() =>
        BenchContext.Tick("Leave a little in the cup. Write serial and pot number on it.", "it is tested at H7");
}
