using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of mould and release speak, and when they do not.</summary>
public class MouldTests
{
    private static readonly Tray Bare = Tray.Hand with { Release = "" };

    [Fact]
    public void The_tray_of_these_tests_is_sound()
    {
        Bench.Clean(new Tray());
        Bench.Clean(Tray.Hand);
        Bench.Clean(Tray.Infused);
    }

    [Fact]
    public void A_mould_without_release_holds_on_to_the_part()
    {
        var found = Bench.Fires("no-release", Bare, Severity.Error);
        Assert.Equal("nothing releases tray from tray-mould, made of epoxy-glass-tooling", found.Message);
        Bench.Fires("no-release", Bare with { MouldLines = "release { }" }, Severity.Error);
    }

    [Fact]
    public void What_has_to_hold_is_not_waxed()
    {
        var waxed = Tray.Hand with { MouldLines = "stays-in-part yes" };
        Assert.Equal("carnauba-wax on tray-mould, which stays in tray", Bench.Fires("released-what-stays", waxed, Severity.Error).Message);
        Bench.Silent("released-what-stays", waxed with { MouldLines = "stays-in-part no" });
        Bench.Settles("released-what-stays", waxed.ToString());
    }

    [Theory]
    [InlineData("flat 500 m x 300 m", "tray-mould is 500 m over its longer side; were millimetres meant?", "flat 500 mm x 300 mm")]
    [InlineData("cylinder diameter 104m length 500m", "tray-mould is 500 m over its longer side; were millimetres meant?", "cylinder diameter 104mm length 500mm")]
    [InlineData("flat 12.1 m x 300 mm", "tray-mould is 12.1 m over its longer side; were millimetres meant?", null)]
    [InlineData("flat 12 m x 300 mm", null, null)]
    [InlineData("flat 20 mm x 20 mm", null, null)]
    [InlineData("flat 19 mm x 15 mm", "tray-mould is 19 mm over its longer side; were metres meant?", null)]
    [InlineData("flat 0.6 mm x 0.4 mm", "tray-mould is 0.6 mm over its longer side; were metres meant?", "flat 0.6 m x 0.4 m")]
    public void A_mould_has_the_size_of_a_mould(string surface, string? said, string? mended)
    {
        var text = (Tray.Hand with { Surface = surface }).ToString();
        var found = Bench.Of(text, checks: Bench.Only("mould-size-slip")).Report.Findings.SingleOrDefault();
        Assert.Equal(said, found?.Message);
        var fix = found?.Fixes.SingleOrDefault();
        Assert.Equal(mended is not null, fix is not null);
        if (fix is not null)
        {
            Assert.Equal(text.Replace(surface, mended, StringComparison.Ordinal), TextEdit.Apply(fix.Edits[0].Where.Source, fix.Edits));
        }
    }

    // One slip is one finding; a reason that accepts it lets the rest speak.
    [Fact]
    public void What_follows_from_a_slip_of_size_waits_until_it_is_settled()
    {
        var hall = Tray.Hand with { Surface = "flat 40 m x 3 m" };
        var report = Bench.Of(hall.ToString()).Report;
        Assert.Equal("RC2126", Assert.Single(report.Findings).Descriptor.Code);
        Assert.Equal(Severity.Error, report.Findings[0].Severity);
        Assert.Contains(report.NotChecked, note => note.Descriptor.Code == "RC2126" && note.Missing.StartsWith("what else is found of tray, ", StringComparison.Ordinal));

        var meant = Bench.Of((hall with { PartLines = "accept RC2126 because \"a hull of 40 m\"" }).ToString()).Report;
        Assert.Contains(meant.Findings, finding => finding.Descriptor.Name == "wider-than-roll");
        Assert.DoesNotContain(meant.NotChecked, note => note.Descriptor.Code == "RC2126");
    }

    [Fact]
    public void Nothing_waits_for_a_slip_that_the_shop_holds_to_be_milder()
    {
        var hall = (Tray.Hand with { Surface = "flat 40 m x 3 m" }).ToString();
        var report = Bench.Of("findings {\n  mould-size-slip  advice\n}\n" + hall).Report;
        Assert.Contains(report.Findings, finding => finding.Descriptor.Code == "RC2126" && finding.Severity == Severity.Advice);
        Assert.Contains(report.Findings, finding => finding.Descriptor.Name == "wider-than-roll");
    }

    [Fact]
    public void Safety_waits_for_nothing()
    {
        var pot = Tray.Hand with { Resin = "fast-laminating-epoxy", WetOut = "pot 600 g", Surface = "flat 40 m x 3 m" };
        Assert.Contains(Bench.Of(pot.ToString()).Report.Findings, finding => finding.Descriptor.Name == "runaway-pot");
    }

