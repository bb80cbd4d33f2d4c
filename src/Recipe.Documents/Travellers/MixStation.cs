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
            ["Lots in date and written down, resin at its temperature", Ratio(context), $"Scale shows {context.Text.ScaleStep} steps, set level, set to zero"],
            [new Blank("Resin temperature", "°C")]));
        if (context.Plan.Pots.IsEmpty)
        {
            blocks.Add(new Paragraph("No pot could be planned; what is missing is listed at the end. Mix nothing by guess."));
        }
        else
        {
            blocks.Add(TravellerContext.Steps("", context.Plan.Pots.SelectMany(pot => Pot(context, pot))));
        }

        if (context.Process == Process.Infused)
        {
            blocks.Add(TravellerContext.Steps("Infuse", Infuse(context)));
        }

        blocks.Add(new IfBox(
        [
            new("A pot warms or draws strings", "stop using it, carry it outdoors, spread it in a tray, mix the next one"),
            new("The scale is past the band", "do not scrape out: work out the other liquid from the ratio, or set the pot aside"),
        ]));
        return new Station(context.Process == Process.Infused ? "Mix and infuse" : "Mix", blocks.ToImmutable());
    }

    private static Phrase Ratio(TravellerContext context)
    {
        if (context.Plan.Resin?.System is not { Mix: { } mix } resin)
        {
            return "No mix ratio is known: take it from the data sheet, and mix nothing before";
        }

        var byVolume = mix.Value.Basis == MixBasis.Volume ? "; weights below come from the densities" : "";
        return (Phrase)$"{resin.Label}: mix " + Phrase.Strong(QuantityText.Written(mix)) + byVolume;
    }

    private static IEnumerable<Row> Pot(TravellerContext context, PotPlan pot)
    {
        var text = context.Text;
        var of = context.Plan.Pots.Length;
        var dead = pot.PotLife is { } life ? $", dead {QuantityText.Minutes(life.Value, Rounding.Down)} later" : ", pot life not known";
        var plies = pot.For.IsEmpty ? "" : $", for {string.Join(", ", pot.For)}";
        var at = context.Clock.TimeOfDay(pot.MixedAt.Value) is { } planned ? $" ({planned})" : "";
        yield return new GroupRow($"Pot {Numbers.Whole(pot.Number)} of {Numbers.Whole(of)}: mix at {WorkClock.Minute(pot.MixedAt.Value, Rounding.Nearest)}{at}{dead}{plies}");
        if (pot is not { Resin: { } resin, Hardener: { } hardener })
        {
            yield return context.Step("Weigh and mix by the data sheet: no mix ratio is known", new BigCell(text.Weight(pot.Mass.Value).Main, "in all"), new Blank("mixed", "g"));
            yield return UseBy(context, pot);
            yield break;
        }

        var peroxide = context.Plan.Resin?.System.Chemistry is Chemistry.Polyester or Chemistry.Vinylester;
        yield return context.Step("Set to zero. Pour resin (A).", Big(text.Weight(resin.Value)), new Blank("resin poured", "g"));
        if (peroxide)
        {
            yield return context.Tick("Stir in the accelerator, unless it is in the resin already. Close it and carry it away.", "fully stirred in");
        }

        // What stands on the paper adds up: the scale's total is the rounded resin and the rounded hardener.
        var total = text.OnScale(resin.Value) + text.OnScale(hardener.Value);
        var notes = new List<string>();
        if (pot.HardenerTolerance is { } tolerance)
        {
            notes.Add($"{text.Weight(total - tolerance, Rounding.Up).Main} to {text.Weight(total + tolerance, Rounding.Down).Main}");
        }

        var second = peroxide ? "peroxide" : "hardener (B)";
        notes.Add($"{(peroxide ? "peroxide" : "B")} alone {text.Weight(hardener.Value)}");
        yield return context.Step(
            $"{(peroxide ? "Peroxide last: add" : "Add")} {(peroxide ? "it" : second)} until the scale shows",
            new BigCell(text.Weight(total).Main, string.Join("; ", notes)),
            new Blank("scale shows", "g"));
        var mixing = context.Part.WetOut?.Mixing is { } time ? new BigCell(QuantityText.Span(time.Value)) : (Cell)"until no streak is left";
        yield return context.Tick("Mix, scrape the cup. Second cup, mix again.", mixing);
        yield return UseBy(context, pot);
    }

    private static BigCell Big(Reading reading) => new(reading.Main, reading.Beside);

    private static CellRow UseBy(TravellerContext context, PotPlan pot)
    {
        return context.Step(
            "Write the time. Use it up by",
            new BigCell(QuantityText.Minutes(pot.UsedUpAt.Value, Rounding.Up), "after first mix"),
            new Blank("time mixed"));
    }

    private static IEnumerable<Row> Infuse(TravellerContext context)
    {
        var infusion = context.Part.Infusion;
        var text = context.Text;
        yield return context.Tick("Open no feed before H5 is signed. Feed under the resin, no air.", infusion?.FeedLine is { } line ? $"feed line {text.Written(line, value => text.Size(value))}" : null);
        if (infusion?.MouldTemperature is { } mould)
        {
            yield return context.Step("Mould temperature", Big(text.Written(mould, value => text.Temperature(value))), new Blank("mould temperature", "°C"));
        }

        yield return context.Step("Open the feed. Write the time.", infusion?.Path is { } path ? $"resin runs {text.Written(path, value => text.Size(value))}" : (Cell)"", new Blank("time feed open"));
        var reserve = infusion?.Reserve is { } share ? $"keep {QuantityText.Written(share)} in the pot" : "never let the pot run dry";
        yield return context.Tick("Watch the front. Mark it every few minutes.", reserve);
        yield return context.Step("Clamp the feed.", infusion?.ClampFeed is { } when ? when : (Cell)"when the front has reached the vent", new Blank("time clamped"));
        yield return context.Tick("Leave the vacuum on until gel. Watch the catch pot.", infusion?.Vent is { } vent ? $"vent {vent}" : null);
    }
}
