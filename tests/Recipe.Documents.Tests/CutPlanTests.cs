using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using Recipe.Documents.CutPlans;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Files;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;
using Xunit.Abstractions;

namespace Recipe.Documents.Tests;

/// <summary>Cut plans in true size: read back as a cutter reads them, and measured on the page.</summary>
public sealed class CutPlanTests(ITestOutputHelper output)
{
    private const string HostileName = "veil <25> & \"glass\" caf\u00E9 50%% \\P ^J";

    private static readonly Identity Shop = new("Hatch lid", "hatch-lid", "abc123", null, "hatch-lid.recipe", OfOneBuild: false);

    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static Outline Points(params (double X, double Y)[] mm) => new([.. mm.Select(at => new Point2(at.X / 1000, at.Y / 1000))]);

    private static CutMarks Marks(double x, double y) => new(
        new(x / 1000, y / 1000), new((x - 40) / 1000, (y - 30) / 1000), new((x + 40) / 1000, (y - 30) / 1000), [new(new(x / 1000, 0.01), new(0, 1))]);

    // A square of 100 mm, and an angle on the far side of the roll.
    private static CutPlan Plan(string name = "Hatch lid") => new(name, [new CutSheet("roll " + name, Mm(500), Mm(900),
    [
        new CutPiece(Points((10, 10), (110, 10), (110, 110), (10, 110)), Marks(60, 60), "A", name, IsMirrored: false, MouldSideUp: true),
        new CutPiece(Points((600, 300), (880, 300), (880, 400), (700, 400), (700, 490), (600, 490)), Marks(690, 360), "B", "outer", IsMirrored: true, MouldSideUp: false),
    ])]);

    [Fact]
    public void An_svg_is_in_true_size_and_tells_cuts_from_marks()
    {
        var plan = Plan(HostileName);
        var text = CutSvg.Write(plan, plan.Sheets[0]);
        Assert.Equal(text, CutSvg.Write(plan, plan.Sheets[0]));
        var svg = XDocument.Parse(text).Root!;
        Assert.Equal(("900mm", "500mm", "0 0 900 500"), (svg.Attribute("width")!.Value, svg.Attribute("height")!.Value, svg.Attribute("viewBox")!.Value));
        var groups = svg.Elements().Where(element => element.Name.LocalName == "g").ToDictionary(group => group.Attribute("id")!.Value);
        Assert.Equal(["roll", "cut", "mark", "text"], groups.Keys);
        Assert.Equal(
            ["10,490 110,490 110,390 10,390", "600,200 880,200 880,100 700,100 700,10 600,10"],
            groups["cut"].Elements().Select(polygon => polygon.Attribute("points")!.Value));
        Assert.Contains(HostileName, groups["text"].Elements().Select(element => element.Value));
        Assert.Contains("mould side down, mirrored", groups["text"].Elements().Select(element => element.Value));
        Assert.Equal(8, groups["mark"].Elements().Count());
    }