    // Common practice: polypropylene and silicone let go by themselves; what stays in the part need not come off it.
    [Fact]
    public void What_lets_go_by_itself_or_stays_in_the_part_needs_no_release()
    {
        Bench.Clean(Bare with { MadeOf = "polypropylene-sheet" });
        Bench.Clean(Bare with { MouldLines = "stays-in-part yes" });
        Bench.Fires("no-release", Bare with { MouldLines = "stays-in-part no" }, Severity.Error);
        Bench.Clean(Tray.Hand with
        {
            Above = "release-agent release-sheet { kind sheet; source \"data sheet\" }",
            Release = "release-sheet",
        });
    }

    [Theory]
    [InlineData("new", "carnauba-wax coats 3 wait 30 min", true)]
    [InlineData("new", "carnauba-wax coats 4 wait 30 min", false)]
    [InlineData("repaired", "carnauba-wax coats 3 wait 30 min", true)]
    [InlineData("seasoned", "carnauba-wax coats 1 wait 30 min", false)]
    [InlineData("new", "carnauba-wax coats 3 wait 30 min; pva-film coats 1 wait 30 min dry 40 min", false)]
    [InlineData("new", "carnauba-wax coats 2 wait 30 min; pva-film coats 1 wait 30 min dry 40 min", true)]
    [InlineData("new", "carnauba-wax coats 2 wait 30 min; semi-permanent-release coats 4", false)]
    public void A_new_face_wants_four_coats_of_wax_or_three_under_a_film(string state, string release, bool fires) =>
        Limits.Says("few-wax-coats", new Tray { MouldLines = "state " + state, Release = release }, fires, Severity.Warning);

    [Theory]
    [InlineData("carnauba-wax coats 5 wait 19 min", true)]
    [InlineData("carnauba-wax coats 5 wait 20 min", false)]
    [InlineData("carnauba-wax coats 1 wait 5 min", false)]
    [InlineData("quick-wax coats 5 wait 10 min", false)]
    public void Coats_of_wax_follow_each_other_after_twenty_minutes_or_as_the_maker_says(string release, bool fires) =>
        Limits.Says(
            "wax-coats-too-close",
            new Tray { Above = "release-agent quick-wax like carnauba-wax { wait 10 min source \"data sheet\" }", Release = release },
            fires,
            Severity.Warning);

    [Theory]
    [InlineData("dry 9 min", "", Severity.Error)]
    [InlineData("dry 29 min", "", Severity.Warning)]
    [InlineData("dry 30 min", "", null)]
    [InlineData("dry 59 min", "humidity 75 %", Severity.Warning)]
    [InlineData("dry 60 min", "humidity 75 %", null)]
    [InlineData("dry 30 min", "humidity 65 %", null)]
    [InlineData("dry 45 min", "room 14 degC", Severity.Warning)]
    public void A_film_dries_half_an_hour_and_twice_that_in_cold_or_damp_air(string dry, string air, Severity? severity)
    {
        var tray = new Tray { Release = "carnauba-wax coats 5 wait 30 min; slow-film coats 1 " + dry, WetOut = air, Above = SlowFilm };
        Limits.Says("film-not-dry", tray, severity is not null, severity ?? Severity.Warning);
    }

    private const string SlowFilm =
        "release-agent slow-film { kind liquid-film; coats 1; wait 30 min; dry 90 min; heat-limit 121 degC; source \"data sheet\" }";

    [Fact]
    public void A_film_whose_maker_says_less_may_dry_less() => Bench.Silent("film-not-dry", new Tray
    {
        Above = "release-agent quick-film like pva-film { dry 12 min source \"data sheet\" }",
        Release = "carnauba-wax coats 5 wait 30 min; quick-film coats 1 dry 12 min",
    });

    // FAA AC 43.13-1B (1998) paragraph 3-4a(1): PVA film stands 250 degF (121 degC).
    [Theory]
    [InlineData("250 degF", false)]
    [InlineData("255 degF", true)]
    public void Pva_film_stands_what_the_handbook_says(string peak, bool fires)
    {
        var tray = Hot($"hold {peak} for 2 h; cool to 30 degC; demould") with { Release = "semi-permanent-release; pva-film coats 1 dry 40 min" };
        Limits.Says("release-too-hot", tray, fires, Severity.Error);
    }

    [Fact]
    public void A_post_cure_after_demoulding_does_not_heat_the_release() =>
        Bench.Silent("release-too-hot", Hot("demould; hold 100 degC for 2 h; cool to 30 degC"));

    private static Tray Hot(string after) => Tray.Hand with { MadeOf = "aluminium", Cure = "hold 20 degC for 24 h; " + after };
}
