using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Recipe.Documents.Json;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Writing;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Units;

namespace Recipe.Documents;

/// <summary>What is left on the shelf, lot by lot, and what to buy for the next parts.</summary>
public static class ShelfReport
{
    /// <summary>The name and version of the JSON schema. A key is added within a version, never renamed or removed.</summary>
    public const string Schema = "recipe/shelf/1";

    private const int SoonDays = 60;

    /// <summary>As text for a terminal.</summary>
    public static string AsText(IReadOnlyList<ShelfLine> shelf, IReadOnlyList<ToBuyLine> buy, string forWhat, DateOnly today) => PlainWriter.Write(Document(shelf, buy, forWhat, today));

    /// <summary>As Markdown.</summary>
    public static string AsMarkdown(IReadOnlyList<ShelfLine> shelf, IReadOnlyList<ToBuyLine> buy, string forWhat, DateOnly today) => MarkdownWriter.Write(Document(shelf, buy, forWhat, today));

    /// <summary>For programs: SI units.</summary>
    public static string AsJson(IReadOnlyList<ShelfLine> shelf, IReadOnlyList<ToBuyLine> buy, DateOnly today) =>
        JsonSerializer.Serialize(ShelfCountRecord.Of(shelf, buy, today), JsonOutput.Shapes.ShelfCountRecord) + "\n";

    private static Document Document(IReadOnlyList<ShelfLine> shelf, IReadOnlyList<ToBuyLine> buy, string forWhat, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(buy);
        var stations = ImmutableArray.CreateBuilder<Station>();
        stations.Add(new Station("On the shelf", [shelf.Count == 0 ? new Paragraph("Nothing is written down.") : Shelf(shelf, today)]));
        if (buy.Count > 0)
        {
            stations.Add(new Station($"For {forWhat}", [Buying(buy)]));
        }

        return new Document
        {
            Kind = "Shelf",
            Identity = new Identity("the shelf", "all", null, today, "stock and build records", OfOneBuild: false),
            Paper = PaperSize.A4,
            Landscape = true,
            ForTheBench = false,
            Stations = stations.ToImmutable(),
        };
    }

    private static Table Shelf(IReadOnlyList<ShelfLine> shelf, DateOnly today) => new(
        "",
        [new("Material", NamesTheRow: true), new("Lot"), new("Written down", Align.Right), new("Counted"), new("Used", Align.Right), new("Left", Align.Right), new("Opened"), new("Expires"), new("Mind")],
        [
            .. shelf.Select(line => new CellRow(
            [
                line.Line.Material,
                line.Line.Lot ?? "",
                line.Line.Written,
                Day(line.Line.Counted ?? line.Line.Received ?? line.Line.Opened),
                line.Used > 0 ? Amount(line, line.Used) : "",
                line.Left is { } left ? Amount(line, left) : "",
                Day(line.Line.Opened),
                Day(line.Line.Expires),
                string.Join("; ", Mind(line, today)),
            ])),
        ]);

    private static IEnumerable<string> Mind(ShelfLine line, DateOnly today)
    {
        if (line.IsExpired(today))
        {
            yield return "expired";
        }
        else if (line.Line.Expires is { } end && end.DayNumber - today.DayNumber <= SoonDays)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"expires in {end.DayNumber - today.DayNumber} d");
        }

        if (line.Left is 0)
        {
            yield return "used up";
        }

        if (line.NotCompared > 0)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{line.NotCompared} of {line.Taken} uses cannot be taken off: no amount, or another unit");
        }
    }

    private static Table Buying(IReadOnlyList<ToBuyLine> buy) => new(
        "",
        [new("Material", NamesTheRow: true), new("Needed with waste", Align.Right), new("On the shelf", Align.Right), new("Buy", Align.Right)],
        [
            .. buy.Select(line => new CellRow(
            [
                line.Need.LabelWithVolume,
                Amount(line, line.Gross),
                line.InStock is { } left ? Amount(line, left) : "not known",
                line.Buy > 0 ? Phrase.Strong(Amount(line, line.Buy)) : "-",
            ])),
        ]);

    private static string Amount(ToBuyLine line, double si) => line.Need.Gross.Value.Unit is { } unit ? $"{Numbers.Significant(unit.FromSi(si), 3)} {unit.Symbol}" : Numbers.Significant(si, 3);

    /// <summary>An amount in the unit in which the shelf's own was written.</summary>
    private static string Amount(ShelfLine line, double si)
    {
        var written = line.Line.Written.TrimStart("0123456789.,/ ()".ToCharArray());
        return UnitTable.TryParse(written, out var unit) && unit.Dimension == line.Line.Amount?.Dimension ? $"{Numbers.Significant(unit.FromSi(si), 3)} {unit.Symbol}" : Numbers.Significant(si, 3);
    }

    private static string Day(DateOnly? day) => day is { } known ? Numbers.Day(known) : "";
}
