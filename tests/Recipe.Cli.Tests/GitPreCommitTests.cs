namespace Recipe.Cli.Tests;

/// <summary><c>recipe git pre-commit</c>: looks at what is staged.</summary>
public sealed class GitPreCommitTests : IDisposable
{
    private const string Lid = "hatch-lid.recipe";
    private readonly Repo _repo = Repo.OfHatchLid();

    public void Dispose() => _repo.Dispose();

    [Fact]
    public void The_hook_refuses_a_bad_recipe_and_lets_a_sound_one_through()
    {
        Assert.Equal(0, _repo.Bench.RunHere("git", "setup", "--write", "--hook").Status);
        _repo.Change(Lid, "hold           50 degC for 16 h", "hold           90 degC for 16 h");
        _repo.Git("add", "--all");
        var run = _repo.TryGit("commit", "--message", "Too hot");
        Assert.Equal(1, run.Status);
        Assert.Contains("error RC", run.Out + run.Error, StringComparison.Ordinal);
        Assert.Contains("Not committed.", run.Out + run.Error, StringComparison.Ordinal);
        Assert.Single(_repo.Git("log", "--format=%s").Split('\n', StringSplitOptions.RemoveEmptyEntries));

        _repo.Change(Lid, "hold           90 degC for 16 h", "hold           50 degC for 17 h");
        _repo.Git("add", "--all");
        _repo.Git("commit", "--message", "Longer");
    }

    [Fact]
    public void What_is_staged_counts_and_not_what_stands_on_disk()
    {
        _repo.Change(Lid, "quantity  4", "quantity  5");
        _repo.Git("add", Lid);
        _repo[Lid] = "part {{{";
        Check(0, "1 file, 2 parts, 2 build records: nothing wrong found");

        // The other way round: bad in the index, mended on disk.
        _repo.Git("add", Lid);
        _repo[Lid] = _repo.Git("show", "HEAD:" + Lid);
        Check(1, "error RC");
    }

    [Fact]
    public void Nothing_staged_is_nothing_to_say()
    {
        _repo[Lid] = "part {{{";
        _repo["note.txt"] = "no recipe";
        _repo.Git("add", "note.txt");
        Assert.Equal(new Outcome(0, "", ""), _repo.Bench.RunHere("git", "pre-commit"));
    }

    [Fact]
    public void Files_that_use_what_is_staged_are_checked_too()
    {
        _repo["tray/tray.recipe"] = "use \"../lap.recipe\"\n\npart tray {\n  overlap  lap\n}\n";
        _repo["lap.recipe"] = "let lap = 20 mm\n";
        _repo.Commit("A tray");
        _repo["lap.recipe"] = "let lap = 20 g\n";
        _repo.Git("add", "lap.recipe");
        Check(1, "--> tray/tray.recipe:4:");

        _repo.Git("rm", "--quiet", "--force", "lap.recipe");
        Check(1, "--> tray/tray.recipe:1:");

        // A change of its own file is not needed, but its own error counts only when it is touched.
        _repo.Git("reset", "--quiet", "--hard");
        _repo["tray/tray.recipe"] = "part tray {\n  overlap  20 g\n}\n";
        _repo.Commit("Broken");
        _repo.Change(Lid, "quantity  4", "quantity  5");
        _repo.Git("add", "--all");
        Check(0, "1 file, 2 parts, 2 build records: nothing wrong found");
    }

    [Fact]
    public void Settings_count_for_the_files_below_them()
    {
        _repo["parts/a/tray.recipe"] = "part tray {\n  overlap  20 mm\n}\n";
        _repo.Commit("A tray");
        _repo["parts/settings.recipe"] = "findings {\n  cold-night  advice\n}\n";
        _repo.Git("add", "--all");
        Check(0, "2 files, 1 part:");
    }

    [Fact]
    public void Layout_counts_for_what_is_staged()
    {
        _repo.Change(Lid, "quantity  4", "quantity 5");
        _repo.Git("add", Lid);
        Check(1, $"not formatted {Lid}: `recipe fmt {Lid}` lays it out, `git add {Lid}` stages it again\n");
    }

    [Fact]
    public void The_first_commit_of_a_repository_and_a_folder_below_work_too()
    {
        using var repo = new Repo();
        repo["parts/tray.recipe"] = "part tray {\n  overlap  20 g\n}\n";
        repo.Git("add", "--all");
        var run = repo.Shell("cd parts && recipe git pre-commit");
        Assert.Equal((1, ""), (run.Status, run.Error));
        Assert.Contains("--> parts/tray.recipe:2:", run.Out, StringComparison.Ordinal);
    }

    private void Check(int status, string says)
    {
        var run = _repo.Bench.RunHere("git", "pre-commit");
        Assert.Contains(says, run.Out, StringComparison.Ordinal);
        Assert.Equal((status, ""), (run.Status, run.Error));
    }
}
