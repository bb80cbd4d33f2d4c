using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Documents.Vacuums;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Bags;

/// <summary>The bag from the part outwards.</summary>
internal static class BagStation
{
    private const int MostBoxes = 8;

    /// <summary>The bag in pictures, then as a list with boxes.</summary>
    public static IEnumerable<Station> Stations(BenchContext context)
    {
        if (context.Part.Bag is not { } bag)
        {
            yield return new Station(
                context.Say("Bag"),
                [new Paragraph(context.Say("The recipe has no bag. Write the layers used into the deviations box, from the part outwards.")), If(context), .. context.Foot("H5")]);
            yield break;
        }

        ImmutableArray<Drawing> drawings = [.. new[] { BagSketch.Draw(context), BagFromAbove.Draw(context) }.OfType<Drawing>()];
        if (!drawings.IsEmpty)
        {
            yield return new Station(context.Say("The bag"), [Panel(context, bag), .. drawings]);
        }

        yield return new Station(
            context.Say("Bag, layer by layer"),
            [
                new Table(
                    context.Bags.Length > 1 ? context.Say($"Read from the part outwards; {string.Join(" and ", context.Bags)} have a bag each") : context.Say("Read from the part outwards"),
                    [new("Layer", Align.Centre, 22), new("Lay on", NamesTheRow: true), new("How", WidthMm: 62), new("On", Align.Centre, context.Bags.Length > 1 ? 32 : 16)],
                    [.. bag.Layers.Select((layer, i) => Layer(context, layer, i + 1)), .. Fittings(context, bag)],
                    TableUse.Steps),
                .. drawings.IsEmpty ? [Panel(context, bag)] : ImmutableArray<Block>.Empty,
                Blanks(context, bag),
                If(context),
                .. context.Foot("H5", context.Plan.Bag is { } plan ? plan.Layers.Select(layer => layer.Length.RestsOn).Append(plan.SealantTape.RestsOn) : []),
            ]);
    }

    /// <summary>The thing of the bag that stands the least heat, with its limit; null when no limit is known.</summary>
    public static (string What, Figure<Temperature> Limit)? Coolest(Bag bag)
    {
        IEnumerable<(string What, Material? Material)> things =
        [
            .. bag.Layers.Select(layer => (Words.Of(layer.Class), (Material?)layer.Material)),
            ("sealant tape", bag.SealantTape?.Material),
            ("hose", bag.Hose?.Material),
            .. bag.Ports.Select(port => ("port", (Material?)port.Material)),
        ];
        return things.Where(thing => thing.Material?.HeatLimit is not null)
            .OrderBy(thing => thing.Material!.HeatLimit!.Value.DegreesCelsius)
            .Select(thing => ((string, Figure<Temperature>)?)(Name(thing.What, thing.Material!), thing.Material!.HeatLimit!))
            .FirstOrDefault();
    }

    private static string Name(string what, Material material) =>
        Words.Of(material).Contains(what, StringComparison.OrdinalIgnoreCase) ? Words.Of(material) : $"{what}: {Words.Of(material)}";

    private static KeyNumbers Panel(BenchContext context, Bag bag)
    {
        var items = ImmutableArray.CreateBuilder<KeyNumber>();
        if (Coolest(bag) is { } coolest)
        {
            var limit = context.Text.Written(coolest.Limit, value => context.Text.Temperature(value));
            var hot = context.Plan.Cure?.Peak.Value;
            var over = hot is { } peak && peak > coolest.Limit.Value;
            var note = hot is { } top ? context.Say($"{coolest.What}; the cure reaches {context.Text.Temperature(top).Main}") : coolest.What;
            items.Add(new(context.Say("Coolest limit in this stack"), limit.Main, over ? context.Say($"{note}: TOO HOT") : note, Alarm: over));
        }
        else
        {
            items.Add(new(context.Say("Coolest limit in this stack"), context.Say("not known"), context.Say("take the limits from the data sheets")));
        }

        if (context.Plan.Clock is { } clock)
        {
            items.Add(new(context.Say("Time to lay and close it"), QuantityText.Minutes(clock.Bagging.Value, Rounding.Up), context.Clock.PumpOnBy is { } by ? context.Say($"pump on by {WorkClock.Minute(context.Wording, by)} after first mix") : null));
        }

        return new KeyNumbers(context.Say("Limits"), items.ToImmutable());
    }

    private static Facts Blanks(BenchContext context, Bag bag) => new(
    [
        new(context.Say("Pleats"), bag.Pleats is { } count ? Numbers.Whole(count.Value) : Phrase.Empty, new Blank(context.Say("pleats made"))),
        .. Pads(context, bag),
        .. context.BlankEach(context.Say("level reached"), context.Text.PressureUnit).Select(blank => new Fact(
            context.Say("Level"), context.Plan.Vacuum is { } levels ? context.Text.Pressure(levels.BelowAmbient.Value).Main : Phrase.Empty, blank)),
        .. context.BlankEach(context.Say("drop measured"), context.Text.PressureUnit).Select(blank => new Fact(context.Say("Drop"), Drop(context), blank)),
    ]);

    private static Phrase Drop(BenchContext context) => context.Plan.Vacuum is { LeakCheck: { } time } && VacuumStation.RiseSaid(context) is { } rise
        ? context.Say($"{rise} in {QuantityText.Span(time.Value)}")
        : Phrase.Empty;

