namespace Recipe.Cli.Tests;

/// <summary><c>recipe check --fix</c>, and the settings of a folder.</summary>
public sealed class FixVerbTests
{
    private const string Head = """
        mould tray-mould {
          surface  flat 400 mm x 300 mm
          made-of  epoxy-glass-tooling
          release {
            carnauba-wax  coats 5   wait 30 min
          }
        }

        """;

    private const string Part = """
        part tray {
          mould    tray-mould
          process  hand
          resin    slow-laminating-epoxy
          plies {
            outer  glass-twill-163  0/90
            inner  glass-twill-163  0/90
          }
          mix {
            add   resin
            add   hardener
            stir  1 min          # in a hurry
            cup   waxed
          }
          cure {
            hold  20 degC for 48 h
            demould
          }
        }

        """;

    [Fact]
    public void Safe_fixes_are_made_until_none_is_left_and_comments_stay()
    {
        using var bench = new Bench();
        var path = bench.Write("tray.recipe", Head + Part);
        var run = Bench.Run("check", path, "--fix");
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.Contains("RC4108 unclean-cup: Take a clean cup", run.Out, StringComparison.Ordinal);
        Assert.EndsWith("nothing wrong found\n", run.Out, StringComparison.Ordinal);
        var text = File.ReadAllText(path);
        Assert.Contains("stir  3 min          # in a hurry", text, StringComparison.Ordinal);
        Assert.Contains("scrape", text, StringComparison.Ordinal);
        Assert.Contains("cup   clean", text, StringComparison.Ordinal);
        Assert.DoesNotContain("fixed ", Bench.Run("check", path, "--fix").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_option_nothing_is_changed_and_what_needs_a_look_is_left()
    {
        using var bench = new Bench();
        var path = bench.Write("tray.recipe", Head + Part);
        Bench.Run("check", path);
        Assert.Equal(Head + Part, File.ReadAllText(path));
        var look = bench.Write("look.recipe", Head.Replace("release {", "tape-land  released\n  release {", StringComparison.Ordinal)
            + Part.Replace("process  hand", "process  bagged", StringComparison.Ordinal).Replace("  mix {", "  bag {\n    peel-ply\n    release-film perforated\n    breather\n    bag-film\n  }\n  mix {", StringComparison.Ordinal));
        Bench.Run("check", look, "--fix");
        Assert.Contains("tape-land  released", File.ReadAllText(look), StringComparison.Ordinal);
    }

    [Fact]
    public void The_settings_of_a_folder_reach_the_folders_below_it()
    {
        using var bench = new Bench();
        var path = bench.Write("lids/tray.recipe", Head + Part);
        Assert.Contains("warning RC4108", Bench.Run("check", path).Out, StringComparison.Ordinal);
        bench.Write("settings.recipe", "findings {\n  unclean-cup  error\n}\n");
        var run = Bench.Run("check", path);
        Assert.Contains("error RC4108", run.Out, StringComparison.Ordinal);
        Assert.Equal(ExitStatus.Findings, run.Status);
        bench.Write("lids/settings.recipe", "findings {\n  unclean-cup  advice\n}\n");
        Assert.Contains("advice RC4108", Bench.Run("check", path).Out, StringComparison.Ordinal);
    }
}
