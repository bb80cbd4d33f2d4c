using System.Collections.Immutable;
using Recipe.Documents.Bags;
using Recipe.Documents.Cures;
using Recipe.Documents.Cuts;
using Recipe.Documents.Layout;
using Recipe.Documents.LayUps;
using Recipe.Documents.Shapes;
using Recipe.Documents.Shared;
using Recipe.Documents.Travellers;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Previews;

/// <summary>The panels of the page that follows a recipe: the drawings and figures of the papers, without what is for hands and signatures.</summary>
internal static class PreviewPanels
{
    /// <summary>The panels that a part has use for: what is looked at first comes first, what it rests on last.</summary>
    public static ImmutableArray<PreviewPanel> Of(PaperInput input)
    {
        var context = new BenchContext(input);
        return
        [
            .. new[]
            {
                new PreviewPanel("stack", context.Say("The stack"), [.. Stack(context)]),
                new PreviewPanel("shape", context.Say("The shape"), [.. Shape(input)]),
                new PreviewPanel("clock", context.Say("The clock"), [.. Clock(context)]),
                new PreviewPanel("bag", context.Say("The bag, from the part outwards"), [.. Bag(context)]),
                new PreviewPanel("cure", context.Say("The cure"), [.. Cure(context)]),
                new PreviewPanel("pieces", context.Say("The pieces on the roll"), [.. Pieces(context)]),
                new PreviewPanel("assumed", Notes.Title, Notes.ForDesk(context.Paper).Blocks) { IsFolded = true },
            }.Where(panel => !panel.Blocks.IsEmpty),
        ];
    }

    private static IEnumerable<Block> Stack(BenchContext context)
    {
        if (StackSection.Draw(context) is { } section)
        {
            yield return section;
        }

        var lines = context.Plan.Stack;
        if (!lines.IsEmpty)
        {
            yield return new Table(
                context.IsWrapped ? context.Say("Line by line, the first lies on the mandrel") : context.Say("Line by line, the first lies on the mould"),
                [
                    new(context.Say("Ply"), Align.Centre), new(context.Say("What"), NamesTheRow: true), new(context.Say("Direction")),
                    new(context.Say("Thickness"), Align.Right), new(context.Say("Dry"), Align.Right), new(context.Say("Resin"), Align.Right),
                ],
                [.. lines.Select(line => Line(context, line))]);
        }
    }

    private static CellRow Line(BenchContext context, StackPlan line)
    {
        var text = context.Text;
        return new CellRow(
        [
            line.Item is PlyItem ? new RingCell(StackNames.Number(context.Plan, line)) : StackNames.Number(context.Plan, line),
            new TextCell(Phrase.Strong(line.Item.Name), Words.Of(StackNames.MaterialOf(line.Item))),
            line.Item is PlyItem { Orientation: { } orientation } ? new DirectionCell([new Direction(orientation.Value)]) : "",
            line.Thickness is { } thick ? text.Thickness(thick.Value).Main : "",
            line.NetMass is { } dry ? text.Weight(dry.Value).Main : "",
            line.NetResin is { } resin ? text.Weight(resin.Value).Main : "",
        ]);
    }

    private static IEnumerable<Block> Shape(PaperInput input) => ShapePaper.Applies(input)
        ? ShapePaper.Build(input).Stations.SelectMany((station, i) => i == 0 ? station.Blocks : [new Heading(station.Title), .. station.Blocks])
        : [];

    private static IEnumerable<Block> Pieces(BenchContext context) => CutRow.Of(context.Paper)
        .Where(row => row.Line is not null)
        .GroupBy(row => row.Nest)
        .SelectMany(roll => RollPage.Of(context.Paper, roll.Key, [.. roll], drawsAll: true));

    private static IEnumerable<Block> Clock(BenchContext context) =>
        [.. ClockDrawing.Draw(context) is { } drawing ? [drawing] : ImmutableArray<Block>.Empty, .. StartStation.Clock(context)];

    private static IEnumerable<Block> Bag(BenchContext context) => context.Part.Bag is null
        ? []
        : BagStation.Stations(context).SelectMany(station => station.Blocks).Where(block => block is Drawing or KeyNumbers or Table);

    private static IEnumerable<Block> Cure(BenchContext context) => context.Plan.Cure is not { Steps.IsEmpty: false }
        ? []
        : [.. CureStation.Stations(context).First().Blocks.Where(block => block is Drawing or Table), .. CureStation.Outline(context)];
}
