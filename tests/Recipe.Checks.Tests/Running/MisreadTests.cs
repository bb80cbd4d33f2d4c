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

    // A fitting has no place in the order of the layers, and a block inside a block is another block.
    [Theory]
    [InlineData("breather; bag-film; hose no-such-hose", "", "felt-on-laminate")]
    [InlineData("breather; bag-film", "nonsense 5 mm", "felt-on-laminate")]
    [InlineData("bag-film; breather; release-film perforated; port no-such-port", "", "bag-upside-down")]
    public void A_mistake_elsewhere_hides_nothing(string bag, string part, string check) =>
        Assert.Contains(check, Bench.Of((new Tray { Bag = bag, PartLines = part }).ToString()).All.Select(f => f.Descriptor.Name));
}
