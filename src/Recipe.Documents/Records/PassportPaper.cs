using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Records;

/// <summary>The passport of the mould: what it is, how it is released, what it stands, and what was done to it pull by pull.</summary>
internal static class PassportPaper
{
    private const int PullLines = 10;

    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        var say = context.Wording;
        return new Document
        {
            Kind = "Mould passport",
            OnePlace = true,
            Identity = context.Identity(ofOneBuild: false),
            Paper = context.Paper,
            ForTheBench = true,
            Stations = context.Part.Mould is { } mould
                ?
                [
                    new Station(context.IsWrapped ? say.Say("The mandrel") : say.Say("The mould"), [Facts(context, mould), Release(context, mould), context.IsWrapped ? MandrelDrawing.Of(context, mould) : TapeLandDrawing.Of(context, mould), Ifs(context)]),
                    new Station(say.Say("Pull by pull"), [Pulls(context), Marks(context), Ifs(context)]),
                ]
                : [new Station(say.Say("The mould"), [new Paragraph(say.Say("The recipe names no mould. Name it: mould, then its block."))])],
        };
    }

    private static Facts Facts(PaperContext context, Mould mould)
    {
        var (say, text) = (context.Wording, context.Text);
        var facts = ImmutableArray.CreateBuilder<Fact>();
        Add(context.IsWrapped ? say.Say("Mandrel") : say.Say("Mould"), mould.Label == mould.Name ? mould.Name : $"{mould.Label} ({mould.Name})");
        Add(say.Say("Made of"), mould.MadeOf is { } stuff ? Words.Of(stuff) : null);
        Add(say.Say("Made on"), mould.MadeOn is { } made ? Numbers.Day(made) : null);
        if (!context.IsWrapped || !mould.Halves.IsEmpty)
        {
            Add(say.Say("Halves"), mould.Halves.IsEmpty ? say.Say("one piece") : string.Join(", ", mould.Halves));
        }

        if (context.Tube is { } tube)
        {
            var (one, other) = (text.Thickness(tube.A).Main, text.Thickness(tube.B).Main);
            Add(say.Say("Diameter"), tube.Taper == 0 ? one : say.Say($"{one} to {other} at the trim lines"));
        }

        Add(say.Say("Heat limit"), mould.HeatLimit is { } limit ? text.Written(limit, value => text.Temperature(value)).ToString() : null);
        Add(say.Say("Post-cured"), mould.PostCured is { } cured ? (cured.Value ? say.Say("yes") : say.Say("no")) : null);
        Add(say.Say("State"), mould.State?.Value switch { MouldState.New => say.Say("new"), MouldState.Seasoned => say.Say("seasoned"), MouldState.Repaired => say.Say("repaired"), _ => null });
        Add(say.Say("Pulls so far"), mould.Pulls is { } pulls ? Numbers.Whole(pulls.Value) : null);
        Add(say.Say("Since release"), mould.PullsSinceRelease is { } since ? say.Say($"{Numbers.Whole(since.Value)} pulls") : null);
        if (!context.IsWrapped || mould.TestedOn is not null)
        {
            Add(say.Say("Held vacuum"), mould.TestedOn is { } tested ? Numbers.Day(tested) : null);
        }

        Add(say.Say("Face"), mould.Coating);
        Add(say.Say("Stored where"), null);
        return new Facts(facts.ToImmutable());

        void Add(string label, string? value) => facts.Add(value is null ? new Fact(label, Phrase.Empty, new Blank(label)) : new Fact(label, value));
    }

    private static Table Release(PaperContext context, Mould mould)
    {
        var say = context.Wording;
        return new Table(
            say.Say("Release, in this order"),
            [new(say.Say("Agent"), NamesTheRow: true), new(say.Say("Coats"), Align.Centre, 22), new(say.Say("Between, before lay-up"), WidthMm: 52), new(say.Say("Last put on"), WidthMm: 42)],
            mould.Release.IsEmpty
                ? [new CellRow([say.Say("The recipe names none."), "", "", new Blank(say.Say("release put on"))])]
                :
                [
                    .. mould.Release.Select(line => new CellRow(
                    [
                        line.On is { } half ? say.Say($"{Words.Of(line.Agent)}, on {half}") : Words.Of(line.Agent),
                        line.Coats is { } coats ? Numbers.Whole(coats.Value) : say.Say("not said"),
                        string.Join("; ", new[] { line.Wait is { } wait ? QuantityText.Span(wait.Value) : null, line.Dry is { } dry ? QuantityText.Span(dry.Value) : null }.OfType<string>()) is { Length: > 0 } times ? times : say.Say("data sheet"),
                        new Blank(say.Say("date")),
                    ])),
                ],
            TableUse.Steps);
    }

    private static IfBox Ifs(PaperContext context) => context.IsWrapped ? OfMandrel(context) : new(
    [
        new(context.Wording.Say("A part sticks"), context.Wording.Say("no force with steel; wedge, water, cool; write it below")),
        new(context.Wording.Say("The face is dull or scratched"), context.Wording.Say("repair, seal, release anew; set pulls to zero")),
        new(context.Wording.Say("The bare mould leaks"), context.Wording.Say("mark the spot on the drawing; seal it; test again")),
    ]);

    private static IfBox OfMandrel(PaperContext context) => new(
    [
        new(context.Wording.Say("A part sticks"), context.Wording.Say("chill the mandrel; push on the whole end with a ring, no lever; write it below")),
        new(context.Wording.Say("The face is dull or scratched"), context.Wording.Say("repair, seal, release anew; set pulls to zero")),
        new(context.Wording.Say("It is bent or dented"), context.Wording.Say("wrap nothing on it: the part would be locked on; write it below")),
    ]);

    private static Table Pulls(PaperContext context)
    {
        var say = context.Wording;
        return new Table(
            say.Say("One line a pull"),
            [new(say.Say("Date, serial"), WidthMm: 45), new(say.Say("Released with"), WidthMm: 45), new(say.Say("Came off")), new(say.Say("Cleaned with, repairs"), WidthMm: 50)],
            [.. Enumerable.Range(0, PullLines).Select(_ => new CellRow([new Blank(say.Say("date and serial")), new Blank(say.Say("release")), new Blank(say.Say("easily, or how")), new Blank(say.Say("cleaned with, repairs"))]))],
            TableUse.Steps);
    }

    private static Facts Marks(PaperContext context)
    {
        var say = context.Wording;
        if (context.IsWrapped)
        {
            return new Facts(
            [
                new(say.Say("Dents, scratches"), Phrase.Empty, new Blank(say.Say("dents and scratches"))),
                new(say.Say("Cleaned with"), Phrase.Empty, new Blank(say.Say("what it was last cleaned with"))),
                new(say.Say("Next check"), Phrase.Empty, new Blank(say.Say("date of the next check"))),
                new(say.Say("Keeper"), Phrase.Empty, new Blank(say.Say("who keeps the mandrel"))),
            ]);
        }

        return new Facts(
        [
            new(say.Say("Leak spots"), Phrase.Empty, new Blank(say.Say("known leak spots"))),
            new(say.Say("Cleaned with"), Phrase.Empty, new Blank(say.Say("what it was last cleaned with"))),
            new(say.Say("Next check"), Phrase.Empty, new Blank(say.Say("date of the next vacuum test"))),
            new(say.Say("Keeper"), Phrase.Empty, new Blank(say.Say("who keeps the mould"))),
        ]);
    }
}
