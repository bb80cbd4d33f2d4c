using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Records;

/// <summary>The build record: what came out, where its faults are, what was decided and what changes next time.</summary>
internal static class RecordPaper
{
    private const int Lines = 4;

    public static Document Build(PaperInput input)
    {
        var bench = new BenchContext(input);
        var context = bench.Paper;
        var say = context.Wording;
        return new Document
        {
            Kind = "Build record",
            OnePlace = true,
            Identity = context.Identity(ofOneBuild: true),
            Paper = context.Paper,
            ForTheBench = true,
            Stations =
            [
                new Station(say.Say("Weigh and measure"), [Measured(context), .. Basis(context), Signed(context), Ifs(context)]),
                new Station(say.Say("Tap and look"),
                [
                    context.Tube is { } tube ? TubeMap.Of(context, tube) : PartMap.Of(context, bench.Sides),
                    new TickList(
                    [
                        .. Ends(context),
                        say.Say("Tap all over with a coin. Ring every dull spot."),
                        Cautions.Carbon(context.Plan) ? say.Say("Turn it under a low lamp: no light goes through carbon. Cross every dry or white spot.") : say.Say("Hold it to the light. Cross every pale spot."),
                        say.Say("Beside each mark write its code and size."),
                        context.Tube is null ? say.Say("Name the place: hour, then distance from the rim.") : say.Say("Name the place: hour, then distance from end A."),
                    ]),
                    CodeTable(context),
                    new IfBox(
                    [
                        new(say.Say("A spot sounds dull"), say.Say("VD or DL; ring it, measure it, do not press it")),
                        new(say.Say("You are not sure"), say.Say("mark it all the same; let another look")),
                        new(say.Say("The same fault came before"), say.Say("write the serials beside it; tell the planner")),
                    ]),
                ]),
                new Station(say.Say("Decide and learn"),
                [
                    Found(context), Causes(context), Decision(context),
                    new IfBox(
                    [
                        new(say.Say("Nobody knows the cause"), say.Say("write unknown; a guess goes under guessed")),
                        new(say.Say("It carries load or flies"), say.Say("no repair without licensed practice")),
                        new(say.Say("The recipe must change"), say.Say("change the text first, then print anew")),
                    ]),
                ]),
            ],
        };
    }

    private static Table Measured(PaperContext context)
    {
        var (say, text, plan) = (context.Wording, context.Text, context.Plan);
        var rows = new List<Row> { context.StaysOn ? Row(say.Say("Mass before it was laid"), "", text.ScaleUnit) : Row(say.Say("Mass before trimming"), "", text.ScaleUnit) };
        var (wanted, expects, unknown) = context.StaysOn
            ? (say.Say("Mass it adds, target"), say.Say("Mass it adds, expected"), say.Say("Mass it adds"))
            : (say.Say("Mass trimmed, target"), say.Say("Mass trimmed, expected"), say.Say("Mass trimmed"));
        if (context.Part.TargetMass is { } target)
        {
            var band = context.Part.TargetTolerance is { } tolerance
                ? say.Say($"{text.Weight(target.Value - tolerance.Value, Rounding.Up).Main} to {text.Weight(target.Value + tolerance.Value, Rounding.Down).Main}")
                : null;
            rows.Add(Row(wanted, new BigCell(text.AboutOnScale(target.Value).Main, band), text.ScaleUnit));
        }

        if (plan.TrimmedMass is { Value: var mass } figure)
        {
            var expected = new BigCell(text.AboutOnScale(mass.Value).Main, Rests(context, say.Say($"{text.AboutOnScale(mass.Low).Main} to {text.AboutOnScale(mass.High).Main}"), figure.RestsOn));
            rows.Add(context.Part.TargetMass is null ? Row(expects, expected, text.ScaleUnit) : new CellRow([expects, expected, say.Say("the same weighing")]));
        }
        else
        {
            rows.Add(Row(unknown, say.Say("no target known"), text.ScaleUnit));
        }

        if (context.Thickness is { } thickness)
        {
            rows.AddRange(Enumerable.Range(1, 3).Select(mark => Row(
                say.Say($"Thickness at mark {Numbers.Whole(mark)}"), mark == 1 ? new BigCell(text.Thickness(thickness.Value).Main, Rests(context, say.Say("full stack"), thickness.RestsOn)) : (Cell)"", text.ThicknessUnit)));
        }

        rows.AddRange(Content(context));
        rows.AddRange(Sizes(context));
        rows.Add(Row(say.Say("Pinholes in the worst 10 by 10\u00A0cm"), say.Say("count in one dm²"), say.Say("in 1 dm²")));
        rows.Add(Row(say.Say("Finish: A show, B paint, C hidden"), "", ""));
        return new Table(
            "", [new(say.Say("Measure"), NamesTheRow: true), new(say.Say("Target, band"), WidthMm: 56), new(say.Say("Actual"), WidthMm: 42)], [.. rows], TableUse.Steps);
    }

