using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Changes;

/// <summary>The change note: what is different from the version built before, what to expect of it, and what to watch.</summary>
internal static class ChangeNotePaper
{
    public static Document Build(PaperInput input)
    {
        var context = new PaperContext(input);
        return new Document
        {
            Kind = context.Wording.Say("Change note"),
            Identity = context.Identity(ofOneBuild: false),
            Paper = context.Paper,
            ForTheBench = true,
            Stations = [new Station(context.Wording.Say("What is different"), [.. Blocks(context)])],
        };
    }

    private static IEnumerable<Block> Blocks(PaperContext context)
    {
        var say = context.Wording;
        if (context.Input.Earlier is not { } earlier)
        {
            yield return new Paragraph(say.Say("There is no earlier version to compare with."));
            yield break;
        }

        var (before, after) = (earlier.Input.Plan, context.Plan);
        yield return new Facts(
        [
            new(say.Say("Before"), $"{earlier.Name}{(earlier.Input.Revision is { } old ? $", {say.Say($"revision {old}")}" : "")}"),
            new(say.Say("Now"), context.Input.Revision is { } revision ? say.Say($"revision {revision}") : say.Say("no revision")),
        ]);
        var stack = PartChanges.OfStack(before, after);
        var thing = WrittenChange.ThingOf(after.Part);
        var own = PartChanges.OfLines(earlier.Changes, thing, withoutPlies: !stack.IsEmpty);
        var other = PartChanges.OfLines(earlier.Changes.Where(change => change.Thing != thing && IsForThePart(change, context)), null, withoutPlies: false);
        ImmutableArray<ChangeRow> rows = [.. stack, .. own, .. other];
        if (rows.IsEmpty)
        {
            yield return new Paragraph(say.Say("Nothing that this part rests on was written differently."));
        }

        foreach (var block in ChangeBlocks.Lines(rows, say.Say("Was and now"), new Column(say.Say("Why"), WidthMm: 44), _ => new Blank("why")))
        {
            yield return block;
        }

        foreach (var block in ChangeBlocks.Effect(PartChanges.OfFigures(before, after, context.Text), say.Say("What to expect")))
        {
            yield return block;
        }

        var findings = PartChanges.OfFindings(earlier.Input.Findings, context.Input.Findings).Where(row => row.Mark != ChangeMark.Removed).ToImmutableArray();
        if (!findings.IsEmpty)
        {
            yield return new Caution(say.Say("Watch"), [.. findings.Select(row => (Phrase)$"{row.What}: {row.Now}")]);
        }

        yield return new TickList([say.Say("First-off: weigh, measure and tap the whole part before the next is laid")]);
        yield return new Facts(
        [
            new(say.Say("Decided by"), Phrase.Empty, new Blank("name and date")),
            new(say.Say("Told to"), Phrase.Empty, new Blank("names")),
        ]);
        if (!stack.IsEmpty && StacksDrawing.Of(before, after) is { } drawing)
        {
            yield return drawing;
        }
    }

    // Another part or mould is none of its business unless it is named by it.
    private static bool IsForThePart(WrittenChange change, PaperContext context)
    {
        var words = change.Thing.Split(' ');
        return words is not [var kind, var name] || kind is not ("part" or "variant" or "mould" or "pattern" or "build")
            || name == context.Part.Mould?.Name || name == context.Part.VariantOf;
    }
}
