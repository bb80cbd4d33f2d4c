using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of shelf and store speak, and when they do not. The day of these tests is 2026-05-14.</summary>
public class ShelfTests
{
    // Two plies of 430 mm x 330 mm, a tenth more for waste: 0.312 m2.
    [Theory]
    [InlineData("glass-twill-163 0.31 m2", true)]
    [InlineData("glass-twill-163 0.32 m2", false)]
    [InlineData("glass-twill-163 0.2 m2\n  glass-twill-163 0.2 m2", false)]
    [InlineData("carbon-twill-200 0.1 m2", false)]
    public void The_shelf_holds_enough(string stock, bool fires) =>
        Limits.Says("not-enough-on-shelf", Tray.Hand with { Above = Shelf(stock), PartLines = "trim 15 mm" }, fires);

    [Fact]
    public void Three_parts_take_three_times_as_much() =>
        Bench.Fires("not-enough-on-shelf", Tray.Hand with { Above = Shelf("glass-twill-163 0.9 m2"), PartLines = "trim 15 mm; quantity 3" }, Severity.Warning);

    [Theory]
    [InlineData("opened 2025-04-14", true)]
    [InlineData("opened 2025-05-14", false)]
    [InlineData("received 2024-01-01", false)]
    [InlineData("opened 2025-04-14\n  slow-laminating-epoxy 1 kg lot \"E2\" received 2026-01-01", false)]
    [InlineData("opened 2025-04-14 expires 2026-01-01", false)]
    public void An_old_tin_is_tried_in_a_cup(string days, bool fires) =>
        Limits.Says("opened-long-ago", Tray.Hand with { Above = Shelf("slow-laminating-epoxy 2 kg lot \"E1\" " + days) }, fires, Severity.Advice);

    [Theory]
    [InlineData("received 2025-10-14", "", true)]
    [InlineData("received 2025-11-14", "", false)]
    [InlineData("received 2025-10-14", "shelf-life 12 month; ", false)]
    [InlineData("received 2025-10-14 expires 2026-12-01", "", false)]
    public void Polyester_keeps_half_a_year(string days, string life, bool fires) => Limits.Says(
        "old-polyester",
        Tray.Hand with
        {
            Above = $"resin ours like laminating-polyester {{ {life}source \"data sheet\" }}\n" + Shelf("ours 5 kg lot \"P1\" " + days),
            Resin = "ours",
        },
        fires);

    // US Army TM 1-1500-204-23-11, page file 0046: tape keeps one year.
    [Theory]
    [InlineData("received 2025-04-14", true)]
    [InlineData("received 2025-05-14", false)]
    [InlineData("received 2025-04-14 expires 2027-01-01", false)]
    public void Tape_keeps_a_year(string days, bool fires)
    {
        var tray = new Tray { Above = Shelf("general-sealant-tape 30 m lot \"T1\" " + days), Bag = "peel-ply; breather; bag-film; sealant-tape" };
        Limits.Says("old-tape", tray, fires);
        Bench.Silent("old-tape", tray with { Bag = "peel-ply; breather; bag-film" });
    }

    [Theory]
    [InlineData("on 2025-04-14", true)]
    [InlineData("on 2025-05-14", false)]
    [InlineData("", false)]
    public void A_price_holds_a_year(string on, bool fires) =>
        Limits.Says("stale-price", Tray.Hand with { Above = $"prices {{\n  glass-twill-163 6.40 EUR/m2 {on}\n}}" }, fires, Severity.Advice);

    [Theory]
    [InlineData("glass-twill-163 0.25 m2 lot \"A\"\n  glass-twill-163 0.2 m2 lot \"B\"", true)]
    [InlineData("glass-twill-163 0.3 m2 lot \"A\"\n  glass-twill-163 0.2 m2 lot \"B\"", false)]
    [InlineData("glass-twill-163 0.25 m2 lot \"A\"\n  glass-twill-163 0.2 m2 lot \"A\"", false)]
    public void One_part_is_cut_from_one_lot(string stock, bool fires) =>
        Limits.Says("two-lots", Tray.Hand with { Above = Shelf(stock), PartLines = "trim 15 mm" }, fires, Severity.Advice);

