using System.Text;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing;

/// <summary>
/// Writes a drawing as SVG 1.1, in millimetres: inside an HTML paper, or as a file of its own. It uses no style sheet, no script, no font
/// from outside, and its title and description are what a screen reader says.
/// </summary>
internal static class SvgWriter
{
    private const string Face = "'DejaVu Sans Condensed', 'Arial Narrow', 'Liberation Sans', Arial, sans-serif";

    /// <summary>The drawing as a file.</summary>
    public static string WriteFile(Drawing drawing) => "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n" + Write(drawing) + "\n";

    /// <summary>The drawing as one element. Names of its patterns begin with the drawing's own, so that several can stand in one file.</summary>
    public static string Write(Drawing drawing)
    {
        var svg = new StringBuilder();
        Write(svg, drawing);
        return svg.ToString();
    }

    /// <summary>The drawing as one element, behind what is written already.</summary>
    public static void Write(StringBuilder svg, Drawing drawing)
    {
        Open(svg, drawing.Title, drawing.Description, drawing.WidthMm, drawing.HeightMm);
        foreach (var fill in drawing.Shapes.Select(FillOf).Distinct().Order())
        {
            svg.Append(Pattern(drawing.Name, fill));
        }

        for (var i = 0; i < drawing.Shapes.Length; i++)
        {
            // The thousand squares of a code are one element, less than half as long, and no edge shines through between two of them.
            var more = 1;
            while (IsSquare(drawing.Shapes[i]) && i + more < drawing.Shapes.Length && IsSquare(drawing.Shapes[i + more]))
            {
                more++;
            }

            if (more > 1)
            {
                AppendSquares(svg, drawing.Shapes.AsSpan(i, more));
                i += more - 1;
            }
            else
            {
                Append(svg, drawing.Name, drawing.Shapes[i]);
            }

            svg.Append('\n');
        }

        svg.Append("</svg>");
    }

    /// <summary>Whether a shape is a black box with no line round it.</summary>
    private static bool IsSquare(Shape shape) => shape is PathShape { Closed: true, Pen: null, Fill: Fill.Black, Points: [var a, var b, var c, var d] }
        && a.Y == b.Y && b.X == c.X && c.Y == d.Y && d.X == a.X;

    private static void AppendSquares(StringBuilder svg, ReadOnlySpan<Shape> squares)
    {
        svg.Append("<path d=\"");
        foreach (var shape in squares)
        {
            var points = ((PathShape)shape).Points;
            N(N(svg.Append('M'), points[0].X).Append(','), points[0].Y);
            N(N(N(svg.Append('H'), points[1].X).Append('V'), points[2].Y).Append('H'), points[3].X).Append('Z');
        }

        svg.Append("\" fill=\"#000\" shape-rendering=\"crispEdges\" />");
    }

    /// <summary>A drawing as a file whose shapes stand in named groups, so that a cutter can be told what each is; no fills but plain ones.</summary>
    public static string WriteGroups(string title, string description, double widthMm, double heightMm, IEnumerable<(string Name, IEnumerable<Shape> Shapes)> groups)
    {
        var svg = new StringBuilder("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n");
        Open(svg, title, description, widthMm, heightMm);
        foreach (var (name, shapes) in groups)
        {
            svg.Append($"<g id=\"{HtmlText.Escape(name)}\">\n");
            foreach (var shape in shapes)
            {
                Append(svg, name, shape);
                svg.Append('\n');
            }

            svg.Append("</g>\n");
        }

        return svg.Append("</svg>\n").ToString();
    }