    // Across a tube it is the outside that can be reached: the mandrel and the wall on both sides of it.
    private static IEnumerable<CellRow> Sizes(PaperContext context)
    {
        var (say, text, plan) = (context.Wording, context.Text, context.Plan);
        if (context.Tube is not { } tube)
        {
            yield return Row(context.IsWrapped ? say.Say("Length, and size across outside") : say.Say("Length by width at the trim line"), "", text.ThicknessUnit);
            yield break;
        }

        var length = plan.Geometry!.Shape is ConeShape cone ? cone.Length : plan.Geometry.DevelopedLength;
        yield return Row(say.Say("Length, trimmed"), new BigCell(text.Size(length).Main, say.Say("between the trim lines")), text.ThicknessUnit);
        var mandrels = tube.Taper == 0 ? [tube.A] : new[] { tube.A, tube.B };
        var round = string.Join(", ", mandrels.Select(mandrel => text.Thickness(mandrel).Main));
        var note = say.Say($"mandrel {round} and twice the wall");
        yield return Row(
            mandrels.Length == 1 ? say.Say("Outside diameter, beside the laps") : say.Say("Outside diameter at A and at B"),
            plan.Laminate is { Thickness: var wall }
                ? new BigCell(string.Join(", ", mandrels.Select(mandrel => text.Thickness(Length.FromMillimeters(Math.Round((mandrel + (2 * wall.Value)).Millimeters, 1))).Main)), Rests(context, note, wall.RestsOn))
                : (Cell)note,
            text.ThicknessUnit);
    }

    // Which end is which, and where the clock begins: a tube has no rim to count from.
    private static IEnumerable<Phrase> Ends(PaperContext context)
    {
        if (context.Tube is { } tube)
        {
            var say = context.Wording;
            yield return tube.Taper switch
            {
                0 => say.Say("Write A on one end, B on the other."),
                > 0 => say.Say("Write A on the wide end, B on the thin one."),
                _ => say.Say("Write A on the thin end, B on the wide one."),
            };
            yield return say.Say("12 is the lap of the last ply. Hours run clockwise, looking at A.");
        }
    }

    private static CellRow Row(string what, Cell target, string unit) => new([what, target, new Blank(what, unit)]);

    private static string Rests(PaperContext context, string note, ImmutableArray<string> keys) => context.RestsOn(keys) is { } rests ? context.Wording.Say($"{note}; {rests}") : note;

    // What is neither fibre nor its resin is taken off first, so that the share is the one that the plan states.
    private static IEnumerable<Row> Content(PaperContext context)
    {
        if (context.Laminate is not { } laminate)
        {
            yield break;
        }

        var (say, text) = (context.Wording, context.Text);
        var other = PlannedFiguresOf.Plan(context.Plan).Other ?? Mass.Zero;
        yield return new CellRow(
        [
            say.Say("L, the laminate alone"),
            text.OnScale(other).Grams > 0 ? say.Say($"trimmed mass less {text.Weight(other).Main} of coats, core with the resin in its faces, inserts, join") : say.Say("is the trimmed mass"),
            new Blank(say.Say("L"), text.ScaleUnit),
        ]);
        yield return new CellRow(
        [
            say.Say($"Resin share: (L less {text.Weight(laminate.Fibre.Value).Main} of fibre) divided by L"),
            new BigCell(QuantityText.Share(Math.Round(laminate.ResinFraction.Value, 2)), say.Say("planned")),
            new Blank(say.Say("resin share"), "%"),
        ]);
    }

