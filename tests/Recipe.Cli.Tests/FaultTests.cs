using System.Diagnostics;
using System.Text;

namespace Recipe.Cli.Tests;

/// <summary>What goes wrong outside the program: the file, the reason and what to do are said, the status says it too, and nothing is lost.</summary>
[System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
public sealed class FaultTests
{
    private static readonly string HatchLid = Bench.Sample("samples/hatch-lid.recipe");

    [Fact]
    public void A_link_that_leads_nowhere_is_said_to_be_one()
    {
        using var bench = new Bench();
        File.CreateSymbolicLink(bench.PathOf("lid.recipe"), "gone.recipe");
        Refused(Bench.Run("check", bench.PathOf("lid.recipe")), "lid.recipe is a link to gone.recipe, and that is not there.");
        Refused(Bench.Run("check", bench.Folder), "is a link to gone.recipe");
    }

    [Fact]
    public void Links_that_lead_in_a_circle_are_said_to()
    {
        using var bench = new Bench();
        File.CreateSymbolicLink(bench.PathOf("a.recipe"), "b.recipe");
        File.CreateSymbolicLink(bench.PathOf("b.recipe"), "a.recipe");
        Refused(Bench.Run("check", bench.PathOf("a.recipe")), "its symbolic links lead round in a circle.");
        Refused(Bench.Run("build", bench.PathOf("a.recipe"), "--out", bench.PathOf("out")), "in a circle");
        Refused(Bench.Run("fmt", bench.PathOf("a.recipe")), "in a circle");
    }

    [Fact]
    public void A_folder_that_leads_back_to_itself_is_looked_through_once()
    {
        using var bench = new Bench();
        bench.Write("below/lap.recipe", "let lap = 20 mm\n");
        Directory.CreateSymbolicLink(bench.PathOf("below/round"), "..");
        var run = Bench.Run("check", bench.Folder, "--recurse");
        Assert.Equal(ExitStatus.Clean, run.Status);
        Assert.StartsWith("1 file:", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_with_the_name_of_a_recipe_is_no_recipe()
    {
        using var bench = new Bench();
        Directory.CreateDirectory(bench.PathOf("lid.recipe"));
        Refused(Bench.Run("check", bench.PathOf("lid.recipe")), "there is no .recipe file in");
        bench.Write("user.recipe", "use \"lid.recipe\"\n");
        Assert.Contains("RC1207", Bench.Run("check", bench.PathOf("user.recipe")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pipe_that_nobody_writes_into_does_not_hold_a_folder_up()
    {
        using var bench = new Bench();
        RealProgram.Shell(bench.Folder, "mkfifo waits.recipe");
        bench.Write("lap.recipe", "let lap = 20 mm\n");
        Assert.Equal(ExitStatus.Clean, Bench.Run("check", bench.Folder).Status);
        bench.Write("user.recipe", "use \"waits.recipe\"\nmould m {\n  surface mesh \"waits.recipe\" unit mm\n}\npart p {\n  mould m\n}\n");
        Assert.Contains("RC2123", Bench.Run("check", bench.PathOf("user.recipe")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_device_that_never_ends_is_refused_after_the_largest_file_there_may_be() =>
        Refused(Bench.Run("check", "/dev/zero"), "/dev/zero is larger than 16 MB");

    [Fact]
    public void A_file_past_the_limit_is_refused_unread()
    {
        using var bench = new Bench();
        var path = bench.PathOf("large.recipe");
        using (var file = File.Create(path))
        {
            file.SetLength(100L << 20);
        }

        Refused(Bench.Run("check", path), "large.recipe is larger than 16 MB");
        Refused(Bench.Run("fmt", path), "large.recipe is larger than 16 MB");
    }

    [Fact]
    public void A_file_of_somebody_else_is_named_and_never_shown()
    {
        using var bench = new Bench();
        bench.Write("secret.txt", "root:x:0:0:the very secret:/root:/bin/sh\n");
        bench.Write("a/b/lid.recipe", "use \"../../secret.txt\"\nmould m {\n  surface mesh \"../../secret.txt\" unit mm\n}\npart p {\n  mould m\n}\n");
        foreach (var format in (string[])["text", "json", "sarif", "junit", "annotations"])
        {
            var run = Bench.Run("check", bench.PathOf("a/b/lid.recipe"), "--format", format);
            Assert.Equal(ExitStatus.Findings, run.Status);
            Assert.DoesNotContain("very secret", run.Out + run.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Bytes_that_are_no_text_are_never_written_over()
    {
        using var bench = new Bench();
        var path = bench.PathOf("latin.recipe");
        var bytes = Encoding.Latin1.GetBytes("let lap = 20 mm\npart p {\n title \"R\u00e9sine\"\n}\n");
        File.WriteAllBytes(path, bytes);
        Refused(Bench.Run("fmt", path), "latin.recipe is not UTF-8 (line 3), so it was left as it is.");
        Assert.Equal(bytes, File.ReadAllBytes(path));
        File.WriteAllBytes(path, [.. bytes, .. "title \"a\n"u8]);
        Bench.Run("check", path, "--fix");
        Assert.Contains((byte)0xE9, File.ReadAllBytes(path));
    }

    // Latin-1 writes the letter as the one byte E9, which begins a sequence of three in UTF-8 (RFC 3629).
    [Fact]
    public void Bytes_that_are_no_text_are_shown_where_they_stand()
    {
        using var bench = new Bench();
        File.WriteAllBytes(bench.PathOf("latin.recipe"), Encoding.Latin1.GetBytes("part tray {\n  title \"R\u00e9sine\"\n  process hand\n}\n"));
        var run = bench.RunHere("check", "latin.recipe");
        Assert.Equal(ExitStatus.Findings, run.Status);
        Assert.StartsWith("error RC1027 not-utf8: what stands here is lost: the file is not UTF-8", run.Out, StringComparison.Ordinal);
        Assert.Contains(" latin.recipe:2:11\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("title \"R\uFFFDsine\"\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("Save the file as UTF-8", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a 1\r\nb 2\r\n")]
    [InlineData("\ufeffa 1\nb 2\n")]
    public void Line_ends_and_a_mark_are_kept(string text)
    {
        using var bench = new Bench();
        var path = bench.Write("kept.recipe", text);
        Bench.Run("fmt", path);
        Assert.Equal(text, Encoding.UTF8.GetString(File.ReadAllBytes(path)));
    }

    [Fact]
    public void Nul_and_what_no_text_has_is_found_and_not_obeyed()
    {
        using var bench = new Bench();
        var path = bench.Write("nul.recipe", "let a\0b = 1 mm\nlet c = 2 \u001b[2Jmm\n");
        var run = Bench.Run("check", path);
        Assert.Equal(ExitStatus.Findings, run.Status);
        Assert.DoesNotContain(run.Out, c => char.IsControl(c) && c != '\n');
    }

    [Fact]
    public void What_a_terminal_would_obey_never_reaches_it()
    {
        using var bench = new Bench();
        const string evil = "\u001b]0;pwned\u0007\u001b[31m\u009b2J\u202e";
        var path = bench.Write("evil.recipe", $"part \"{evil}\" {{\n  title \"{evil}\"\n  accept no-plies because \"{evil}\"\n  mould \"{evil}\"\n}}\npart p {{\n  title \"{evil}\"\n  accept no-plies because \"{evil}\"\n}}\n");
        foreach (var run in (Outcome[])[Bench.Run("check", path), Bench.Run("check", path, "--format", "annotations"), Bench.Run("build", path), Bench.Run("check", bench.PathOf(evil)), Bench.Run("explain", evil), Bench.Run("check", "--" + evil), Bench.Run("shape", path, evil)])
        {
            Assert.DoesNotContain(run.Out + run.Error, c => (char.IsControl(c) && c != '\n') || c == '\u202e');
        }
    }

    [Fact]
    public void A_link_keeps_being_one_and_what_it_points_to_keeps_its_permissions()
    {
        using var bench = new Bench();
        var real = bench.Write("real/lap.recipe", "let   lap = 20 mm\n");
        File.SetUnixFileMode(real, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.CreateSymbolicLink(bench.PathOf("lap.recipe"), "real/lap.recipe");
        Assert.Equal(ExitStatus.Clean, Bench.Run("fmt", bench.PathOf("lap.recipe")).Status);
        Assert.Equal("real/lap.recipe", new FileInfo(bench.PathOf("lap.recipe")).LinkTarget);
        Assert.Equal("let lap = 20 mm\n", File.ReadAllText(real));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(real));
    }

    [Fact]
    public void A_write_protected_file_is_not_replaced()
    {
        using var bench = new Bench();
        var path = bench.Write("lap.recipe", "let   lap = 20 mm\n");
        File.SetUnixFileMode(path, UnixFileMode.UserRead);
        Refused(Bench.Run("fmt", path), "lap.recipe is write-protected; nothing was written.");
        Assert.Equal("let   lap = 20 mm\n", File.ReadAllText(path));
    }

    [Fact]
    public void Standard_output_on_a_full_disk_or_closed_is_said_in_one_line()
    {
        using var bench = new Bench();
        bench.Write("lap.recipe", "let lap = 20 mm\n");
        var full = RealProgram.Shell(bench.Folder, "$recipe check lap.recipe > /dev/full");
        Refused(full, "standard output cannot be written: the disk is full.");
        Refused(RealProgram.Shell(bench.Folder, "$recipe check lap.recipe >&-"), "standard output cannot be written: it is closed.");
        Assert.Equal("", RealProgram.Shell(bench.Folder, "$recipe explain RC1001 | head -n 1 > /dev/null").Error);
    }

    [Fact]
    public void A_disk_that_fills_up_leaves_the_old_papers()
    {
        using var bench = new Bench();
        bench.Write("out/hatch-lid.takeoff.md", "old");

        // 8 blocks of 512 bytes for each file: what is longer cannot be written.
        var run = RealProgram.Shell(bench.Folder, $"ulimit -f 8; trap '' XFSZ; $recipe build '{HatchLid}' --out out", ("DOTNET_EnableDiagnostics", "0"), ("DOTNET_EnableWriteXorExecute", "0"));
        Refused(run, "could not be written: ");
        Assert.Equal("old", File.ReadAllText(bench.PathOf("out/hatch-lid.takeoff.md")));
        Assert.Single(new DirectoryInfo(bench.PathOf("out")).GetFileSystemInfos());
    }

    [Fact]
    public void A_build_that_is_ended_leaves_nothing_half_written()
    {
        using var bench = new Bench();
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "recipe.dll"), "build", HatchLid, "--out", bench.PathOf("out")]) { RedirectStandardOutput = true };
        using var build = Process.Start(start)!;
        while (!build.HasExited && !(Directory.Exists(bench.PathOf("out")) && Directory.EnumerateFiles(bench.PathOf("out"), ".*.tmp").Any()))
        {
            Thread.Sleep(1);
        }

        RealProgram.Shell(bench.Folder, $"kill -TERM {build.Id} || true");
        build.WaitForExit();

        // Either the signal came first and there is nothing, or the papers were all there already: as many as a build leaves that nobody ends.
        Assert.Equal(0, Bench.Run("build", HatchLid, "--out", bench.PathOf("whole")).Status);
        var all = Directory.GetFiles(bench.PathOf("whole")).Length;
        var left = Directory.GetFiles(bench.PathOf("out")).Select(path => Path.GetFileName(path)!).ToList();
        Assert.DoesNotContain(left, name => name.EndsWith(".tmp", StringComparison.Ordinal));
        Assert.True(build.ExitCode == 143 ? left.Count == 0 || left.Count == all : build.ExitCode == 0, $"status {build.ExitCode}, {left.Count} files of {all}");
    }

    [Fact]
    public void Two_builds_into_one_folder_leave_the_papers_of_one()
    {
        using var bench = new Bench();
        bench.Write("shop.recipe", File.ReadAllText(Bench.Sample("samples/shop.recipe")));
        bench.Write("one.recipe", File.ReadAllText(HatchLid));
        bench.Write("other.recipe", File.ReadAllText(HatchLid) + "\nlet other = 1 mm\n");
        var run = RealProgram.Shell(bench.Folder, string.Concat(((string[])["one", "other", "one", "other"]).Select(name => $"$recipe build {name}.recipe --out out --part hatch-lid --format json --undated & ")) + "wait");
        Assert.Equal("", run.Error);
        var revisions = new HashSet<string>();
        foreach (var paper in Directory.GetFiles(bench.PathOf("out"), "*.json"))
        {
            revisions.Add(System.Text.Json.Nodes.JsonNode.Parse(File.ReadAllText(paper))!["revision"]!.ToString());
        }

        Assert.Single(revisions);
        Assert.Empty(Directory.GetFiles(bench.PathOf("out"), ".*"));
    }

    [Fact]
    public void A_user_without_a_home_is_served()
    {
        using var bench = new Bench();
        bench.Write("lap.recipe", "let lap = 20 mm\n");
        foreach (var environment in (string?[][])[[null, null, null], ["/nonexistent", "/proc/none", "relative"]])
        {
            var run = RealProgram.Shell(bench.Folder, "$recipe check lap.recipe", ("HOME", environment[0]), ("XDG_CACHE_HOME", environment[1]), ("XDG_CONFIG_HOME", environment[2]), ("DOTNET_CLI_HOME", bench.Folder));
            Assert.Equal((ExitStatus.Clean, ""), (run.Status, run.Error));
        }
    }

    [Fact]
    public void Any_locale_gives_the_same_bytes()
    {
        using var bench = new Bench();
        var texts = ((string[])["C", "tr_TR.UTF-8", "de_DE.UTF-8", "ar_SA.UTF-8", "th_TH.UTF-8"])
            .Select(locale => RealProgram.Shell(bench.Folder, $"$recipe build '{HatchLid}' --undated --part hatch-lid --paper traveller takeoff --format md csv json --out papers && cat papers/*", ("LC_ALL", locale), ("LANG", locale)).Out);
        Assert.Single(texts.Distinct(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("x1001", "it must be at most x1000")]
    [InlineData("x1000000", "it must be at most x1000")]
    [InlineData("x99999999999999999999", "it must be at most x1000")]
    public void More_repeats_than_anybody_lays_are_refused(string times, string said)
    {
        using var bench = new Bench();
        var path = bench.Write("thick.recipe", $"part p {{\n  plies {{\n    a glass-twill-280 0/90 {times}\n  }}\n}}\n");
        Assert.Contains(said, Bench.Run("check", path).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void More_plies_than_anybody_lays_are_left_out_and_that_is_said()
    {
        using var bench = new Bench();
        var path = bench.Write("thick.recipe", $"part p {{\n  plies {{\n{string.Concat(Enumerable.Range(0, 1_500).Select(i => $"    ply{i} glass-twill-280 0/90 x1000\n"))}  }}\n}}\n");
        Assert.Contains("These are 1500000 plies; 1000 is the most that one part may have.", Bench.Run("check", path).Out, StringComparison.Ordinal);
    }

    private static void Refused(Outcome run, string reason)
    {
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
        Assert.StartsWith("recipe: ", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }
}
