using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Takeoffs;

/// <summary>The takeoff: what to take from the shelf or buy, what it weighs and costs, and what the part will weigh.</summary>
internal static class TakeoffPaper
{
    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        return new Document
        {
            Kind = "Takeoff",
            Identity = context.Identity(ofOneBuild: false),
            Paper = context.Paper,
            Landscape = true,
            ForTheBench = false,
            Stations =
            [
                new Station(MaterialsTitle(context), MaterialsBlocks(context)),
                new Station("Resin to mix for one part", ResinBlocks(context)),
                Notes.Of(context, [.. context.Plan.Takeoff.SelectMany(line => new[] { line.Net.RestsOn, line.Waste.RestsOn, line.Gross.RestsOn }), .. ResinKeys(context)]),
            ],
            Data = TakeoffData.Of(context),
        };
    }

    private static IEnumerable<ImmutableArray<string>> ResinKeys(PaperContext context) => context.Plan.Resin is not { } resin
        ? []
        : [.. resin.Lines.Select(line => line.Mass.RestsOn), resin.Need.RestsOn, resin.ToMix.RestsOn, .. context.Plan.Join?.TapeResin is { } tape ? [tape.RestsOn] : Array.Empty<ImmutableArray<string>>()];

    private static string MaterialsTitle(PaperContext context) =>
        context.Parts == 1 ? context.Wording.Say("Materials for 1 part") : context.Wording.Say($"Materials for {Numbers.Whole(context.Parts)} parts");

    /// <summary>The part in facts: what it is, what it weighs, how thick it is.</summary>
    public static ImmutableArray<Block> PartBlocks(PaperContext context)
    {
        var (part, plan, text) = (context.Part, context.Plan, context.Text);
        var facts = ImmutableArray.CreateBuilder<Fact>();
        facts.Add(new("Part", part.Label == part.Name ? part.Name : $"{part.Label} ({part.Name})"));
        if (part.VariantOf is { } original)
        {
            facts.Add(new("Variant of", original));
        }

        facts.Add(new("Made by", Words.Of(part.Process.Value, context.Wording)));
        facts.Add(new(context.IsWrapped ? "Mandrel" : "Mould", part.Mould?.Label ?? "none named"));
        if (plan.Geometry is { } surface)
        {
            var each = surface.Sides > 1 ? $", each of {Numbers.Whole(surface.Sides)} sides" : "";
            facts.Add(new("Surface", $"{Words.Of(surface.Shape)}, {text.Area(surface.Area)} {(context.Tube is null ? "inside the trim line" : "between the trim lines")}{each}"));
        }

        facts.Add(new("Resin", part.Resin is { } resin ? Words.Of(resin, context.Wording) : "none named"));
        facts.Add(new("Target mass", Target(context)));
        facts.Add(new("Expected mass, trimmed", plan.TrimmedMass is { } mass ? MassWithBand(context, mass) : "not computed, see below"));
        if (context.Thickness is { } thickness)
        {
            facts.Add(new("Thickness of the full stack", With(text.Thickness(thickness.Value).ToString(), context.RestsOn(thickness.RestsOn))));
        }

        if (context.Laminate is { } laminate)
        {
            facts.Add(new("Resin content", With($"{QuantityText.Share(laminate.ResinFraction.Value)} by weight", context.RestsOn(laminate.ResinFraction.RestsOn))));
            if (laminate.FibreVolumeFraction is { } fibre)
            {
                facts.Add(new("Fibre content", With($"{QuantityText.Share(fibre.Value)} by volume", context.RestsOn(fibre.RestsOn))));
            }
        }

        facts.Add(new("Made of", MassParts(context)));
        return [new Facts([.. facts.Where(fact => !fact.Value.IsEmpty)])];
    }

    private static string Target(PaperContext context)
    {
        if (context.Part.TargetMass is not { } target)
        {
            return "none given";
        }

        var tolerance = context.Part.TargetTolerance is { } band ? $" ± {context.Text.Written(band, mass => context.Text.About(mass)).Main}" : "";
        return context.Text.Written(target, mass => context.Text.About(mass)) + tolerance;
    }

    private static string MassWithBand(PaperContext context, Computed<Banded<UnitsNet.Mass>> figure)
    {
        var (mass, text) = (figure.Value, context.Text);
        return With($"{text.About(mass.Value)}, between {text.About(mass.Low)} and {text.About(mass.High)}", context.RestsOn(figure.RestsOn));
    }

    private static string MassParts(PaperContext context) => context.Plan switch
    {
        { Laminate: { } laminate } => MassParts(
            context,
            ("fibre", laminate.Fibre.Value), ("resin", laminate.Resin.Value), ("core", laminate.Core.Value), ("coats", laminate.Coats.Value), ("inserts", laminate.Inserts.Value),
            ("join", laminate.Join?.Value ?? UnitsNet.Mass.Zero)),
        { Join: { Whole: not null } join } => MassParts(context, [.. join.Parts.Select(part => (part.Name, part.Mass.Value.Value)), ("join", join.Mass.Value)]),
        _ => "",
    };

    private static string MassParts(PaperContext context, params IEnumerable<(string Name, UnitsNet.Mass Mass)> pieces) => string.Join(", ", pieces
        .Where(piece => piece.Mass.Grams > 0).Select(piece => $"{piece.Name} {context.Text.About(piece.Mass)}"));

    private static string With(string value, string? rests) => rests is null ? value : $"{value}; {rests}";

    private static ImmutableArray<Block> MaterialsBlocks(PaperContext context)
    {
        if (context.Plan.Takeoff.IsEmpty)
        {
            return [new Paragraph("No material could be counted; the cover lists what is missing.")];
        }

        var (say, lines) = (context.Wording, JobTakeoff.Lines(context));
        var rows = ImmutableArray.CreateBuilder<Row>();
        foreach (var sum in TakeoffSums.Of(lines))
        {
            rows.Add(new GroupRow(Words.Of(sum.Group)));
            rows.AddRange(lines.Where(line => line.Group == sum.Group).Select(line => Line(context, line)));
            rows.Add(SumRow(context, $"Sum of {Words.Of(sum.Group).ToLowerInvariant()}", sum.Costs, sum.WithoutPrice, sum.Mass, sum.WithoutMass));
        }

        rows.Add(Total(context, lines));
        var table = new Table(
            say.Say("What to take from the shelf or buy"),
            [
                new(say.Say("Item"), NamesTheRow: true), new(say.Say("Net"), Align.Right, 20), new(say.Say("Waste"), Align.Right, 13), new(say.Say("Gross"), Align.Right, 20),
                new(say.Say("Pack"), Align.Right, 16), new(say.Say("In stock: lot, expiry"), Align.Right, 30), new(say.Say("To buy: packs"), Align.Right, 18), new(say.Say("Price, of"), Align.Right, 26),
                new(say.Say("Cost"), Align.Right, 21), new(say.Say("Mass"), Align.Right, 18), new(say.Say("Supplier, due"), WidthMm: 22),
            ],
            rows.ToImmutable());
        var remark = new Paragraph(
            say.Say("Gross is net and waste. Cost and mass are of the gross amount. Off the roll is the length that the layout of the cut list takes for one part; what is left beside it is an offcut. A space stands where nothing is known: no price is invented."),
            Fine: true);
        return [table, remark, .. PerPart(context, lines), .. Hazards(context)];
    }

    // The language has no word for the share of parts that come out good, so each counts as good; the paper says so.
    private static IEnumerable<Block> PerPart(PaperContext context, ImmutableArray<TakeoffLine> lines)
    {
        var (costs, without) = JobTakeoff.Total(lines);
        if (costs is not [var cost])
        {
            yield break;
        }

        var parts = context.Parts;
        var each = QuantityText.Money(cost.Amount / parts, cost.Currency);
        yield return new Facts(
        [
            new(
                context.Wording.Say("Material of one good part"),
                without == 0
                    ? context.Wording.Say($"{each}, if every part comes out good (nobody stated a yield)")
                    : context.Wording.Say($"at least {each}, if every part comes out good (nobody stated a yield); {Words.Count(without, "line has", "lines have")} no price")),
        ]);
    }

    private static CellRow Line(PaperContext context, TakeoffLine line)
    {
        var text = context.Text;
        var price = line.Price is { } known
            ? new TextCell(QuantityText.PriceOf(known), known.On is { } day ? context.Wording.Say($"on {Numbers.Day(day)}") : null)
            : new TextCell("");
        var pack = JobTakeoff.PackOf(line);
        return new CellRow(
        [
            new TextCell((line.Material.Hazard is { Length: > 0 } ? "▲ " : "") + WrittenText.InTitle(line.LabelWithVolume), Beneath(context, line)),
            text.Amount(line.Net.Value).ToString(),
            QuantityText.Share(line.Waste.Value),
            text.Amount(line.Gross.Value).ToString(),
            pack is { } roll ? text.Amount(roll.Pack).ToString() : "",
            new TextCell(line.InStock is { } stock ? text.Amount(stock, Rounding.Down).ToString() : context.Wording.Say("not recorded"), Lots(context, line)),
            new TextCell(line.ToBuy is { } buy ? text.Amount(buy, Rounding.Up).ToString() : "", pack is { Packs: > 0 } packs ? Words.Count(packs.Packs, "pack", "packs") : null),
            price,
            line is { Cost: { } cost, Price: { } priced } ? QuantityText.Money(cost, priced.Currency) : "",
            TakeoffSums.MassOf(line) is { } mass ? text.About(mass).ToString() : "",
            "",
        ]);
    }

    private static string? Lots(PaperContext context, TakeoffLine line)
    {
        var lots = line.Shelf.Where(shelf => shelf.Lot is not null || shelf.Expires is not null)
            .Select(shelf => string.Join(", ", new[] { shelf.Lot, shelf.Expires is { } day ? Numbers.Day(day) : null }.OfType<string>())).ToList();

        // The shelf counts resin and hardener of a system together.
        if (line is { InStock: not null, Material: ResinSystem { Mix: not null }, Shelf.IsEmpty: false } && context.Plan.Takeoff.Count(other => ReferenceEquals(other.Material, line.Material)) > 1)
        {
            lots.Add(context.Wording.Say("its share of the kit, by the mix ratio"));
        }

        return lots.Count == 0 ? null : string.Join("; ", lots);
    }

    private static string? Beneath(PaperContext context, TakeoffLine line)
    {
        var name = line.Label == line.Material.Name ? null : line.Material.Name;
        var rests = context.RestsOn(line.Net.RestsOn, line.Waste.RestsOn, line.Gross.RestsOn);
        var roll = context.Plan.Nests.FirstOrDefault(nest => nest.Material.Name == line.Material.Name && line.Group is (TakeoffGroup.Reinforcement or TakeoffGroup.Bag));
        var off = roll?.LengthUsed is { } length ? context.Wording.Say($"off the roll {context.Text.Size(length.Value).Main}") : null;
        return new[] { name, off, rests }.OfType<string>().ToList() is { Count: > 0 } notes ? string.Join("; ", notes) : null;
    }

    private static CellRow Total(PaperContext context, ImmutableArray<TakeoffLine> lines)
    {
        var mass = UnitsNet.Mass.FromKilograms(lines.Sum(line => TakeoffSums.MassOf(line)?.Kilograms ?? 0));
        var (costs, without) = JobTakeoff.Total(lines);
        return SumRow(context, "Total", costs, without, mass, lines.Count(line => TakeoffSums.MassOf(line) is null));
    }

    private static CellRow SumRow(
        PaperContext context, string title, ImmutableArray<(string Currency, decimal Amount)> costs, int withoutPrice, UnitsNet.Mass mass, int withoutMass) => new(
        [
            new TextCell(Phrase.Strong(title), Without(withoutPrice, withoutMass)), "", "", "", "", "", "", "",
            string.Join(" + ", costs.Select(cost => QuantityText.Money(cost.Amount, cost.Currency))),
            mass.Grams > 0 ? context.Text.About(mass).ToString() : "",
            "",
        ],
        IsSum: true);

    private static string? Without(int price, int mass)
    {
        var missing = new[] { (Lines: price, What: "price"), (Lines: mass, What: "mass") }
            .Where(missing => missing.Lines > 0).Select(missing => $"{Words.Count(missing.Lines, "line", "lines")} without {missing.What}").ToList();
        return missing.Count == 0 ? null : string.Join(", ", missing);
    }

    private static IEnumerable<Block> Hazards(PaperContext context)
    {
        var hazards = Cautions.HazardLines(context.Plan);
        if (!hazards.IsEmpty)
        {
            yield return new Heading("Hazards named in the book");
            yield return new BulletList(hazards);
        }
    }

    private static ImmutableArray<Block> ResinBlocks(PaperContext context)
    {
        if (context.Plan.Resin is not { } resin)
        {
            return [new Paragraph("Not computed; the cover lists what is missing.")];
        }

        var text = context.Text;
        var rows = ImmutableArray.CreateBuilder<Row>();
        rows.AddRange(resin.Lines.Select(line => new CellRow(
            [Words.Of(line.Use), new TextCell(WrittenText.ForReading(line.Label), context.RestsOn(line.Mass.RestsOn)), text.About(line.Mass.Value).ToString()])));
        rows.Add(new CellRow(["Need", new TextCell("without spare", context.RestsOn(resin.Need.RestsOn)), text.About(resin.Need.Value).ToString()], IsSum: true));
        var planned = resin.PotsStated ? "as the recipe's pots say" : "need and spare";
        rows.Add(new CellRow(["To mix", new TextCell(planned, context.RestsOn(resin.ToMix.RestsOn)), text.About(resin.ToMix.Value).ToString()], IsSum: true));
        var ratio = resin.System.Mix is { } mix ? $", mixed {QuantityText.Written(mix)}" : "";
        return
        [
            new Table($"{Words.Of(resin.System, context.Wording)}{ratio}", [new("For", WidthMm: 45, NamesTheRow: true), new("What"), new("Mass", Align.Right, 45)], rows.ToImmutable()),
            .. Seam(context),
        ];
    }

    private static IEnumerable<Block> Seam(PaperContext context)
    {
        if (context.Plan.Join is { SameSession: false, TapeResin: { Value.Grams: > 0 } resin })
        {
            yield return new Paragraph($"And later, for the tape of the join: {With(context.Text.About(resin.Value).ToString(), context.RestsOn(resin.RestsOn))}.");
        }
    }
}
