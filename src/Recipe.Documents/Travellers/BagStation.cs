using System.Collections.Immutable;
using Recipe.Documents.Content;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>The bag from the part outwards, the vacuum and its proof, to H5.</summary>
internal static class BagStation
{
    public static Station Build(TravellerContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.AddRange(context.Caution(Danger.Vacuum));
        if (context.Part.Bag is { } bag)
        {
            blocks.Add(new Table(
                "Bag: read from the part outwards",
                [new("Layer", Align.Centre, 24), new("Lay on", NamesTheRow: true), new("How", WidthMm: 62), new("On", Align.Centre, 16)],
                [.. bag.Layers.Select((layer, i) => Layer(context, layer, i + 1)), .. Fittings(bag)],
                TableUse.Steps));
        }
        else
        {
            blocks.Add(new Paragraph("The recipe has no bag. Write the layers used into the deviations box, from the part outwards."));
        }

        blocks.Add(TravellerContext.Steps("", Vacuum(context)));
        blocks.Add(Hold(context));
        var by = context.Clock.FullVacuumBy is { } latest ? $" before {WorkClock.Minute(latest)}" : "";
        blocks.Add(new IfBox(
        [
            new("It leaks", $"listen and press the tape: pleats first, then port, then corners; seal{by}; test again"),
            new("No leak is found", "take the hose off at the pump and test pump and hose alone"),
        ]));
        return new Station("Bag and vacuum", blocks.ToImmutable());
    }

    /// <summary>What a layer is, with its kind: "nylon peel ply, solid".</summary>
    public static string Describe(BagLayer layer)
    {
        var holes = layer.Class == LayerClass.ReleaseFilm && layer.Perforation is { } perforation ? $", {Words.Of(perforation.Value)}" : "";
        return layer.Material.Label + holes + (layer.ChosenByDefault ? ", the book's usual one" : "");
    }

    private static CellRow Layer(TravellerContext context, BagLayer layer, int number)
    {
        var how = new List<string>();
        if (layer.Count > 1)
        {
            how.Add(Words.Count(layer.Count, "layer", "layers"));
        }

        if (layer.Beyond is { } beyond)
        {
            how.Add($"{context.Text.Written(beyond, value => context.Text.Size(value)).Main} past the ply edge");
        }

        if (layer.Smaller is { } smaller)
        {
            how.Add($"{context.Text.Written(smaller, value => context.Text.Size(value)).Main} smaller than the layer below");
        }

        if (layer.Class == LayerClass.BagFilm)
        {
            how.Add("to the tape, slack in the pleats");
        }

        return new CellRow([new RingCell(Numbers.Whole(number)), new TextCell(Phrase.Strong(Words.Of(layer.Class)), Describe(layer)), string.Join("; ", how), TickCell.Of(layer.Count > 8 ? 1 : layer.Count)]);
    }

    private static IEnumerable<Row> Fittings(Bag bag)
    {
        var pleats = bag.Pleats is { } count ? $"{Numbers.Whole(count.Value)} pleats" : "a pleat at every corner";
        yield return new CellRow(["", new TextCell("sealant tape", bag.SealantTape?.Material.Label), pleats + (bag.IsEnvelope ? "; envelope round the mould" : ""), TickCell.Of(1)]);
        foreach (var port in bag.Ports)
        {
            yield return new CellRow(["", new TextCell("port", port.Material.Label), $"on its pad of breather{(port.At is { } at ? ", at " + WrittenText.ForReading(at) : "")}", TickCell.Of(1)]);
        }

        if (bag.Hose is not null || bag.CatchPot is not null)
        {
            var catchPot = bag.CatchPot is null ? "" : "catch pot between bag and pump";
            yield return new CellRow(["", new TextCell("hose", bag.Hose?.Material.Label), catchPot, TickCell.Of(1)]);
        }

        var gauge = bag.GaugeAt is { } place ? "at " + WrittenText.ForReading(place) : "on the far side from the port";
        yield return new CellRow(["", "gauge", gauge, TickCell.Of(1)]);
    }

    private static IEnumerable<Row> Vacuum(TravellerContext context)
    {
        var vacuum = context.Part.Vacuum;
        var text = context.Text;
        yield return context.Step("Pump on. Seat the bag in the corners, pleats first.", context.Clock.PumpOnBy is { } by ? new BigCell(WorkClock.Minute(by), "at the latest") : "", new Blank("time pump on"));
        if (context.Plan.Vacuum is not { } levels)
        {
            yield return context.Step("Draw the vacuum.", "no level is written", new Blank("vacuum below ambient"));
            yield break;
        }

        var below = text.Pressure(levels.BelowAmbient.Value, Rounding.Nearest);
        var written = vacuum?.Draw is { } draw ? $"written {QuantityText.Written(draw)}; " : "";
        var within = vacuum?.Within is { } time ? $" Within {QuantityText.Span(time.Value)}." : "";
        yield return context.Step(
            $"Draw down.{within}",
            new BigCell(below.Main, $"below ambient{(below.Beside is { } other ? $" ({other})" : "")}"),
            new Blank("vacuum below ambient", below.Main.EndsWith("mbar", StringComparison.Ordinal) ? "mbar" : "inHg"),
            $"{written}that is {text.Pressure(levels.Absolute.Value)} absolute; at this height {text.Pressure(levels.Ceiling.Value)} is all there is");
        if (vacuum?.Settle is { } settle)
        {
            yield return context.Tick("Let it settle.", new BigCell(QuantityText.Span(settle.Value)));
        }
    }

    private static HoldPoint Hold(TravellerContext context)
    {
        var text = context.Text;
        var levels = context.Plan.Vacuum;
        var check = context.Part.Vacuum?.LeakCheck ?? context.Part.Infusion?.DropTest;
        var time = levels?.LeakCheck?.Value ?? check?.Duration?.Value;
        var limit = levels?.RiseAtMost?.Value ?? check?.RiseAtMost?.Value;
        var wait = time is { } known ? QuantityText.Span(known) : "the time of the shop's rule";
        var rise = limit is { } most ? $"{text.Pressure(most, Rounding.Down)} at most" : "no limit is written: decide and write it down";
        return new HoldPoint(
            "H5",
            context.Process == Process.Infused ? "leak check: no resin without it" : "leak check: no cure without it",
            ["Level reached. Shut the bag off from the pump", (Phrase)"Wait " + Phrase.Strong(wait), (Phrase)"Rise of pressure: " + Phrase.Strong(rise)],
            [new Blank("Before", "mbar"), new Blank("After", "mbar"), new Blank("Rise", "mbar")]);
    }
}