    private static IEnumerable<Block> Basis(PaperContext context)
    {
        if (context.Laminate is { } laminate && context.RestsOn(laminate.ResinFraction.RestsOn, laminate.Fibre.RestsOn) is { } rests)
        {
            yield return new Paragraph(
                context.Tube is null ? context.Wording.Say($"Planned share and fibre inside the trim line: {rests}.") : context.Wording.Say($"Planned share and fibre between the trim lines: {rests}."),
                Fine: true);
        }
    }

    private static Paragraph Signed(PaperContext context) => new(context.Wording.Say("Wait 10\u00A0min before you inspect your own work. H8 and H9 are signed on the traveller."));

    private static IfBox Ifs(PaperContext context) => new(
    [
        new(context.Wording.Say("It is heavier than its band"), Heavy(context)),
        new(context.Wording.Say("It is lighter than its band"), context.Wording.Say("LT; look for dry spots and a missing ply")),
        new(context.Wording.Say("A fingernail marks it"), context.Wording.Say("SO; back to the warmth; test the witness cup")),
    ]);

    /// <summary>What is asked of a part that is too heavy: what carries its resin off, or what should have held it back.</summary>
    private static string Heavy(PaperContext context)
    {
        var (part, say) = (context.Plan.Part, context.Wording);
        return part.Process.Value == Process.Infused ? say.Say("HV; look for pools; was the feed clamped in time?")
            : part.Bag?.Layers.Any(layer => layer.Class == LayerClass.ReleaseFilm) == true ? say.Say("HV; look for pools; was the film perforated?")
            : part.Process.Value == Process.Prepreg ? say.Say("HV; look for pools; was it the prepreg that was planned?")
            : say.Say("HV; look for pools; was the resin of each ply weighed?");
    }

    private static Table CodeTable(PaperContext context) => new(
        context.Wording.Say("Codes"),
        [.. Enumerable.Range(0, 3).SelectMany(_ => new Column[] { new(context.Wording.Say("Code"), Align.Centre, 14), new(context.Wording.Say("Fault")) })],
        [.. DefectCodes.All.Chunk(3).Select(three => new CellRow([.. three.SelectMany(code => new Cell[] { Phrase.Strong(code.Code), context.Wording.Say(code.Meaning) })]))]);

    private static Table Found(PaperContext context)
    {
        var say = context.Wording;
        return new Table(
            say.Say("Faults found"),
            [new(say.Say("No."), Align.Centre, 12), new(say.Say("Code"), WidthMm: 41), new(context.Tube is null ? say.Say("Hour, distance from rim") : say.Say("Hour, distance from A")), new(say.Say("Size"), WidthMm: 41), new(say.Say("Use, repair, scrap"), WidthMm: 41)],
            [.. Numbered(i => [new Blank(say.Say($"code of fault {i}")), new Blank(say.Say("place")), new Blank(say.Say("size")), new Blank(say.Say("use, repair or scrap"))])],
            TableUse.Steps);
    }

    private static Table Causes(PaperContext context)
    {
        var say = context.Wording;
        return new Table(
            say.Say("Why, and what changes"),
            [new(say.Say("No."), Align.Centre, 12), new(say.Say("Cause guessed")), new(say.Say("Cause confirmed by"), WidthMm: 56), new(say.Say("Do next time"), WidthMm: 56)],
            [.. Numbered(i => [new Blank(say.Say($"cause of fault {i}")), new Blank(say.Say("what confirmed it")), new Blank(say.Say("action"))])],
            TableUse.Steps);
    }

    private static IEnumerable<CellRow> Numbered(Func<string, ImmutableArray<Cell>> cells) =>
        Enumerable.Range(1, Lines).Select(i => new CellRow([Numbers.Whole(i), .. cells(Numbers.Whole(i))]));

    private static Facts Decision(PaperContext context)
    {
        var say = context.Wording;
        return new Facts(
        [
            new(say.Say("Next revision"), Phrase.Empty, new Blank(say.Say("next revision"))),
            new(say.Say("Who changes it"), Phrase.Empty, new Blank(say.Say("who changes the recipe"))),
            new(say.Say("Photos"), Phrase.Empty, new Blank(say.Say("photo numbers"))),
            new(say.Say("Goes to"), Phrase.Empty, new Blank(say.Say("customer, store or scrap"))),
        ]);
    }
}
