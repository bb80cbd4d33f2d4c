using System.Collections.Immutable;
using Recipe.Documents.Cures;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Documents.Takeoffs;
using Recipe.Documents.Travellers;
using Recipe.Documents.Writing;

namespace Recipe.Documents;

/// <summary>
/// What the plan says of a part, to read on a screen: mass, stiffness and what each line brings, the clock, the cure, and what all of it
/// rests on. It has no boxes to write in and is no paper for the bench.
/// </summary>
public static class PartSummary
{
    /// <summary>Writes it as Markdown; lines end with LF.</summary>
    public static string Write(PaperInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var bench = new BenchContext(input);
        var context = bench.Paper;
        return MarkdownWriter.Write(new Document
        {
            Kind = "Part",
            Identity = context.Identity(ofOneBuild: false),
            Paper = context.Paper,
            ForTheBench = false,
            Stations =
            [
                new Station("The part", TakeoffPaper.PartBlocks(context)),
                .. StiffnessBlocks.Of(context),
                .. Station("The clock", StartStation.Clock(bench)),
                .. Station("The cure", CureStation.Outline(bench)),
                Notes.ForDesk(context),
            ],
        });
    }

    private static ImmutableArray<Station> Station(string title, IEnumerable<Block> blocks)
    {
        ImmutableArray<Block> all = [.. blocks];
        return all.IsEmpty ? [] : [new Station(title, all)];
    }
}
