using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>The bag from the part outwards.</summary>
internal static class BagStation
{
    public static Station Build(TravellerContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
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

        blocks.Add(new IfBox(
        [
            new("The film is too short at a corner", "add a pleat there; never stretch it"),
            new("Resin sits on the tape land", "wipe it off before the tape goes on"),
        ]));
        return new Station("Bag", blocks.ToImmutable());
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
}
