using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Travellers;

/// <summary>Defects and the decision, to H9; what is still done to a good part; what differed and what was accepted.</summary>
internal static class RecordStation
{
    private const int DefectLines = 3;
    private const int DeviationLines = 5;

    /// <summary>Defects that can be counted over many parts; common words of the trade, two letters each.</summary>
    private static readonly ImmutableArray<(string Code, string Meaning)> Defects =
    [
        ("DR", "dry"), ("BR", "bridge"), ("VD", "void"), ("PH", "pinholes"), ("RR", "resin-rich"), ("WR", "wrinkle"), ("PP", "print-through"), ("ST", "stuck or torn"), ("SO", "soft"),
        ("WP", "warp"), ("DL", "delaminated"), ("MS", "ply missing"), ("CN", "contaminated"), ("EX", "exotherm"), ("LK", "vacuum lost"), ("TR", "trim error"), ("HV", "heavy"), ("LT", "light"),
    ];

    public static Station Build(TravellerContext context, FinishOrder order) => new(
        "Decide and record",
        [DefectTable(), Codes(), Decision(), .. After(order), Deviations(), .. Waivers(context)]);

    private static Table DefectTable() => new(
        "Defects found",
        [new("Code", WidthMm: 41), new("Where, how large"), new("Cause"), new("Use, repair, scrap", WidthMm: 41)],
        [.. Enumerable.Range(0, DefectLines).Select(_ => new CellRow([new Blank("defect code"), new Blank("place and size"), new Blank("cause"), new Blank("use, repair or scrap")]))],
        TableUse.Steps);

    private static Paragraph Codes() => new("Codes: " + string.Join(", ", Defects.Select(defect => $"{defect.Code}\u00A0{defect.Meaning}")) + ".", Fine: true);

    private static HoldPoint Decision() => new(
        "H9", "decided: use, repair or scrap", [], [new Blank("Decision"), new Blank("Laminator"), new Blank("Checked by"), new Blank("Photos")]);

    private static IEnumerable<Block> After(FinishOrder order)
    {
        var lines = order.AfterInspection.Where(line => line.Verb != "inspect").Select((line, i) => (Phrase)$"{Numbers.Whole(i + 1)}. {FinishStation.Sentence(line)}").ToImmutableArray();
        if (!lines.IsEmpty)
        {
            yield return new Heading("After H9, in this order");
            yield return new TickList(lines);
        }
    }

    private static Table Deviations() => new(
        "Deviations: whatever was not done as written",
        [new("What"), new("Why", WidthMm: 56), new("Who decided", WidthMm: 41)],
        [.. Enumerable.Range(0, DeviationLines).Select(_ => new CellRow([new Blank("what was done otherwise"), new Blank("why"), new Blank("who decided")]))],
        TableUse.Steps);

    private static IEnumerable<Block> Waivers(TravellerContext context)
    {
        var lines = Notes.WaiverLines(context.Paper);
        yield return lines.IsEmpty ? new Paragraph("Waivers: none.") : new BulletList(lines);
    }
}
