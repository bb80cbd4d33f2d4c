using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Documents.Tests.Files;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;
using Recipe.Planning;
using static Recipe.Documents.Tests.Plans.Make;

namespace Recipe.Documents.Tests;

/// <summary>The papers of a part that is wrapped round a mandrel speak of it as who makes tubes does, and not of a dish. Words: common practice.</summary>
public sealed class MandrelTests
{
    private static readonly string[] WordsOfADish =
    [
        "Ply 1 goes in first", "tool face", "tape land", "flange", "wedge", "corners down", "corners of", "a corner", "the corners", "port, corners", "thin corners", "mould side",
        "the mould", "trim line inside", "inside the trim line", "by width at the trim line", "from the rim", "from rim", "mould ready", "Mould temperature", "spread flat",
    ];

    private static Plan Infused => TubeInfused.Input.Plan;

    public static TheoryData<string> Wrapped => ["infused in an envelope", "infused under a bag that ends on the mandrel", "by hand", "cone", "cone the other way", "coated"];

    private static PaperInput Input(string name) => TubeInfused.Input with
    {
        Plan = name switch
        {
            "infused under a bag that ends on the mandrel" => Infused with { Part = Infused.Part with { Bag = Infused.Part.Bag! with { IsEnvelope = false } } },
            "by hand" => Infused with { Part = Infused.Part with { Process = Stated(Process.Hand, "hand"), Bag = null, Infusion = null } },
            "cone" => Infused with { Geometry = Infused.Geometry! with { Shape = new ConeShape(Mm(160), Mm(120), Mm(900)) } },
            "cone the other way" => Infused with { Geometry = Infused.Geometry! with { Shape = new ConeShape(Mm(120), Mm(160), Mm(900)) } },
            "coated" => Infused with { Part = Infused.Part with { Coats = HatchLid.Input.Plan.Part.Coats } },
            _ => Infused,
        },
    };

    [Theory]
    [MemberData(nameof(Wrapped))]
    public void No_paper_of_a_mandrel_speaks_of_a_dish(string name)
    {
        // The names of the papers are those of all parts.
        Assert.DoesNotContain(
            Cases.Built(Input(name)).SelectMany(Texts.Of).Select(text => text.Replace("what the mould is", "", StringComparison.Ordinal).Replace("from the mould: direction", "", StringComparison.Ordinal)),
            text => WordsOfADish.Any(word => text.Contains(word, StringComparison.OrdinalIgnoreCase)));
    }

    // What the words above are worth: every one of them but those of a rare case is on the papers of a lid.
    [Fact]
    public void The_papers_of_a_lid_speak_of_a_dish()
    {
        var texts = Cases.Built(HatchLid.Input).SelectMany(Texts.Of).ToList();
        string[] rare = ["corners of", "Mould temperature", "spread flat"];
        Assert.All(WordsOfADish.Except(rare), word => Assert.Contains(texts, text => text.Contains(word, StringComparison.OrdinalIgnoreCase)));
    }

    [Theory]
    [MemberData(nameof(Wrapped))]
    public void The_papers_of_a_mandrel_say_what_is_done_with_one(string name)
    {
        var texts = string.Join('\n', Cases.Built(Input(name)).SelectMany(Texts.Of));
        Assert.Contains("Ply 1 goes on first, against the mandrel.", texts, StringComparison.Ordinal);
        Assert.Contains("looking at it from outside", texts, StringComparison.Ordinal);
        Assert.Contains("chill the mandrel if it shrinks more than the part; push with a ring bearing on the whole end", texts, StringComparison.Ordinal);
        Assert.Contains(name.StartsWith("cone", StringComparison.Ordinal) ? "off over the thin end" : "straight off the mandrel", texts, StringComparison.Ordinal);
        Assert.Contains("no crease", texts, StringComparison.Ordinal);
        Assert.Contains("may come off the mandrel", texts, StringComparison.Ordinal);
        Assert.Contains("Outside diameter", texts, StringComparison.Ordinal);
        Assert.Contains("trim line, one near each end", texts, StringComparison.Ordinal);
        Assert.Contains("The wall, cut lengthwise: number 1 lies on the mandrel", texts, StringComparison.Ordinal);
        Assert.Equal(name.EndsWith("ends on the mandrel", StringComparison.Ordinal), texts.Contains("Clean the mandrel and its ends, where the tape goes.", StringComparison.Ordinal));
    }

