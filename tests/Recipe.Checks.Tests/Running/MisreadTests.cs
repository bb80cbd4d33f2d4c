namespace Recipe.Checks.Tests;

/// <summary>A misspelt line is one finding, not also a missing line.</summary>
public class MisreadTests
{
    public static TheoryData<string, string> Misspelt => new()
    {
        { "  peel-ply", "pel-ply" },
        { "carnauba-wax coats", "carnuba-wax coats" },
        { "inner glass-twill-163", "inner glass-twil-163" },
        { "leak-check", "leak-chek" },
        { "draw 25", "drw 25" },
        { "hold 20 degC for 48 h\ndemould", "hld 20 degC for 48 h" },
        { "cure {", "cur {" },
        { "vacuum {", "vacum {" },
        { "  resin slow", "  resn slow" },
        { "plies {", "plis {" },
        { "release {", "relase {" },
    };

    [Theory]
    [MemberData(nameof(Misspelt))]
    public void One_misspelt_word_is_no_missing_line(string right, string wrong)
    {
        var text = new Tray
        {
            Plies = "outer glass-twill-163 0/90; core-1 core pvc-foam-75 thickness 5 mm; inner glass-twill-163 0/90",
            Bag = "  peel-ply; breather; bag-film",
        }.ToString().Replace("\npeel-ply", "\n  peel-ply", StringComparison.Ordinal);
        Assert.Contains(right, text, StringComparison.Ordinal);
        Bench.Clean(text);
        var bench = Bench.Of(text.Replace(right, wrong, StringComparison.Ordinal));
        Assert.True(!bench.Before.IsEmpty && bench.Report.Findings.IsEmpty, bench.Story());
    }

    [Fact]
    public void What_could_not_be_looked_at_is_listed()
    {
        var bench = Bench.Of((new Tray { Bag = "pel-ply; breather; bag-film" }).ToString());
        Assert.Contains(bench.Report.NotChecked, n => n.Descriptor.Name == "felt-on-laminate" && n.Missing == "a line of bag is not understood");
    }

    public static TheoryData<string> HalfUnderstood =>
    [
        "no-vacuum-level", "not-degassed", "short-lap", "seam-without-lap", "neat-seam", "few-wax-coats", "film-without-wax", "first-pulls-unshielded", "half-not-released",
        "wax-still-soft", "leaky-mould", "no-way-to-pull", "untried-coating", "green-mould", "styrene-eats-foam", "coated-peel-ply-bonded",
    ];

