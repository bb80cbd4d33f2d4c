using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Mixing;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Labels;

/// <summary>One label.</summary>
/// <param name="Head">What it goes on: "Pot 1 of 2".</param>
/// <param name="Lines">What stands under it.</param>
/// <param name="Code">The text of its code.</param>
internal sealed record Label(string Head, ImmutableArray<string> Lines, string Code);

/// <summary>Labels to cut out and stick on: part, kit box, pots with their witness cups, offcuts.</summary>
internal static class LabelsPaper
{
    private const double LabelWidth = 88;
    private const double LabelHeight = 44;
    private const double Gap = 4;
    private const double Code = 36;
    private const int MostOfOne = 80;
    private const int Across = 2;
    private const int Down = 4;

    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        var say = context.Wording;
        var labels = Of(context);
        return new Document
        {
            Kind = "Labels",
            Identity = context.Identity(ofOneBuild: true),
            Paper = context.Paper,
            ForTheBench = false,
            Stations =
            [
                .. labels.Chunk(Across * Down).Select((page, i) => new Station(
                    say.Say($"Labels, sheet {Numbers.Whole(i + 1)}"),
                    [Sheet(context, page, i + 1), .. i == 0 ? [new Paragraph(say.Say("Cut along the lines. The code says part, revision, serial and what the label is on."), Fine: true)] : ImmutableArray<Block>.Empty])),
                new Station(say.Say("What the codes say"),
                [
                    new Table(
                        say.Say("Text of each code"), [new(say.Say("Label"), WidthMm: 60, NamesTheRow: true), new(say.Say("Text"))],
                        [.. labels.Select(label => new CellRow([label.Head, label.Code]))]),
                ]),
            ],
        };
    }

    /// <summary>All labels, in the order of the work.</summary>
    public static ImmutableArray<Label> Of(PaperContext context)
    {
        var (say, part) = (context.Wording, context.Part);
        var labels = ImmutableArray.CreateBuilder<Label>();
        Add(say.Say("Part"), "part", []);
        if (!part.IsAssembly)
        {
            Add(say.Say("Kit box"), "kit", [say.Say("weighs ____________")]);
        }

        foreach (var run in MixRun.Of(context))
        {
            foreach (var pot in run.Pots)
            {
                var number = $"{Numbers.Whole(pot.Number)} of {Numbers.Whole(run.Pots.Length)}";
                Add(say.Say($"{run.Name} {number}"), $"{run.Name} {number}", [Words.Of((Material)run.System), say.Say("mixed ______  dead ______")]);
                Add(say.Say("Witness cup"), $"witness {run.Name} {number}", [$"{run.Name} {number}", KeepUntil(context, run)]);
            }
        }

        foreach (var cloth in part.Stack.OfType<PlyItem>().Select(ply => ply.Material).DistinctBy(material => material.Name))
        {
            Add(say.Say("Offcut"), "offcut " + cloth.Name, [Words.Of(cloth), say.Say("lot ____________")]);
        }

        return labels.ToImmutable();

        void Add(string head, string what, ImmutableArray<string> lines)
        {
            var serial = context.Input.Serial is { } known ? known : "________";
            ImmutableArray<string> all = [part.Label, .. lines, say.Say($"revision {context.Input.Revision ?? "-"}"), say.Say($"serial {serial}")];
            labels.Add(new Label(head, all, Payload(context, what)));
        }
    }

    // The cup of what is mixed for a join of cured parts tells when the clamps may come off; all others when the part may leave its mould.
    private static string KeepUntil(PaperContext context, MixRun run) =>
        run.Own is { Use: not OwnMixUse.Coat } && context.Part.Join?.Manner?.Value != JoinManner.WetInWet ? context.Wording.Say("keep until the join is unclamped") : context.Wording.Say("keep until H7");

    // Lines of "key: value", so that a person who reads the code sees what it says and a program can split it.
    private static string Payload(PaperContext context, string what) => string.Join(
        "\n",
        new[]
        {
            $"part: {Short(context.Part.Name)}", $"revision: {Short(context.Input.Revision ?? "-")}", $"serial: {Short(context.Input.Serial ?? "-")}", $"on: {Short(what)}",
        });

    // What no telephone would read is no code.
    private static string Short(string text) => text.Length <= MostOfOne ? text : text[..MostOfOne];

    private static Drawing Sheet(PaperContext context, Label[] labels, int number)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        for (var i = 0; i < labels.Length; i++)
        {
            One(shapes, labels[i], i % Across * (LabelWidth + Gap), 0.5 + (i / Across * (LabelHeight + Gap)));
        }

        var rows = (labels.Length + Across - 1) / Across;
        return new Drawing(
            $"labels-{Numbers.Whole(number)}",
            context.Wording.Say("Labels"),
            context.Wording.Say($"{Numbers.Whole(labels.Length)} labels with a code each: {string.Join("; ", labels.Select(label => label.Head))}."),
            (Across * LabelWidth) + Gap,
            (rows * LabelHeight) + ((rows - 1) * Gap) + 1,
            shapes.ToImmutable());
    }

    private static void One(ImmutableArray<Shape>.Builder shapes, Label label, double x, double y)
    {
        shapes.Add(PathShape.Box(x + 0.25, y, LabelWidth - 0.5, LabelHeight, Pen.Thin));
        shapes.AddRange(QrCode.Draw(label.Code, x + LabelWidth - Code - 2, y + ((LabelHeight - Code) / 2), Code));
        var room = LabelWidth - Code - 5;
        shapes.Add(new TextShape(new Spot(x + 3, y + 8), Fitted.To(label.Head, 12, room, strong: true), 12, Strong: true));
        for (var i = 0; i < label.Lines.Length; i++)
        {
            shapes.Add(new TextShape(new Spot(x + 3, y + 15 + (i * 6)), Fitted.To(label.Lines[i], 9, room), 9));
        }
    }
}
