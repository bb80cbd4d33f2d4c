using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Travellers;

/// <summary>Weighing and mixing each pot, after H3. An infusion goes on to open the feed.</summary>
internal static class MixStation
{
    public static Station Build(TravellerContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.AddRange(context.Caution(Danger.Peroxide));
        blocks.Add(new HoldPoint(
            "H3",
            "resin ready",
            ["Lots written on the last page, in date", Ratio(context), $"Scale level, at zero, shows {context.Text.ScaleStep} steps"],
            [new Blank("Resin temperature", context.Text.TemperatureUnit)]));
        if (context.Plan.Pots.IsEmpty)
        {
            blocks.Add(new Paragraph("No pot could be planned; what is missing is listed at the end. Mix nothing by guess."));
        }
        else
        {
            blocks.Add(TravellerContext.Steps("", [.. context.Plan.Pots.SelectMany(pot => Pot(context, pot)), Witness()]));
        }

        if (context.Process == Process.Infused)
        {
            blocks.Add(TravellerContext.Steps("Infuse", Infuse(context)));
        }

        blocks.Add(new IfBox(
        [
            new("A pot warms or draws strings", $"use it no more; spread it in a tray outdoors; mix the next{Standing(context)}"),
            new("The scale is past the band", "scrape nothing out; work out the other liquid, or set the pot aside"),
            .. context.Process == Process.Infused ? [new IfThen("Air runs in the feed line", "clamp the feed; find the leak; open it again")] : ImmutableArray<IfThen>.Empty,
        ]));
        return new Station(context.Process == Process.Infused ? "Mix and infuse" : "Mix", blocks.ToImmutable());
    }

    // A figure beyond that would be more than the model knows.
    private static string Standing(TravellerContext context)
    {
        const double boils = 100;
        var hot = context.Plan.Pots.FirstOrDefault(pot => pot.StandingPeak is { Value.DegreesCelsius: > boils });
        return hot is null ? "" : $". Left standing, pot {Numbers.Whole(hot.Number)} can pass {context.Text.Temperature(UnitsNet.Temperature.FromDegreesCelsius(boils)).Main}";
    }

    private static ResinSystem? System(TravellerContext context) => context.Plan.Resin?.System ?? context.Part.Resin;

    private static Phrase Ratio(TravellerContext context)
    {
        if (System(context) is not { Mix: { } mix } resin)
        {
            return "No mix ratio is known: take it from the data sheet, and mix nothing before";
        }

        var byVolume = mix.Value.Basis == MixBasis.Volume ? "; the weights below come from the densities" : "";
        return (Phrase)$"{Words.Of(resin)}: mix " + Phrase.Strong(QuantityText.Written(mix)) + byVolume;
    }

    private static IEnumerable<Row> Pot(TravellerContext context, PotPlan pot)
    {
        var text = context.Text;
        yield return new GroupRow(Title(context, pot));
        if (pot is not { Resin: { } resin, Hardener: { } hardener })
        {
            yield return TravellerContext.Step(
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
                yield return TravellerContext.Tick("Pour it into the tray at once.", "");
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
            yield return TravellerContext.Tick($"Mix, scrape the cup. Second cup, mix again.{tray}", mixing);
        }

        yield return End(context, pot);
    }

    private static string Title(TravellerContext context, PotPlan pot)
    {
        var at = context.Clock.TimeOfDay(pot.MixedAt.Value, Rounding.Nearest) is { } planned ? $" ({planned})" : "";
        var dead = pot.PotLife is { } life ? $", dead {QuantityText.Minutes(life.Value, Rounding.Down)} later" : ", pot life not known";
        var plies = pot.For.IsEmpty || context.Process == Process.Infused ? "" : $", for {string.Join(", ", pot.For)}";
        return $"Pot {Numbers.Whole(pot.Number)} of {Numbers.Whole(context.Plan.Pots.Length)}: mix at {WorkClock.Minute(pot.MixedAt.Value, Rounding.Nearest)}{at}{dead}{plies}";
    }

    // An infusion draws on its pot for as long as the front runs: its end is the end of the pot's life.
    private static CellRow End(TravellerContext context, PotPlan pot)
    {
        if (context.Process == Process.Infused)
        {
            return TravellerContext.Step(
                "Write the time. The front must be home before the pot is dead.",
                pot.PotLife is { } life ? new BigCell(QuantityText.Minutes(life.Value, Rounding.Down), "after mixing") : "pot life not known",
                new Blank("time mixed"));
        }

        var by = context.Clock.TimeOfDay(pot.UsedUpAt.Value, Rounding.Up) is { } planned ? $", {planned}" : "";
        return TravellerContext.Step(
            "Write the time. Use the pot up by", new BigCell(QuantityText.Minutes(pot.UsedUpAt.Value, Rounding.Up), "after first mix" + by), new Blank("time mixed"));
    }

    private static CellRow Witness() =>
        TravellerContext.Tick("Leave a little in the cup. Write serial and pot number on it.", "it is tested at H7");

    private static IEnumerable<Row> Infuse(TravellerContext context)
    {
        var infusion = context.Part.Infusion;
        var text = context.Text;
        if (infusion?.Degas is { } degas)
        {
            yield return TravellerContext.Step("Stand the mixed resin under vacuum. Watch it froth.", new BigCell(QuantityText.Span(degas.Value)), new Blank("time degassed"));
        }

        yield return TravellerContext.Tick("H5 signed? Put the feed under the resin, no air in it.", infusion?.FeedLine is { } line ? $"feed line {text.Written(line, value => text.Size(value))}" : null);
        if (infusion?.MouldTemperature is { } mould)
        {
            var warm = text.Written(mould, value => text.Temperature(value));
            yield return TravellerContext.Step("Mould temperature", new BigCell(warm.Main, warm.Beside), new Blank("mould temperature", text.TemperatureUnit));
        }

        yield return TravellerContext.Step("Open the feed. Write the time.", infusion?.Path is { } path ? $"resin runs {text.Written(path, value => text.Size(value))}" : (Cell)"", new Blank("time feed open"));
        var reserve = infusion?.Reserve is { } share ? $"keep {QuantityText.Written(share)} in the pot" : "never let the pot run dry";
        yield return TravellerContext.Tick("Watch the front. Mark it every few minutes.", reserve);
        yield return TravellerContext.Step("Clamp the feed.", infusion?.ClampFeed is { } when ? when : (Cell)"when the front has reached the vent", new Blank("time clamped"));
        yield return TravellerContext.Tick("Leave the vacuum on until gel. Watch the catch pot.", infusion?.Vent is { } vent ? $"vent {vent}" : null);
    }
}
