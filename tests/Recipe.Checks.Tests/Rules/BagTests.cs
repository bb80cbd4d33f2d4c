using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of the bag's order speak, and when they do not.</summary>
public class BagTests
{
    // FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-6 to 3-8, from the part outwards: porous release cloth over the patch, bleeder, parting
    // film without holes 1 in smaller than the bleeder, thin aluminium sheet (optional), breather, bag film.
    private const string Faa = "release-film perforated; bleeder; release-film solid-film smaller 25 mm; breather; bag-film";
    private const string FaaWithSheet = "release-film perforated; bleeder; release-film solid-film smaller 25 mm; caul; breather; bag-film";

    // US Army TM 1-1500-204-23-11, page files 0045, 0046, 0170 to 0175: peel ply, porous film, bleeder, film without holes, breather, bag.
    private const string Army = "peel-ply; release-film perforated; bleeder; release-film solid-film; breather; bag-film";

    // Trim allowance 15 mm, tape 50 mm out and 12 mm wide: the film must run 47 mm past the plies.
    [Theory]
    [InlineData("beyond 46 mm", "", true)]
    [InlineData("beyond 47 mm", "", false)]
    [InlineData("beyond 40 mm", "trim 25 mm", false)]
    [InlineData("smaller 5 mm", "", true)]
    [InlineData("beyond 10 mm; envelope yes", "", false)]
    [InlineData("", "", false)]
    public void The_film_reaches_the_tape(string edge, string part, bool fires)
    {
        var tray = new Tray { Bag = "peel-ply; release-film perforated; breather; bag-film " + edge, PartLines = part };
        if (fires)
        {
            Bench.Settles("film-short-of-tape", tray.ToString());
        }
        else
        {
            Bench.Silent("film-short-of-tape", tray);
        }
    }

    [Theory]
    [InlineData(Faa)]
    [InlineData(FaaWithSheet)]
    [InlineData(Army)]
    public void What_the_handbooks_lay_earns_no_finding(string bag) => Bench.Clean(new Tray { Bag = bag });

    // Common practice.
    [Theory]
    [InlineData("release-film perforated; breather; bag-film")]
    [InlineData("peel-ply; breather; bag-film")]
    [InlineData("peel-ply; breather x2; bag-film")]
    [InlineData("peel-ply; bleeder; breather; bag-film")]
    [InlineData("peel-ply; release-film solid-film; breather; bag-film")]
    [InlineData("peel-ply; release-film solid-film smaller 15 mm; bleeder; breather; bag-film")]
    [InlineData("peel-ply; breather; bag-film; breather; bag-film")]
    [InlineData("peel-ply; breather; bag-film; caul")]
    public void What_shops_lay_for_good_reasons_earns_no_finding(string bag) => Bench.Clean(new Tray { Bag = bag });

    [Theory]
    [InlineData("bag-film; breather; peel-ply", "bag-upside-down")]
    [InlineData("release-film perforated; peel-ply; breather; bag-film", "film-under-peel-ply")]
    [InlineData("breather; peel-ply; bag-film", "felt-on-laminate")]
    [InlineData("bleeder; breather; bag-film", "felt-on-laminate")]
    [InlineData("release-film solid-film; bleeder; breather; bag-film", "solid-film-blocks-bleed")]
    [InlineData("bag-film", "nothing-under-bag")]
    [InlineData("peel-ply; bag-film", "no-breather")]
    [InlineData("peel-ply; release-film perforated; bag-film; breather", "layer-outside-bag")]
    [InlineData("peel-ply; breather; bag-film; release-film perforated; bleeder", "layer-outside-bag")]
    public void One_mistake_is_one_finding(string bag, string check) =>
        Assert.Equal([check], Bench.Of(new Tray { Bag = bag }.ToString()).All.Select(f => f.Descriptor.Name));

    [Theory]
    [InlineData("paint colour white", Severity.Error)]
    [InlineData("bond \"hinge plate\"", Severity.Error)]
    [InlineData("wash", Severity.Warning)]
    public void A_film_under_the_peel_ply_is_worse_when_something_is_bonded(string finish, Severity severity) =>
        Bench.Fires("film-under-peel-ply", new Tray { Bag = "release-film perforated; peel-ply; breather; bag-film", Finish = finish }, severity);

    [Fact]
    public void A_peel_ply_over_the_film_may_be_the_path_of_the_air() =>
        Bench.Silent("film-under-peel-ply", new Tray { Bag = "release-film perforated; peel-ply; bag-film" });

    [Fact]
    public void A_caul_keeps_the_bag_film_off_the_laminate() => Bench.Silent("nothing-under-bag", new Tray { Bag = "caul; bag-film" });

    [Fact]
    public void Prepreg_is_debulked_under_a_bare_film() =>
        Bench.Silent("nothing-under-bag", new Tray { Process = "prepreg", Bag = "bag-film" });

    [Theory]
    [InlineData("flow-medium; bag-film", true)]
    [InlineData("flow-medium; peel-ply; bag-film", true)]
    [InlineData("peel-ply; flow-medium smaller 40 mm; bag-film", false)]
    [InlineData("release-film perforated; flow-medium smaller 40 mm; bag-film", false)]
    public void A_flow_medium_lies_on_a_peel_ply_or_a_film(string bag, bool fires)
    {
        var tray = Tray.Infused with { Bag = bag };
        if (fires)
        {
            Bench.Fires("bare-flow-medium", tray, Severity.Warning);
        }
        else
        {
            Bench.Clean(tray);
        }
    }
}