    private static void Open(StringBuilder svg, string title, string description, double widthMm, double heightMm) => svg
        .Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"{N(widthMm)}mm\" height=\"{N(heightMm)}mm\" viewBox=\"0 0 {N(widthMm)} {N(heightMm)}\" font-family=\"{Face}\">\n")
        .Append($"<title>{HtmlText.Escape(title)}</title>\n<desc>{HtmlText.Escape(description)}</desc>\n");

    private static Fill FillOf(Shape shape) => shape switch
    {
        PathShape path => path.Fill,
        CircleShape circle => circle.Fill,
        _ => Fill.None,
    };

    private static void Append(StringBuilder svg, string name, Shape shape)
    {
        switch (shape)
        {
            case PathShape path:
                svg.Append(path.Closed ? "<polygon points=\"" : "<polyline points=\"");
                for (var i = 0; i < path.Points.Length; i++)
                {
                    N(N(svg.Append(i == 0 ? "" : " "), path.Points[i].X).Append(','), path.Points[i].Y);
                }

                svg.Append('"');
                Paint(svg, name, path.Pen, path.Fill);
                svg.Append(" />");
                break;
            case CircleShape circle:
                N(N(N(svg.Append("<circle cx=\""), circle.Centre.X).Append("\" cy=\""), circle.Centre.Y).Append("\" r=\""), circle.RadiusMm).Append('"');
                Paint(svg, name, circle.Pen, circle.Fill);
                svg.Append(" />");
                break;
            case TextShape text:
                svg.Append(Of(text));
                break;
            default:
                throw new ArgumentException($"No SVG for {shape.GetType().Name}.", nameof(shape));
        }
    }

    private static string Of(TextShape text)
    {
        var anchor = text.Anchor switch
        {
            Anchor.Middle => " text-anchor=\"middle\"",
            Anchor.End => " text-anchor=\"end\"",
            _ => "",
        };
        var turn = text.Upright ? $" transform=\"rotate(-90 {N(text.At.X)} {N(text.At.Y)})\"" : "";
        return $"<text x=\"{N(text.At.X)}\" y=\"{N(text.At.Y)}\" font-size=\"{N(text.SizePt * Lettering.MmPerPoint)}\"{anchor}{(text.Strong ? " font-weight=\"bold\"" : "")}{turn}>{HtmlText.Escape(text.Text)}</text>";
    }

    private static void Paint(StringBuilder svg, string name, Pen? pen, Fill fill)
    {
        svg.Append(" fill=\"").Append(fill switch
        {
            Fill.None => "none",
            Fill.White => "#fff",
            Fill.Pale => "#eee",
            Fill.Mid => "#bbb",
            Fill.Black => "#000",
            _ => $"url(#{IdOf(name, fill)})",
        }).Append('"');
        if (pen is { } p)
        {
            N(svg.Append(" stroke=\"#000\" stroke-width=\""), p.WidthMm).Append("\" stroke-linejoin=\"round\"").Append(p.Dashed ? " stroke-dasharray=\"2 1.2\"" : "");
        }
    }

    private static string Pattern(string name, Fill fill) => fill switch
    {
        Fill.Hatched => Tile(name, fill, 2, "<path d=\"M-0.5,0.5 L0.5,-0.5 M0,2 L2,0 M1.5,2.5 L2.5,1.5\" stroke=\"#000\" stroke-width=\"0.2\" />"),
        Fill.CrossHatched => Tile(name, fill, 2, "<path d=\"M0,0 L2,2 M0,2 L2,0\" stroke=\"#000\" stroke-width=\"0.2\" />"),
        Fill.Dotted => Tile(name, fill, 1.6, "<circle cx=\"0.4\" cy=\"0.4\" r=\"0.22\" /><circle cx=\"1.2\" cy=\"1.2\" r=\"0.22\" />"),
        _ => "",
    };

    private static string Tile(string name, Fill fill, double size, string inner) =>
        $"<defs><pattern id=\"{IdOf(name, fill)}\" width=\"{N(size)}\" height=\"{N(size)}\" patternUnits=\"userSpaceOnUse\">{inner}</pattern></defs>\n";

    private static string IdOf(string name, Fill fill) => $"{name}-{fill}".ToLowerInvariant();

    private static string N(double value) => Numbers.AtMost(value, 3);

    private static StringBuilder N(StringBuilder svg, double value) => svg.AppendAtMost(value, 3);
}
