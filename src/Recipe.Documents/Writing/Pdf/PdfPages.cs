using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Model;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>A page of a paper.</summary>
/// <param name="Shapes">Everything on it, mm from its upper left corner.</param>
/// <param name="Station">The station that it belongs to: the one that it begins with, or the last before.</param>
internal sealed record PdfPage(IReadOnlyList<Shape> Shapes, int Station);

/// <summary>A paper laid on pages.</summary>
/// <param name="Document">The paper.</param>
/// <param name="WidthMm">Width of a page.</param>
/// <param name="HeightMm">Height of a page.</param>
/// <param name="Pages">The pages.</param>
/// <param name="Starts">The page on which each station begins, from 0.</param>
internal sealed record PdfPaper(Document Document, double WidthMm, double HeightMm, IReadOnlyList<PdfPage> Pages, IReadOnlyList<int> Starts);

/// <summary>Lays a paper on pages: room for holes on the left, a head on each page of the bench, a foot on every page.</summary>
internal static class PdfPages
{
    public const double Left = 20;
    public const double Right = 10;
    public const double Top = 7;
    public const double Bottom = 12;

    // Tried in this order until a station needs no page more than at the tightest.
    private static readonly double[] Airs = [1, 0.7, 0.4, 0.1];

    public static PdfPaper Of(Document document)
    {
        var (width, height) = SizeOf(document);
        var room = new Area(width - Left - Right, height - Top - Bottom);
        var (sheets, stations, starts) = document.ForTheBench ? Bench(document, room) : Desk(document, room);
        for (var i = 0; i < sheets.Count; i++)
        {
            PdfFoot.Draw(sheets[i], document, stations[i], Math.Max(stations[i], starts.LastIndexOf(i)), i + 1, sheets.Count, width, height);
        }

        return new PdfPaper(document, width, height, [.. sheets.Select((sheet, i) => new PdfPage(sheet.Shapes, stations[i]))], starts);
    }

    private readonly record struct Area(double Width, double Height);

    /// <summary>Width and height of a page, mm.</summary>
    internal static (double Width, double Height) SizeOf(Document document)
    {
        var (width, height) = document.Paper == PaperSize.Letter ? (215.9, 279.4) : (210.0, 297.0);
        return document.Landscape ? (height, width) : (width, height);
    }

    private static (List<Sheet> Sheets, List<int> Stations, List<int> Starts) Bench(Document document, Area room)
    {
        var (sheets, stations, starts) = (new List<Sheet>(), new List<int>(), new List<int>());
        for (var i = 0; i < document.Stations.Length; i++)
        {
            if (document.OnePlace && Shared(document, i, room) is var (sheet, last) && last > i)
            {
                starts.AddRange(Enumerable.Repeat(sheets.Count, last - i + 1));
                sheets.Add(sheet);
                stations.Add(i);
                i = last;
                continue;
            }

            List<Sheet>? best = null;
            foreach (var air in Airs)
            {
                var tried = Station(document, i, room, new PdfMeasures(IsBench: true, air));
                best = best is null || tried.Count < best.Count ? tried : best;
                if (best.Count == 1)
                {
                    break;
                }
            }

            starts.Add(sheets.Count);
            sheets.AddRange(best!);
            stations.AddRange(Enumerable.Repeat(i, best!.Count));
        }

        return sheets.Count > 0 ? (sheets, stations, starts) : Desk(document, room);
    }

    // As many stations from this one on as fit on one sheet whole, and that sheet.
    private static (Sheet Sheet, int Last) Shared(Document document, int first, Area room)
    {
        (Sheet Sheet, int Last) best = (new Sheet(), first);
        for (var last = first + 1; last < document.Stations.Length; last++)
        {
            var end = last;

            // At the tightest first: most do not fit, and are laid out once and not once for each air.
            if (On(Airs[^1]).Count != 1)
            {
                break;
            }

            best = (Airs.Select(On).First(sheets => sheets.Count == 1)[0], last);

            List<Sheet> On(double air) => Station(document, first, room, new PdfMeasures(IsBench: true, air), end);
        }

        return best;
    }

    private static List<Sheet> Station(Document document, int index, Area room, PdfMeasures measures, int? last = null)
    {
        var flow = new PageFlow(Left, Top, room.Height, () => PdfHead.Of(document, index, room.Width, measures, isContinued: true));
        flow.Turn();
        if (index == 0)
        {
            flow.Add(PdfHead.Title(document, room.Width, measures));
        }

        var head = PdfHead.Of(document, index, room.Width, measures, isContinued: false);
        head.Keep = Keep.Firmly;
        flow.Add([head, .. PdfBlocks.Of(BlocksOf(document, index, last), room.Width, room.Height - head.Height - measures.Gap(2.5), measures, document.Identity.Wording)]);
        for (var i = index + 1; i <= (last ?? index); i++)
        {
            var below = PdfHead.Below(document, i, room.Width, measures);
            below.Keep = Keep.Firmly;
            flow.Add([below, .. PdfBlocks.Of(BlocksOf(document, i, last), room.Width, room.Height - below.Height - measures.Gap(2.5), measures, document.Identity.Wording)]);
        }

        return flow.Sheets;
    }

    // What to do when it goes wrong stands once on a sheet.
    private static ImmutableArray<Block> BlocksOf(Document document, int index, int? last) => last is not { } end
        ? document.Stations[index].Blocks
        : [.. document.Stations[index].Blocks.Where(block => block is not IfBox box
            || !document.Stations[(index + 1)..(end + 1)].SelectMany(station => station.Blocks).OfType<IfBox>().Any(later => later.Lines.SequenceEqual(box.Lines)))];

    private static (List<Sheet> Sheets, List<int> Stations, List<int> Starts) Desk(Document document, Area room)
    {
        var measures = new PdfMeasures(document.ForTheBench, 1);
        var flow = new PageFlow(Left, Top, room.Height, null);
        flow.Turn();
        flow.Add(PdfHead.Title(document, room.Width, measures));
        var starts = new List<int>();
        for (var i = 0; i < document.Stations.Length; i++)
        {
            var at = -1;
            var head = PdfHead.Section(document.Stations[i].Title, room.Width, measures, () => at = flow.Current);
            flow.Add([head, .. PdfBlocks.Of(document.Stations[i].Blocks, room.Width, room.Height - head.Height - 4, measures, document.Identity.Wording)]);
            starts.Add(at);
        }

        return (flow.Sheets, [.. flow.Sheets.Select((_, page) => Math.Max(0, starts.FindLastIndex(start => start <= page)))], starts);
    }
}
