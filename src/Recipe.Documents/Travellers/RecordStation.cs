using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Travellers;

/// <summary>What differed, what was accepted, and which lots were used.</summary>
internal static class RecordStation
{
    private const int DeviationLines = 5;

    public static Station Build(TravellerContext context) => new("Record", [Deviations(), .. Waivers(context), Lots(context)]);

    private static Table Deviations() => new(
        "Deviations: whatever was not done as written",
        [new("What", WidthMm: 76), new("Why"), new("Who decided", WidthMm: 34)],
        [.. Enumerable.Range(0, DeviationLines).Select(_ => new CellRow([new Blank("what was done otherwise"), new Blank("why"), new Blank("who decided")]))],
        TableUse.Steps);

    private static IEnumerable<Block> Waivers(TravellerContext context)
    {
        var lines = Notes.WaiverLines(context.Paper);
        yield return lines.IsEmpty ? new Paragraph("Waivers: none.") : new BulletList(lines);
    }

    private static Table Lots(TravellerContext context) => new(
        "Lots: from the label of the tin or roll",
        [new("Material", NamesTheRow: true), new("Lot", WidthMm: 42), new("Use before", WidthMm: 36), new("Opened on", WidthMm: 36)],
        [.. Materials(context).Select(label => new CellRow([label, new Blank("lot"), new Blank("use before"), new Blank("opened on")]))],
        TableUse.Steps);

    // What stays in the part or decides about it: cloth, core, every liquid. Without a takeoff, what the recipe names.
    private static ImmutableArray<string> Materials(TravellerContext context)
    {
        var counted = context.Plan.Takeoff.Where(line => line.Group is not (Planning.TakeoffGroup.Bag or Planning.TakeoffGroup.Insert)).Select(line => line.Label);
        var named = context.Part.Stack.Select(item => StackNames.MaterialOf(item).Label).Append(context.Part.Resin?.Label);
        var labels = context.Plan.Takeoff.IsEmpty ? named.OfType<string>() : counted;
        return [.. labels.Distinct(StringComparer.Ordinal)];
    }
}