    [Fact]
    public void A_dxf_is_pairs_of_codes_and_values_that_say_the_same()
    {
        var plan = Plan(HostileName);
        var text = CutDxf.Write(plan, plan.Sheets[0]);
        Assert.Equal(text, CutDxf.Write(plan, plan.Sheets[0]));
        Assert.True(text.All(char.IsAscii));
        var pairs = Pairs(text);
        Assert.Contains((999, "Units: millimetres, true size"), pairs);
        Assert.Equal("AC1009", pairs[pairs.IndexOf((9, "$ACADVER")) + 1].Value);
        Assert.Equal((0, "EOF"), pairs[^1]);
        var entities = Entities(pairs);
        Assert.Equal(["CUT", "MARK", "ROLL", "TEXT"], entities.Select(entity => Value(entity, 8)).Distinct().Order());
        Assert.Equal(["CUT", "MARK", "ROLL", "TEXT"], Layers(pairs).Order());

        // Every polyline is closed by its flag and ended by its own word.
        var outlines = new List<string>();
        for (var i = 0; i < entities.Count; i++)
        {
            if (Value(entities[i], 0) == "POLYLINE")
            {
                Assert.Equal("1", Value(entities[i], 66));
                Assert.Equal("1", Value(entities[i], 70));
                var vertices = entities.Skip(i + 1).TakeWhile(entity => Value(entity, 0) == "VERTEX").ToList();
                Assert.Equal("SEQEND", Value(entities[i + 1 + vertices.Count], 0));
                Assert.All(vertices, vertex => Assert.Equal(Value(entities[i], 8), Value(vertex, 8)));
                outlines.Add(Value(entities[i], 8) + ": " + string.Join(' ', vertices.Select(vertex => $"{Number(vertex, 10)},{Number(vertex, 20)}")));
            }
        }

        Assert.Equal(
            [
                "ROLL: 0,500 900,500 900,0 0,0",
                "CUT: 10,10 110,10 110,110 10,110",
                "CUT: 600,300 880,300 880,400 700,400 700,490 600,490",
            ],
            outlines);
        Assert.Contains(entities, entity => Value(entity, 0) == "TEXT" && Back(Value(entity, 1)) == HostileName);
        Assert.Contains(entities, entity => Value(entity, 0) == "TEXT" && Value(entity, 1) == "B");
    }

    [Fact]
    public void A_general_reader_of_dxf_finds_no_fault_and_the_same_lengths()
    {
        const string python = "/usr/bin/python3";
        const string read = """
            import sys
            import ezdxf
            from ezdxf.lldxf.encoding import decode_dxf_unicode
            doc = ezdxf.readfile(sys.argv[1])
            faults = doc.audit().errors
            print("version", doc.dxfversion, "faults", len(faults))
            for e in doc.modelspace():
                if e.dxftype() == "POLYLINE":
                    print(e.dxf.layer, e.is_closed, " ".join("%g,%g" % (v.dxf.location.x, v.dxf.location.y) for v in e.vertices))
                elif e.dxftype() == "TEXT":
                    print("TEXT", ascii(decode_dxf_unicode(e.dxf.text)))
            """;
        if (!File.Exists(python) || !Works(python, "-c", "import ezdxf"))
        {
            const string absent = "NOT COMPARED: ezdxf is not installed (Debian package python3-ezdxf).";
            Assert.False(Environment.GetEnvironmentVariable("CI") == "true", absent);
            output.WriteLine(absent);
            return;
        }

        var plan = Plan("caf\u00E9 & <lid>");
        var said = Tool.With(Encoding.ASCII.GetBytes(CutDxf.Write(plan, plan.Sheets[0])), "dxf", path => Tool.Run(python, "-c", read, path));
        Assert.Contains("version AC1009 faults 0", said, StringComparison.Ordinal);
        Assert.Contains("CUT True 10,10 110,10 110,110 10,110", said, StringComparison.Ordinal);
        Assert.Contains("ROLL True 0,500 900,500 900,0 0,0", said, StringComparison.Ordinal);
        Assert.Contains(@"'caf\xe9 & <lid>'", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(210, 297)]
    [InlineData(215.9, 279.4)]
    public void Tiles_cover_every_cut_overlap_and_carry_the_same_crosses(double width, double height)
    {
        var plan = Plan();
        var sheet = plan.Sheets[0];
        var tiles = new CutTiles(plan, sheet, width, height);
        Assert.InRange(tiles.Tiles.Length, 3, (tiles.Columns * tiles.Rows) - 1);

        // Each point of each edge lies on a tile, and there at its true distance from the tile's corner.
        foreach (var path in CutShapes.Of(sheet).Where(cut => cut.Layer == CutLayer.Cut).Select(cut => (PathShape)cut.Shape))
        {
            for (var i = 0; i < path.Points.Length; i++)
            {
                var (from, to) = (path.Points[i], path.Points[(i + 1) % path.Points.Length]);
                for (var share = 0.0; share < 1; share += 0.05)
                {
                    var at = new Spot(from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)));
                    Assert.Contains(tiles.Tiles, tile => OnPage(tile, at) is { } page && tile.Shapes.OfType<PathShape>().Any(shape => IsOn(shape, page)));
                }
            }
        }