    private static IfBox If(BenchContext context) => new(
    [
        new(context.IsWrapped ? context.Say("The film is tight round the part") : context.Say("The film is too short at a corner"), context.Say("add a pleat there; never stretch it")),
        new(context.Paper.HasTapeLand && !context.IsWrapped ? context.Say("Resin sits on the tape land") : context.Say("Resin sits where the tape goes"), context.Say("wipe it off before the tape goes on")),
        new(context.Say("A layer is left out or out of order"), context.Say("lift what lies on it now; under vacuum it is too late")),
    ]);

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

        if (BagSketch.Relation(context, layer) is { } relation)
        {
            how.Add(relation);
        }

        if (BagSketch.Limit(context, layer.Material) is { } limit)
        {
            how.Add(context.Say($"stands {limit}"));
        }

        return new CellRow([new RingCell(Numbers.Whole(number)), Describe(layer), string.Join("; ", how), context.TickEach(layer.Count > MostBoxes ? 1 : layer.Count)]);
    }

    // The letters are those of the drawings.
    private static IEnumerable<Row> Fittings(BenchContext context, Bag bag)
    {
        var pleats = bag.Pleats is { } count ? Words.Count(count.Value, "pleat", "pleats")
            : context.IsWrapped ? context.Say("pleats along the part") : context.Say("a pleat at every corner");
        var envelope = context.IsWrapped ? context.Say($"{pleats}; envelope round the mandrel") : context.Say($"{pleats}; envelope round the mould");
        yield return Fitting(context, "T", Named(context.Say("sealant tape"), bag.SealantTape?.Material, bag.SealantTape?.ChosenByDefault ?? false), bag.IsEnvelope ? envelope : pleats);
        foreach (var port in bag.Ports)
        {
            yield return Fitting(context, "P", Named(context.Say("port"), port.Material, port.ChosenByDefault), port.At is { } at ? Words.Place(at) : context.Say($"{Seat(context, port)}; place assumed: see the drawing"));
        }

        if (bag.Hose is not null || bag.CatchPot is not null)
        {
            yield return Fitting(context, "H", Named(context.Say("hose"), bag.Hose?.Material, bag.Hose?.ChosenByDefault ?? false), "");
        }

        if (bag.CatchPot is { } pot)
        {
            // One pot before the pump serves all bags (common practice): a hose from each leads to it.
            var where = context.Bags.Length > 1 ? context.Say("one between bags and pump, a hose from each bag to it") : context.Say("between bag and pump");
            yield return Fitting("C", Named(context.Say("catch pot"), pot.Material, pot.ChosenByDefault), where, TickCell.Of(1));
        }

        yield return Fitting(context, "G", Phrase.Strong(context.Say("gauge")), bag.GaugeAt is { } place ? Words.Place(place) : context.Say("place assumed: on the far side from the port"));
        if (context.Part.Infusion is { } infusion)
        {
            yield return Fitting("F", Phrase.Strong(context.Say("feed line")), Feeds(context, infusion), context.TickEach(Math.Min(context.FeedsOfABag, MostBoxes)));
            yield return Fitting(context, "V", Phrase.Strong(context.Say("vent")), infusion.Vent is { } vent ? Words.Place(vent) : context.Say("place assumed: across from the feed"));
        }
    }

    /// <summary>What a port sits on: as written, else as bags of this kind have it, the vent line of an infusion or a pad of breather (common practice).</summary>
    public static PortSeat SeatOf(BenchContext context, Placed<Fitting>? port) =>
        port?.Sits ?? (context.Process == Process.Infused ? PortSeat.Line : PortSeat.Breather);

    private static string Seat(BenchContext context, Placed<Fitting> port) => SeatOf(context, port) switch
    {
        PortSeat.Line => port.Sits is null ? context.Say("on the vent line") : context.Say("on its line"),
        PortSeat.Flange => context.Say("on the bare flange"),
        PortSeat.Part => context.Say("on the part"),
        _ => context.Say("on a pad of breather"),
    };

    // Only where a port wants one: that of an infusion sits on its line, and a pad there would drink resin.
    private static IEnumerable<Fact> Pads(BenchContext context, Bag bag)
    {
        if (bag.Ports.Select(port => SeatOf(context, port)).DefaultIfEmpty(SeatOf(context, null)).Contains(PortSeat.Breather))
        {
            yield return new(context.Say("Pad under port"), Phrase.Empty, new Blank(context.Say("pad under the port"), context.Say("yes / no")));
        }
    }

    // How many, and how long each is: as written, else as the plan takes it.
    private static string Feeds(BenchContext context, Infusion infusion)
    {
        var length = infusion.FeedLine is { } line ? context.Text.Written(line, value => context.Text.Size(value)).Main
            : context.Plan.Feed?.Length is { } taken ? context.Text.Size(taken.Value).Main
            : null;
        var count = context.FeedsOfABag;
        return (length, context.Bags.Length > 1) switch
        {
            (null, _) => "",
            ({ } each, false) => count > 1 ? context.Say($"{Numbers.Whole(count)} lines, each {each}") : each,
            ({ } each, true) => count > 1 ? context.Say($"{Numbers.Whole(count)} lines to each bag, each {each}") : context.Say($"one to each bag, {each}"),
        };
    }

    private static CellRow Fitting(BenchContext context, string mark, Phrase what, string how) => Fitting(mark, what, how, context.TickEach());

    private static CellRow Fitting(string mark, Phrase what, string how, TickCell boxes) => new([new TextCell(Phrase.Strong(mark)), new TextCell(what), how, boxes]);
}