    // The line that each would miss stands there, with a name, a unit or a word in it that is not understood.
    [Theory]
    [MemberData(nameof(HalfUnderstood))]
    public void A_line_that_is_half_understood_is_not_missing(string check)
    {
        const string materials = "mould-material board { heat-limit 60 degC; porous yes }\nmould-material old { chemistry polyester; heat-limit 70 degC; porous no }\n"
            + "mould-material block { family polystyrene-foam; porous no }\npeel-ply our-coated { coated yes; width 150 cm; resin-pickup 40 g/m2; source \"data sheet\" }";
        var hand = Tray.Hand with { Above = materials };
        var halves = hand with { MouldLines = "halves left right; flange 40 mm" };
        var tray = check switch
        {
            "no-vacuum-level" => new Tray { Vacuum = "draw 25 inHgg below ambient within 10 min; leak-check 5 min rise at-most 30 mbar isolated" },
            "not-degassed" => Tray.Infused with { PartLines = "use flying", Infuse = Tray.Infused.Infuse + "; degas 8 mn" },
            "short-lap" => halves with { Join = "manner cured-then-taped; align dowels; abrade 80 grit; overlap 8 mm; tape glass-tpe-200 width 50 mm" },
            "seam-without-lap" => halves with { Join = "manner cured-then-taped; align dowels; abrade 80 grit; tape glass-tpe-200 width 50 mm" },
            "neat-seam" => halves with { Join = "manner cured-then-bonded; align dowels; abrade 80 grit; overlap 20 mm; adhesive slow-laminating-epoxy; fillet 6 gg/m" },
            "few-wax-coats" => hand with { MouldLines = "state new", Release = "carnauba-wax coats 2 wait 30 min; carnauba-wxa coats 3 wait 30 min" },
            "film-without-wax" => hand with { MadeOf = "board", Release = "carnauba-wxa coats 3 wait 30 min; pva-film coats 1 dry 60 min" },
            "first-pulls-unshielded" => hand with { MouldLines = "state new", Resin = "laminating-polyester", Release = "carnauba-wax coats 5 wait 30 min; pva-fim coats 1 dry 60 min" },
            "half-not-released" => halves with { Release = "carnauba-wax coats 5 wait 30 min on left; carnauba-wxa coats 5 wait 30 min on right", Join = "manner wet-in-wet; overlap 20 mm; within 60 min; align dowels" },
            "wax-still-soft" => hand with { Release = "carnauba-wax coats 5 wait 30 min dry 20 min; pva-fim coats 1 dry 60 min" },
            "leaky-mould" => new Tray { Above = materials, MadeOf = "board", MouldLines = "seal-cots 2" },
            "no-way-to-pull" => hand with { Surface = "box 300 mm x 200 mm x 150 mm", MouldLines = "pull-ade \"water port\"" },
            "untried-coating" => hand with { MouldLines = "coating \"primer\"; stick-test yas" },
            "green-mould" => hand with { MadeOf = "old", MouldLines = "made-on 2026-05-13; post-cured yas" },
            "styrene-eats-foam" => hand with { MadeOf = "block", Resin = "laminating-polyester", MouldLines = "seal-coats to" },
            "coated-peel-ply-bonded" => new Tray { Above = materials, Bag = "our-coated; breather; bag-film", Finish = "wash; abraed 80 grit; bond hinge" },
            _ => throw new ArgumentOutOfRangeException(nameof(check)),
        };
        var bench = Bench.Of(tray.ToString());
        Assert.True(!bench.Before.IsEmpty, bench.Story());
        Assert.DoesNotContain(bench.Report.Findings, finding => finding.Descriptor.Name == check);
        Assert.Contains(bench.Report.NotChecked, note => note.Descriptor.Name == check && note.Missing.EndsWith("is not understood", StringComparison.Ordinal));
    }

    // A core would ask for less vacuum, and a mat would let the resin through.
    [Theory]
    [InlineData("weak-vacuum")]
    [InlineData("tight-weave-infused")]
    public void A_ply_that_is_not_understood_may_be_the_one_that_changes_it(string check)
    {
        var tray = check == "weak-vacuum"
            ? new Tray { Plies = "outer glass-twill-163 0/90; middle core no-such-foam; inner glass-twill-163 0/90", Vacuum = "draw 5 inHg below ambient; leak-check 5 min rise at-most 30 mbar isolated" }
            : Tray.Infused with { Plies = "outer glass-plain-25 0/90 x4; middle no-such-mat random", Bag = "peel-ply; release-film perforated; bag-film", Infuse = "path 310 mm; feed-line length 300 mm" };
        var bench = Bench.Of(tray.ToString());
        Assert.DoesNotContain(bench.Report.Findings, finding => finding.Descriptor.Name == check);
        Assert.Contains(bench.Report.NotChecked, note => note.Descriptor.Name == check && note.Missing.StartsWith("ply middle", StringComparison.Ordinal));
    }

    // A fitting has no place in the order of the layers, and a block inside a block is another block.
    [Theory]
    [InlineData("breather; bag-film; hose no-such-hose", "", "felt-on-laminate")]
    [InlineData("breather; bag-film", "nonsense 5 mm", "felt-on-laminate")]
    [InlineData("bag-film; breather; release-film perforated; port no-such-port", "", "bag-upside-down")]
    public void A_mistake_elsewhere_hides_nothing(string bag, string part, string check) =>
        Assert.Contains(check, Bench.Of((new Tray { Bag = bag, PartLines = part }).ToString()).All.Select(f => f.Descriptor.Name));
}
