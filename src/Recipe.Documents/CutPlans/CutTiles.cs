using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.CutPlans;

/// <summary>
/// A length of roll in true size on sheets of paper: neighbours overlap, crosses in the overlap lie on each other when they are taped
/// right, and only sheets with something to cut are printed. A page in front holds the check square and a map.
/// </summary>
internal sealed class CutTiles
{
    public const double Margin = 10;
    public const double Overlap = 10;

    /// <summary>Side of the square that is measured before anything is cut, mm.</summary>
    public const double CheckSide = 100;

    // Above the window: two lines of words.
    private const double Head = 12;
    private const double CrossMm = 4;
    private const double WordsPt = 9;

    private static readonly Pen Hair = new(0.15);

    private readonly CutPlan _plan;
    private readonly CutSheet _sheet;
    private readonly ImmutableArray<CutShape> _shapes;
    private readonly (double Width, double Height) _page;
    private readonly (double Width, double Height) _window;

    public CutTiles(CutPlan plan, CutSheet sheet, double pageWidthMm, double pageHeightMm)
    {
        (_plan, _sheet, _shapes, _page) = (plan, sheet, CutShapes.Of(sheet), (pageWidthMm, pageHeightMm));
        _window = (pageWidthMm - (2 * Margin), pageHeightMm - (2 * Margin) - Head);
        Columns = CountOf(sheet.Length.Millimeters, _window.Width);
        Rows = CountOf(sheet.Width.Millimeters, _window.Height);
        Tiles = [.. Each().Where(place => HasCuts(Window(place.Column, place.Row)))
            .Select(place => new CutTile(place.Column, place.Row, Window(place.Column, place.Row), []))];
        Tiles = [.. Tiles.Select(tile => tile with { Shapes = Draw(tile) })];
    }

    public int Columns { get; }

    public int Rows { get; }

    /// <summary>The tiles, row by row.</summary>
    public ImmutableArray<CutTile> Tiles { get; }

    /// <summary>The page in front: check square, caution, map of the tiles.</summary>
    public ImmutableArray<Shape> Front()
    {
        var canvas = new Canvas(_page.Width, _page.Height);
        var room = _page.Width - (2 * Margin);
        canvas.Text(Margin, Margin + 6, Fitted.To($"{_plan.Name}: {_sheet.Roll}", 14, room, strong: true), 14, strong: true);
        canvas.Text(Margin, Margin + 13, CutShapes.Caution, 11, strong: true);
        canvas.Text(Margin, Margin + 19, "Trim along the dashed lines or overlap them; lay cross on cross; tape.", 10);
        canvas.Add(PathShape.Box(Margin, 40, CheckSide, CheckSide, new Pen(0.25)));
        canvas.Text(Margin + (CheckSide / 2), 40 + (CheckSide / 2), "100 mm x 100 mm", 12, Anchor.Middle, strong: true);
        var scale = Math.Min(room / _sheet.Length.Millimeters, (_page.Height - 160 - Margin) / _sheet.Width.Millimeters);
        Spot Map(double x, double y) => new(Margin + (x * scale), 155 + (y * scale));
        foreach (var shape in _shapes.Where(shape => shape.Layer is CutLayer.Cut or CutLayer.Roll).Select(shape => shape.Shape).OfType<PathShape>())
        {
            canvas.Add(shape with { Points = [.. shape.Points.Select(at => Map(at.X, at.Y))], Pen = new Pen(0.2) });
        }

        foreach (var tile in Tiles)
        {
            var (from, to) = (Map(tile.Window.X, tile.Window.Y), Map(
                Math.Min(tile.Window.X + tile.Window.Width, _sheet.Length.Millimeters), Math.Min(tile.Window.Y + tile.Window.Height, _sheet.Width.Millimeters)));
            canvas.Add(PathShape.Box(from.X, from.Y, to.X - from.X, to.Y - from.Y, new Pen(0.15, Dashed: true)));
            canvas.Text((from.X + to.X) / 2, (from.Y + to.Y) / 2, NameOf(tile), 9, Anchor.Middle);
        }

        return canvas.Draw("front", "", "").Shapes;
    }

    /// <summary>What a tile is called: column, row.</summary>
    public static string NameOf(CutTile tile) => $"{Numbers.Whole(tile.Column)}-{Numbers.Whole(tile.Row)}";

    private static int CountOf(double size, double window) => 1 + (int)Math.Max(0, Math.Ceiling((size - window - 1e-6) / (window - Overlap)));