    // A shell that lies on a male mould and is lifted off it, half a round say, is no tube; nor is what is laid into one.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Only_what_is_closed_round_a_mandrel_is_measured_and_mapped_as_a_tube(bool mandrel)
    {
        var lid = HatchLid.Input.Plan;
        SurfaceShape shape = mandrel ? new GivenAreaShape(M2(0.4), Mm(900), Mm(450), null) : new CylinderShape(Mm(160), Mm(900));
        var input = HatchLid.Input with
        {
            Plan = lid with { Part = lid.Part with { Mould = lid.Part.Mould! with { IsMandrel = mandrel } }, Geometry = lid.Geometry! with { Shape = shape } },
        };
        var context = new PaperContext(input);
        Assert.Equal(mandrel, context.IsWrapped);
        Assert.Null(context.Tube);
        var texts = string.Join('\n', Cases.Built(input).SelectMany(Texts.Of));
        Assert.DoesNotContain("Outside diameter", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("12 is the lap", texts, StringComparison.Ordinal);
        Assert.DoesNotContain("The bag from above", texts, StringComparison.Ordinal);
        Assert.Contains(mandrel ? "Length, and size across outside" : "Length by width at the trim line", texts, StringComparison.Ordinal);
        Assert.Contains(mandrel ? "goes on first" : "goes in first", texts, StringComparison.Ordinal);
    }

    // A round of 160 mm with a wall of 0.83 mm on both sides is 161.66 mm across: arithmetic.
    [Theory]
    [InlineData("by hand", "161.7\u00A0mm")]
    [InlineData("cone", "161.7\u00A0mm, 121.7\u00A0mm")]
    [InlineData("cone the other way", "121.7\u00A0mm, 161.7\u00A0mm")]
    public void The_outside_diameter_is_the_mandrel_and_twice_the_wall(string name, string figure)
    {
        var input = Input(name) with { Units = Model.UnitSystem.Metric };
        Assert.Equal(0.83, input.Plan.Laminate!.Thickness.Value.Millimeters, 9);
        var rows = Papers.Record.Build(input).Stations[0].Blocks.OfType<Table>().Single().Rows.OfType<CellRow>().ToList();
        var row = rows.Single(row => ((TextCell)row.Cells[0]).Text.Plain.StartsWith("Outside diameter", StringComparison.Ordinal));
        Assert.Equal(figure, ((BigCell)row.Cells[1]).Value);
        var length = rows.Single(row => ((TextCell)row.Cells[0]).Text.Plain == "Length, trimmed");
        Assert.Equal("900\u00A0mm", ((BigCell)length.Cells[1]).Value);
    }

    // Unrolled, the twelve hours follow each other down the side of the map, and the seam stands at both edges.
    [Theory]
    [InlineData("by hand")]
    [InlineData("cone")]
    [InlineData("cone the other way")]
    public void The_map_of_a_tube_is_cut_open_at_twelve(string name)
    {
        var map = DrawingRules.Of(Papers.Record, Input(name)).Single(drawing => drawing.Name == "part-map");
        DrawingRules.Check(map, name);
        var hours = map.Shapes.OfType<TextShape>().Where(text => int.TryParse(text.Text, out _)).OrderBy(text => text.At.Y).Select(text => text.Text);
        Assert.Equal(["12", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"], hours);
        Assert.Equal(2, map.Shapes.OfType<TextShape>().Count(text => text.Text == "lap"));
        var (a, b) = (map.Shapes.OfType<TextShape>().Single(text => text.Text == "A"), map.Shapes.OfType<TextShape>().Single(text => text.Text == "B"));
        Assert.True(a.At.X < b.At.X);

        // The edges are as long as the rounds: 160 to 120.
        var outline = map.Shapes.OfType<PathShape>().Single(path => path.Closed && path.Fill == Fill.None).Points;
        var (left, right) = (outline[3].Y - outline[0].Y, outline[2].Y - outline[1].Y);
        Assert.Equal(name switch { "cone" => 160.0 / 120, "cone the other way" => 120.0 / 160, _ => 1 }, left / right, 9);
    }

    [Theory]
    [MemberData(nameof(Wrapped))]
    public void The_drawing_of_the_mandrel_fits_its_page(string name) =>
        DrawingRules.Check(DrawingRules.Of(Papers.Passport, Input(name)).Single(drawing => drawing.Name == "mandrel"), name);
}