    // Two rolls of one lot are as good as one; what counts is the need of one part, not that of the batch; another cloth's lots do not matter.
    [Theory]
    [InlineData("glass-twill-163 0.15 m2 lot \"A\"\n  glass-twill-163 0.15 m2 lot \"A\"\n  glass-twill-163 0.2 m2 lot \"B\"", "", false)]
    [InlineData("glass-twill-163 0.25 m2 lot \"A\"\n  glass-twill-163 0.25 m2 lot \"B\"\n  glass-twill-163 0.25 m2 lot \"C\"", "quantity 2", true)]
    [InlineData("glass-twill-163 0.4 m2 lot \"A\"\n  glass-twill-163 0.4 m2 lot \"B\"", "quantity 2", false)]
    [InlineData("glass-twill-163 0.25 m2 lot \"A\"\n  glass-twill-163 0.2 m2", "", false)]
    [InlineData("glass-twill-163 0.1 m2 lot \"A\"\n  glass-twill-163 0.1 m2 lot \"B\"", "", false)]
    public void Lots_are_counted_for_one_part(string stock, string quantity, bool fires) =>
        Limits.Says("two-lots", Tray.Hand with { Above = Shelf(stock), PartLines = "trim 15 mm; " + quantity }, fires, Severity.Advice);

    [Fact]
    public void The_largest_lot_is_named_and_the_others_are_shown()
    {
        var tray = Tray.Hand with { Above = Shelf("glass-twill-163 0.2 m2 lot \"small\"\n  glass-twill-163 0.25 m2 lot \"large\""), PartLines = "trim 15 mm" };
        var found = Bench.Fires("two-lots", tray, Severity.Advice);
        Assert.Contains("the largest lot, large, holds 0.25 m2", found.Message, StringComparison.Ordinal);
        Assert.Contains("large", found.Where.Text, StringComparison.Ordinal);
        Assert.Contains("small", Assert.Single(found.Labels, label => label.Text == "other lot").Where.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("our-tape 1.4 m\n  our-tape 1.4 m", true)]
    [InlineData("our-tape 1.6 m\n  our-tape 1.2 m", false)]
    [InlineData("our-tape 0.14 m2\n  our-tape 0.14 m2", true)]
    [InlineData("our-tape 0.16 m2\n  our-tape 0.12 m2", false)]
    public void A_piece_fits_a_roll(string stock, bool fires) => Limits.Says(
        "pieces-do-not-fit-roll",
        Tray.Hand with
        {
            Above = "fabric our-tape like glass-tape-200 { width 10 cm; source \"measured\" }\n" + Shelf(stock),
            Surface = "flat 1500 mm x 60 mm",
            PartLines = "trim 0 mm",
            Plies = "only our-tape 0/90",
        },
        fires);

    // FAA-H-8083-31: 40 to 80 degF.
    [Theory]
    [InlineData("store 40 to 80 degF", "", false)]
    [InlineData("store 81.5 degF", "", true)]
    [InlineData("store 3 degC", "", true)]
    [InlineData("store 20 degC; store-humidity 66 %", "core-1 core pvc-foam-75 thickness 5 mm; ", true)]
    [InlineData("store 20 degC; store-humidity 65 %", "core-1 core pvc-foam-75 thickness 5 mm; ", false)]
    [InlineData("store 20 degC; store-humidity 66 %", "", false)]
    public void A_store_is_cool_and_dry(string shop, string core, bool fires) => Limits.Says(
        "store-out-of-band",
        Tray.Hand with { Shop = shop, Plies = $"outer glass-twill-163 0/90; {core}inner glass-twill-163 0/90" },
        fires);

    [Theory]
    [InlineData("slow-laminating-epoxy 2 kg opened 2024-01-01", "opened-long-ago")]
    [InlineData("general-sealant-tape 30 m received 2024-01-01", "old-tape")]
    public void Without_a_day_nobody_can_tell(string stock, string check)
    {
        var tray = new Tray { Above = Shelf(stock), Bag = "peel-ply; breather; bag-film; sealant-tape" };
        Assert.Contains(Bench.Of(tray.ToString(), dated: false).Report.NotChecked, n => n.Descriptor.Name == check);
    }

    private static string Shelf(string lines) => $"stock {{\n  {lines}\n}}";
}
