using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Bags;

/// <summary>The bag from the part outwards.</summary>
internal static class BagStation
{
    private const int MostBoxes = 8;

    public static Station Build(BenchContext context)
    {
        var blocks = ImmutableArray.CreateBuilder<Block>();
        if (context.Part.Bag is { } bag)
        {
            blocks.Add(new Table(
                "Bag: read from the part outwards",
                [new("Layer", Align.Centre, 22), new("Lay on", NamesTheRow: true), new("How", WidthMm: 60), new("On", Align.Centre, 14)],
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
            new("A layer is left out or out of order", "lift what lies on it now; under vacuum it is too late"),
        ]));
        return new Station("Bag", blocks.ToImmutable());
    }

    /// <summary>What a layer is: "release film: Film, polyethylene, solid"; the class is not said twice.</summary>
    public static Phrase Describe(BagLayer layer)
    {
        var named = Named(Words.Of(layer.Class), layer.Material, layer.ChosenByDefault);
        return layer is { Class: LayerClass.ReleaseFilm, Perforation: { } perforation } && !Says(named.Plain, perforation.Value)
            ? named + $", {Words.Of(perforation.Value)}"
            : named;
    }

    /// <summary>A thing of the bag: its class, then its material, unless that says the same word.</summary>
    public static Phrase Named(string what, Material? material, bool isDefault)
    {
        if (material is null)
        {
            return Phrase.Strong(what);
        }

        var label = Words.Of(material);
        var end = label.IndexOf(what, StringComparison.OrdinalIgnoreCase) is var at && at >= 0 ? at + what.Length : 0;
        var name = end > 0 ? Phrase.Strong(label[..end]) + label[end..] : Phrase.Strong(what) + $": {label}";
        return isDefault ? name + " (default)" : name;
    }

    // "pin-pricked" says "pin-prick perforation" already.
    private static bool Says(string label, Perforation perforation) =>
        label.Contains(Words.Of(perforation).Split(' ')[0], StringComparison.OrdinalIgnoreCase);

    private static CellRow Layer(BenchContext context, BagLayer layer, int number)
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

        return new CellRow([new RingCell(Numbers.Whole(number)), Describe(layer), string.Join("; ", how), TickCell.Of(layer.Count > MostBoxes ? 1 : layer.Count)]);
    }

    private static IEnumerable<Row> Fittings(Bag bag)
    {
        var pleats = bag.Pleats is { } count ? Words.Count(count.Value, "pleat", "pleats") : "a pleat at every corner";
        yield return Fitting("sealant tape", bag.SealantTape?.Material, pleats + (bag.IsEnvelope ? "; envelope round the mould" : ""), bag.SealantTape?.ChosenByDefault);
        foreach (var port in bag.Ports)
        {
            yield return Fitting("port", port.Material, port.At is { } at ? Words.Place(at) : "on a pad of breather", port.ChosenByDefault);
        }

        if (bag.Hose is not null || bag.CatchPot is not null)
        {
            yield return Fitting("hose", bag.Hose?.Material, bag.CatchPot is null ? "" : "catch pot between bag and pump", bag.Hose?.ChosenByDefault);
        }

        yield return Fitting("gauge", null, bag.GaugeAt is { } place ? Words.Place(place) : "on the far side from the port", null);
    }

    private static CellRow Fitting(string what, Material? material, string how, bool? isDefault) =>
        new(["", Named(what, material, isDefault ?? false), how, TickCell.Of(1)]);
}