        // The crosses of two neighbours stand at the same places of the roll, two for each pair.
        var crosses = tiles.Tiles.SelectMany(tiles.Crosses).GroupBy(at => (Math.Round(at.X, 6), Math.Round(at.Y, 6))).ToList();
        Assert.NotEmpty(crosses);
        Assert.All(crosses, cross => Assert.InRange(cross.Count(), 2, 4));
        foreach (var tile in tiles.Tiles)
        {
            Assert.Contains(tile.Shapes.OfType<TextShape>(), text => text.Text.StartsWith($"Column {tile.Column} of {tiles.Columns}, row {tile.Row} of {tiles.Rows}", StringComparison.Ordinal));
            Assert.Contains(tile.Shapes.OfType<TextShape>(), text => text.Text == CutShapes.Caution);
            Assert.Equal(tiles.Crosses(tile).Count(), tile.Shapes.OfType<CircleShape>().Count());
            foreach (var (circle, at) in tile.Shapes.OfType<CircleShape>().Zip(tiles.Crosses(tile)))
            {
                Assert.Equal(OnPage(tile, at), circle.Centre);
            }

            Assert.All(tile.Shapes.OfType<PathShape>().SelectMany(shape => shape.Points), at => Assert.True(at.X >= CutTiles.Margin - 1e-9 && at.X <= width - CutTiles.Margin + 1e-9 && at.Y <= height - CutTiles.Margin + 1e-9));
        }
    }

    // Wherever a letter lies, on a seam too, it stands whole on a tile.
    [Fact]
    public void Every_text_stands_whole_on_some_tile()
    {
        for (var x = 150.0; x < 250; x += 5)
        {
            var sheet = new CutSheet("roll", Mm(400), Mm(400), [new CutPiece(Points((50, 50), (350, 50), (350, 350), (50, 350)), Marks(x, x), "A", "a long name of a ply", false, true)]);
            var tiles = new CutTiles(new CutPlan("Lid", [sheet]), sheet, 210, 297);
            foreach (var word in (string[])["A", "a long name of a ply", "mould side up"])
            {
                var found = tiles.Tiles.SelectMany(tile => tile.Shapes.OfType<TextShape>()).Where(text => text.Text == word).ToList();
                Assert.InRange(found.Count, 1, 4);
                Assert.All(found, text => Assert.True(new Box(10 - 1e-6, 22 - 1e-6, 190 + 2e-6, 265 + 2e-6).Holds(Canvas.BoxOf(text)), $"{word} at {x}"));
            }
        }
    }

    // 100 mm are 283.465 points (ISO 32000-1, 8.3.2.3: a point is 1/72 inch).
    [Fact]
    public void In_the_pdf_100_mm_are_100_mm()
    {
        var pdf = CutPages.WritePdf(Plan(HostileName), Shop, PaperSize.A4);
        Assert.Equal(pdf, CutPages.WritePdf(Plan(HostileName), Shop, PaperSize.A4));
        var pages = Contents(pdf);
        Assert.Contains(" 283.465 283.465 re", pages, StringComparison.Ordinal);

        // The square piece lies wholly on the lowest tile of the first column: its four corners follow one another on that page.
        var numbers = pages.Split([' ', '\n']).ToList();
        var squares = Enumerable.Range(0, numbers.Count - 14).Count(i =>
            numbers[i + 2] == "m" && numbers[i + 5] == "l" && numbers[i + 8] == "l"
            && Near(numbers[i + 3], numbers[i], 283.465) && Near(numbers[i + 4], numbers[i + 1], 0)
            && Near(numbers[i + 6], numbers[i + 3], 0) && Near(numbers[i + 7], numbers[i + 4], 283.465));
        Assert.Equal(1, squares);
    }

    [Fact]
    public void Another_program_measures_the_check_square_on_the_page()
    {
        if (!Tool.IsThere("pdftoppm", "poppler-utils", output))
        {
            return;
        }

        // 254 dots an inch are ten a millimetre.
        var image = Tool.With(CutPages.WritePdf(Plan(), Shop, PaperSize.Letter), "pdf", path =>
        {
            Tool.Run("pdftoppm", "-r", "254", "-f", "1", "-l", "1", "-gray", path, path + "-page");
            return File.ReadAllBytes(Directory.GetFiles(Path.GetDirectoryName(path)!, "*.pgm").Single());
        });
        var header = Encoding.ASCII.GetString(image, 0, 20).Split('\n');
        var (width, height) = (int.Parse(header[1].Split(' ')[0], CultureInfo.InvariantCulture), int.Parse(header[1].Split(' ')[1], CultureInfo.InvariantCulture));
        Assert.Equal((2159, 2794), (width, height));
        var start = image.Length - (width * height);
        bool Dark(int x, int y) => image[start + (y * width) + x] < 128;

        // Across at 50 mm and down at 20 mm, clear of the words in its middle.
        var across = Enumerable.Range(0, width).Where(x => Dark(x, 500)).ToList();
        var down = Enumerable.Range(350, 1150).Where(y => Dark(200, y)).ToList();
        Assert.InRange((across[^1] - across[0]) / 10.0, 99.8, 100.5);
        Assert.InRange((down[^1] - down[0]) / 10.0, 99.8, 100.5);
    }

    [Fact]
    public void The_html_holds_the_same_pages_in_the_size_of_the_paper()
    {
        var plan = Plan(HostileName);
        var html = CutPages.WriteHtml(plan, Shop, PaperSize.A4);
        var svgs = XDocument.Parse(html).Descendants().Where(element => element.Name.LocalName == "svg").ToList();
        Assert.Equal(1 + new CutTiles(plan, plan.Sheets[0], 210, 297).Tiles.Length, svgs.Count);
        Assert.All(svgs, svg => Assert.Equal(("210mm", "297mm"), (svg.Attribute("width")!.Value, svg.Attribute("height")!.Value)));
        Assert.Contains("@page { size: 210mm 297mm; margin: 0 }", html, StringComparison.Ordinal);
    }

    // What a nest did to the outline is done to its marks.
    [Theory]
    [InlineData(false, NestTurn.None)]
    [InlineData(true, NestTurn.Quarter)]
    public void Marks_go_where_the_nest_puts_the_piece(bool mirror, NestTurn turn)
    {
        var outline = Points((0, 0), (300, 0), (0, 80));
        var nest = OutlineNesting.Nest(
            [new OutlinePiece(outline, 4, turn, mirror)], [new RollStock("roll", Mm(turn == NestTurn.None ? 200 : 85))], new OutlineNestSettings(Length.Zero, Steps: 200_000));
        Assert.Equal(4, nest.Placements.Length);
        foreach (var placement in nest.Placements)
        {
            var piece = CutPiece.At(placement, new CutMarks(outline.Points[0], outline.Points[1], outline.Points[2], [new(outline.Points[1], new(-1, 0))]), "A", "outer", mouldSideUp: true);
            Assert.Equal(placement.IsMirrored, piece.IsMirrored);
            foreach (var mark in (ReadOnlySpan<Point2>)[piece.Marks.Label, piece.Marks.WarpFrom, piece.Marks.WarpTo, piece.Marks.Notches[0].At])
            {
                Assert.Contains(placement.Lies.Points, at => (at - mark).Norm < 1e-12);
            }

            Assert.Equal(1, piece.Marks.Notches[0].Inward.Norm, 9);
        }
    }

    private static Spot? OnPage(CutTile tile, Spot at)
    {
        var window = tile.Window;
        return at.X < window.X || at.X > window.X + window.Width || at.Y < window.Y || at.Y > window.Y + window.Height
            ? null
            : new Spot(at.X + (CutTiles.Margin - window.X), at.Y + (CutTiles.Margin + 12 - window.Y));
    }

    private static bool IsOn(PathShape shape, Spot at)
    {
        for (var i = 0; i + 1 < shape.Points.Length; i++)
        {
            var (a, b) = (shape.Points[i], shape.Points[i + 1]);
            var (dx, dy) = (b.X - a.X, b.Y - a.Y);
            var square = (dx * dx) + (dy * dy);
            var share = square == 0 ? 0 : Math.Clamp((((at.X - a.X) * dx) + ((at.Y - a.Y) * dy)) / square, 0, 1);
            if (Math.Abs(a.X + (share * dx) - at.X) + Math.Abs(a.Y + (share * dy) - at.Y) < 1e-6)
            {
                return true;
            }
        }

        return false;
    }

    private static bool Near(string a, string b, double apart) =>
        double.TryParse(a, NumberStyles.Float, CultureInfo.InvariantCulture, out var x)
        && double.TryParse(b, NumberStyles.Float, CultureInfo.InvariantCulture, out var y) && Math.Abs(Math.Abs(x - y) - apart) < 0.0025;

    private static string Contents(byte[] pdf)
    {
        var (text, all) = (Encoding.Latin1.GetString(pdf), new StringBuilder());
        for (var at = text.IndexOf("stream\n", StringComparison.Ordinal); at >= 0; at = text.IndexOf("stream\n", at + 1, StringComparison.Ordinal))
        {
            if (text[at - 1] == 'd' || pdf[at + 7] != 0x78)
            {
                continue;
            }

            using var zlib = new ZLibStream(new MemoryStream(pdf, at + 7, pdf.Length - at - 7), CompressionMode.Decompress);
            using var reader = new StreamReader(zlib, Encoding.Latin1);
            all.Append(reader.ReadToEnd());
        }

        return all.ToString();
    }

    private static List<(int Code, string Value)> Pairs(string dxf)
    {
        Assert.EndsWith("\r\n", dxf, StringComparison.Ordinal);
        var lines = dxf[..^2].Split("\r\n");
        Assert.Equal(0, lines.Length % 2);
        return [.. lines.Chunk(2).Select(pair =>
        {
            Assert.Matches("^ {0,2}[0-9]{1,3}$", pair[0]);
            Assert.DoesNotContain('\n', pair[1]);
            return (int.Parse(pair[0], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture), pair[1]);
        })];
    }

    private static List<List<(int Code, string Value)>> Entities(List<(int Code, string Value)> pairs)
    {
        var from = pairs.IndexOf((2, "ENTITIES")) + 1;
        var entities = new List<List<(int Code, string Value)>>();
        foreach (var pair in pairs.Skip(from).TakeWhile(pair => pair != (0, "ENDSEC")))
        {
            if (pair.Code == 0)
            {
                entities.Add([]);
            }

            entities[^1].Add(pair);
        }

        return entities;
    }

    private static IEnumerable<string> Layers(List<(int Code, string Value)> pairs) =>
        pairs.Zip(pairs.Skip(1)).Where(two => two.First == (0, "LAYER")).Select(two => two.Second.Value);

    private static string Value(List<(int Code, string Value)> entity, int code) => entity.First(pair => pair.Code == code).Value;

    private static string Number(List<(int Code, string Value)> entity, int code) =>
        double.Parse(Value(entity, code), CultureInfo.InvariantCulture).ToString("0.####", CultureInfo.InvariantCulture);

    private static string Back(string text) =>
        System.Text.RegularExpressions.Regex.Replace(text, @"\\U\+([0-9A-F]{4})", match => ((char)Convert.ToInt32(match.Groups[1].Value, 16)).ToString());

    private static bool Works(string program, params string[] arguments)
    {
        using var process = System.Diagnostics.Process.Start(new System.Diagnostics.ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