    private IEnumerable<(int Column, int Row)> Each() =>
        from row in Enumerable.Range(1, Rows)
        from column in Enumerable.Range(1, Columns)
        select (column, row);

    private Box Window(int column, int row) =>
        new((column - 1) * (_window.Width - Overlap), (row - 1) * (_window.Height - Overlap), _window.Width, _window.Height);

    private bool HasCuts(Box window) =>
        _shapes.Any(shape => shape is { Layer: CutLayer.Cut, Shape: PathShape path } && CutClip.To(path, window).Any());

    private ImmutableArray<Shape> Draw(CutTile tile)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        var (window, room) = (tile.Window, _page.Width - (2 * Margin));
        var (dx, dy) = (Margin - window.X, Margin + Head - window.Y);
        shapes.Add(new TextShape(
            new(Margin, Margin + 3.5),
            Fitted.To($"Column {Numbers.Whole(tile.Column)} of {Numbers.Whole(Columns)}, row {Numbers.Whole(tile.Row)} of {Numbers.Whole(Rows)}. {_plan.Name}: {_sheet.Roll}", WordsPt, room, strong: true),
            WordsPt,
            Strong: true));
        shapes.Add(new TextShape(new(Margin, Margin + 8.5), Fitted.To(CutShapes.Caution, WordsPt, room), WordsPt));
        shapes.Add(PathShape.Box(Margin, Margin + Head, _window.Width, _window.Height, new Pen(0.15, Dashed: true)));
        foreach (var cut in _shapes)
        {
            if (cut.Shape is TextShape text && Held(text, tile) is { } held)
            {
                shapes.Add(held with { At = new(held.At.X + dx, held.At.Y + dy) });
            }
            else if (cut.Shape is PathShape path)
            {
                shapes.AddRange(CutClip.To(path, window).Select(part => part with { Points = [.. part.Points.Select(at => new Spot(at.X + dx, at.Y + dy))] }));
            }
        }

        foreach (var at in Crosses(tile))
        {
            shapes.Add(PathShape.Line(at.X + dx - CrossMm, at.Y + dy, at.X + dx + CrossMm, at.Y + dy, Hair));
            shapes.Add(PathShape.Line(at.X + dx, at.Y + dy - CrossMm, at.X + dx, at.Y + dy + CrossMm, Hair));
            shapes.Add(new CircleShape(new(at.X + dx, at.Y + dy), CrossMm / 2, Hair));
        }

        return shapes.ToImmutable();
    }

    // A text that no tile holds whole moves into the first that holds its place, so that no piece goes without its letter.
    private TextShape? Held(TextShape text, CutTile tile)
    {
        var (box, window) = (Canvas.BoxOf(text), tile.Window);
        if (window.Holds(box))
        {
            return text;
        }

        var first = Tiles.FirstOrDefault(one => one.Window.Holds(new Box(text.At.X, text.At.Y, 0, 0)));
        if (first is null || (first.Column, first.Row) != (tile.Column, tile.Row) || Tiles.Any(one => one.Window.Holds(box)))
        {
            return null;
        }

        var x = Math.Clamp(box.X, window.X, Math.Max(window.X + window.Width - box.Width, window.X));
        var y = Math.Clamp(box.Y, window.Y, Math.Max(window.Y + window.Height - box.Height, window.Y));
        return text with { At = new(text.At.X + x - box.X, text.At.Y + y - box.Y) };
    }

    /// <summary>Where the crosses of a tile stand on the sheet: two in the middle of each overlap with a tile that is printed too.</summary>
    public IEnumerable<Spot> Crosses(CutTile tile)
    {
        var (window, found) = (tile.Window, new List<Spot>());
        foreach (var share in (ReadOnlySpan<double>)[0.2, 0.8])
        {
            var (along, across) = (window.X + (share * window.Width), window.Y + (share * window.Height));
            Offer(-1, 0, new(window.X + (Overlap / 2), across));
            Offer(1, 0, new(window.X + window.Width - (Overlap / 2), across));
            Offer(0, -1, new(along, window.Y + (Overlap / 2)));
            Offer(0, 1, new(along, window.Y + window.Height - (Overlap / 2)));
        }

        return found;

        void Offer(int columns, int rows, Spot at)
        {
            if (Tiles.Any(other => other.Column == tile.Column + columns && other.Row == tile.Row + rows))
            {
                found.Add(at);
            }
        }
    }
}
