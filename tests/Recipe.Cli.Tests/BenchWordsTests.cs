namespace Recipe.Cli.Tests;

/// <summary>What a recipe writes down of mixing, prepreg, safety and pulling stands on the paper of its station.</summary>
public sealed class BenchWordsTests
{
    [Fact]
    public void The_order_of_mixing_and_what_is_weighed_besides_stand_at_the_scale()
    {
        using var bench = new Bench();
        var path = bench.Write("tray.recipe", """
            shop ours {
              safety {
                gloves    "nitrile, changed on every splash"
                leftover  tray
              }
            }

            mould tray-mould {
              surface   flat 400 mm x 300 mm
              made-of   epoxy-glass-tooling
              pull-aid  "air port in the floor"
              release {
                carnauba-wax  coats 5   wait 30 min
              }
            }

            part tray {
              mould    tray-mould
              process  hand
              resin    slow-laminating-epoxy
              plies {
                outer  glass-twill-163  0/90
                inner  glass-twill-163  0/90
              }
              wet-out {
                pot  130 g
              }
              mix {
                add         resin
                add         pigment parts 4
                add         hardener
                stir        3 min
                scrape
                second-cup
              }
              cure {
                hold  20 degC for 48 h
                demould
              }
            }
            """);
        var run = Bench.Run("build", path, "--out", bench.PathOf("papers"), "--format", "md");
        Assert.Equal("", run.Error);
        var (traveller, cards) = (Paper(bench, "traveller"), Paper(bench, "mix-cards"));
        InOrder(cards, "Pour ● A", "Add the pigment.", "Add hardener, ■ B.", "Stir.", "Scrape sides", "second clean cup", "Mixed at");

        // 130 g of 100:30 by weight are 100 g of resin and 30 g of hardener, so 4 parts are 4 g; each weighing begins at zero.
        Assert.Matches(@"Add the pigment\.[^\n]*\b4(\.0)?\s*g[^\n]*4 parts to 100 of A", cards);
        Assert.Matches(@"to zero\. Add hardener, ■ B\.[^\n]*\b30(\.0)?\s*g", cards);
        Assert.Contains("nitrile, changed on every splash", traveller, StringComparison.Ordinal);
        Assert.Contains("spread thin in the tray", traveller, StringComparison.Ordinal);
        Assert.Contains("Use the air port in the floor.", traveller, StringComparison.Ordinal);
    }

    // Common practice: the accelerator is stirred into the resin first, the peroxide comes last; the paper must not say otherwise.
    [Fact]
    public void Peroxide_is_poured_after_the_accelerator_is_stirred_in()
    {
        using var bench = new Bench();
        var path = bench.Write("tray.recipe", """
            mould tray-mould {
              surface  flat 400 mm x 300 mm
              made-of  epoxy-glass-tooling
              release {
                carnauba-wax  coats 5   wait 30 min
              }
            }

            part tray {
              mould    tray-mould
              process  hand
              resin    orthophthalic-polyester
              plies {
                outer  glass-twill-163  0/90
                inner  glass-twill-163  0/90
              }
              mix {
                add     resin
                add     accelerator parts 0.5
                stir    2 min
                add     hardener
                stir    3 min
                scrape
              }
              cure {
                hold  20 degC for 48 h
                demould
              }
            }
            """);
        Bench.Run("build", path, "--out", bench.PathOf("papers"), "--format", "md");
        var cards = Paper(bench, "mix-cards");
        InOrder(cards, "Pour ● A", "Add the accelerator.", "0.5 parts to 100 of A", "Stir.", "Add the peroxide, ■ B.", "Stir.");
        Assert.DoesNotContain("if it is not in already", cards, StringComparison.Ordinal);
    }

    [Fact]
    public void How_a_prepreg_is_handled_stands_before_its_first_ply()
    {
        using var bench = new Bench();
        var sound = File.ReadAllText(Bench.Sample("tests/corpus/sound/prepreg-plate.recipe"));
        var path = bench.Write("plate.recipe", sound.Replace("  bag {", """
              prepreg {
                thaw      12 h sealed
                out-time  5 d
                debulk    every 3 for 15 min
                edges     breathing
              }

              bag {
            """, StringComparison.Ordinal));
        Bench.Run("build", path, "--out", bench.PathOf("papers"), "--format", "md");
        var card = Paper(bench, "lay-up");
        Assert.Contains("Let it warm up in its sealed wrap", card, StringComparison.Ordinal);
        Assert.Contains("then after every 3", card, StringComparison.Ordinal);
        Assert.InRange(card.IndexOf("Before the first ply", StringComparison.Ordinal), card.IndexOf("Ply 1 goes in first", StringComparison.Ordinal), card.Length);
    }

    // Words: common practice. A twill of 830 mm x 141 mm lies across its roll of 1 m, where two take 286 mm of it instead of 830 mm: warp and weft are alike, and the list says 90 degrees.
    [Theory]
    [InlineData("samples/telescope-tube.recipe", "straight off the mandrel", "**A** (ply 1)")]
    [InlineData("tests/corpus/sound/tube-tapered-sprit.recipe", "over the thin end", null)]
    [InlineData("tests/corpus/sound/tube-sheet-release.recipe", "straight off the mandrel", "**B** (ply 2)")]
    public void What_is_wrapped_round_a_mandrel_has_papers_without_corners_tape_land_and_wedges(string recipe, string own, string? turned)
    {
        using var bench = new Bench();
        var run = Bench.Run("build", Bench.Sample(recipe), "--out", bench.PathOf("papers"), "--format", "md");
        Assert.Equal("", run.Error);
        var papers = Directory.GetFiles(bench.PathOf("papers"), "*.md").Order(StringComparer.Ordinal).Select(File.ReadAllText).ToList();
        Assert.True(papers.Count > 8);
        var all = string.Join('\n', papers).Replace('\u00A0', ' ');
        foreach (var word in (string[])["Ply 1 goes in first", "tool face", "corners down", "at a corner", "tape land", "wedge", "flange", "mould side", "by width at", "from rim", "the rim"])
        {
            Assert.DoesNotContain(word, all, StringComparison.OrdinalIgnoreCase);
        }

        foreach (var word in (string[])[own, "Ply 1 goes on first, against the mandrel", "push with a ring bearing on the whole end", "Outside diameter", "12 is the lap of the last ply", "a trim line near each end"])
        {
            Assert.Contains(word, all, StringComparison.Ordinal);
        }

        var rows = all.Split('\n').Where(line => line.Contains("turned on the roll: warp and weft are alike", StringComparison.Ordinal)).ToList();
        Assert.Equal(turned is not null, rows.Any(row => row.StartsWith($"| {turned}", StringComparison.Ordinal)));
        Assert.All(rows, row => Assert.Contains("| 90° |", row, StringComparison.Ordinal));
    }

    private static string Paper(Bench bench, string kind) => File.ReadAllText(Directory.GetFiles(bench.PathOf("papers"), $"*.{kind}.md").Single());

    private static void InOrder(string text, params string[] words)
    {
        var at = 0;
        foreach (var word in words)
        {
            var next = text.IndexOf(word, at, StringComparison.Ordinal);
            Assert.True(next >= 0, $"'{word}' does not follow\n{text}");
            at = next + word.Length;
        }
    }
}
