namespace Recipe.Cli.Tests;

/// <summary><c>recipe git setup</c>: writes only what it says, only when it is told to, and takes it out again.</summary>
public sealed class GitSetupTests : IDisposable
{
    private const string Line = "*.recipe diff=recipe merge=recipe";
    private readonly Repo _repo = new();

    public void Dispose() => _repo.Dispose();

    [Theory]
    [InlineData]
    [InlineData("--dry-run")]
    [InlineData("--hook")]
    [InlineData("--local")]
    public void Without_being_told_to_it_writes_nothing(params string[] options)
    {
        var before = Snapshot();
        var run = Setup(options);
        Assert.Contains(Line, run, StringComparison.Ordinal);
        Assert.Contains("git config --local diff.recipe.textconv \"recipe git textconv\"", run, StringComparison.Ordinal);
        Assert.Contains("git config --local merge.recipe.driver \"recipe git merge", run, StringComparison.Ordinal);
        Assert.Contains("Nothing was written.", run, StringComparison.Ordinal);
        Assert.Equal(before, Snapshot());
    }

    [Theory]
    [InlineData("# ours\n*.pdf binary\n")]
    [InlineData("*.pdf binary")]
    [InlineData("*.pdf binary\r\n*.csv text\r\n")]
    public void It_keeps_the_other_lines_and_is_done_once(string attributes)
    {
        _repo[".gitattributes"] = attributes;
        var said = Setup("--hook").Split('\n').Where(line => line.StartsWith("    ", StringComparison.Ordinal) || line.StartsWith("git config", StringComparison.Ordinal));
        var written = Setup("--write", "--hook");
        Assert.All(said, line => Assert.Contains(line, written, StringComparison.Ordinal));
        var end = attributes.Contains('\r', StringComparison.Ordinal) ? "\r\n" : "\n";
        Assert.Equal($"{attributes.TrimEnd('\r', '\n')}{end}{Line}{end}", _repo[".gitattributes"]);
        Assert.Equal("a.recipe: merge: recipe\n", _repo.Git("check-attr", "merge", "a.recipe"));
        Assert.True(!OperatingSystem.IsLinux() || File.GetUnixFileMode(_repo.Bench.PathOf(".git/hooks/pre-commit")).HasFlag(UnixFileMode.UserExecute));

        var after = Snapshot();
        Assert.StartsWith("Nothing to do: git asks this program about recipes here.\n", Setup("--write", "--hook"), StringComparison.Ordinal);
        Assert.Equal(after, Snapshot());
    }

    [Fact]
    public void It_goes_out_again_and_leaves_what_was_there()
    {
        _repo[".gitattributes"] = "*.pdf binary\n";
        var before = Snapshot();
        Setup("--write", "--hook");
        Assert.Contains("Nothing was written.", Setup("--remove"), StringComparison.Ordinal);
        Assert.NotEqual(before, Snapshot());
        Setup("--remove", "--write");
        Assert.Equal(before, Snapshot());
        Assert.StartsWith("Nothing to take out", Setup("--remove", "--write"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_it_made_goes_when_nothing_is_left_in_it()
    {
        Setup("--write");
        Setup("--remove", "--write");
        Assert.False(File.Exists(_repo.Bench.PathOf(".gitattributes")));
    }

    [Fact]
    public void Local_attributes_stay_in_the_clone()
    {
        Setup("--write", "--local");
        Assert.Equal("", _repo.Git("status", "--porcelain"));
        Assert.Equal("a.recipe: diff: recipe\n", _repo.Git("check-attr", "diff", "a.recipe"));
        Assert.StartsWith("Nothing to do", Setup("--write"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_somebody_else_wrote_is_left_alone_and_said()
    {
        _repo[".git/hooks/pre-commit"] = "#!/bin/sh\nexit 0\n";
        _repo.Git("config", "diff.recipe.textconv", "cat");
        var run = Setup("--write", "--hook");
        Assert.Contains("left alone: diff.recipe.textconv is \"cat\"", run, StringComparison.Ordinal);
        Assert.Contains("left alone: .git/hooks/pre-commit is there and not ours; to check recipes too, add this line to it:\n    recipe git pre-commit || exit 1", run, StringComparison.Ordinal);
        Setup("--remove", "--write");
        Assert.Equal("#!/bin/sh\nexit 0\n", _repo[".git/hooks/pre-commit"]);
        Assert.Equal("cat\n", _repo.Git("config", "--local", "diff.recipe.textconv"));

        // Whoever added the line is done.
        _repo[".git/hooks/pre-commit"] = "#!/bin/sh\nrecipe git pre-commit || exit 1\n";
        Assert.DoesNotContain("pre-commit", Setup("--hook"), StringComparison.Ordinal);
    }

    [Fact]
    public void Hooks_that_count_for_other_repositories_are_left_alone()
    {
        using var elsewhere = new Bench();
        _repo.Git("config", "core.hooksPath", elsewhere.Folder);
        Assert.Contains("left alone: hooks stand outside of this repository", Setup("--write", "--hook"), StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(elsewhere.Folder));
    }

    [Fact]
    public void From_a_folder_below_it_writes_at_the_top()
    {
        Directory.CreateDirectory(_repo.Bench.PathOf("parts"));
        var run = _repo.Shell("cd parts && recipe git setup --write --hook");
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Equal(Line + "\n", _repo[".gitattributes"]);
        Assert.True(File.Exists(_repo.Bench.PathOf(".git/hooks/pre-commit")));
    }

    [Fact]
    public void Outside_of_a_repository_it_refuses()
    {
        using var bench = new Bench();
        var run = bench.RunHere("git", "setup", "--write");
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Equal("recipe: this folder is in no working copy of a git repository, so there is nothing to set up; go to one, or make one with `git init`.\n", run.Error);
        Assert.Empty(Directory.GetFileSystemEntries(bench.Folder));
        Assert.Equal(ExitStatus.CouldNotRun, bench.RunHere("git", "pre-commit").Status);
        Assert.Equal(ExitStatus.CouldNotRun, _repo.Bench.RunHere("git", "setup", "--write", "--dry-run").Status);
    }

    private string Setup(params string[] options)
    {
        var run = _repo.Bench.RunHere(["git", "setup", .. options]);
        Assert.Equal((0, ""), (run.Status, run.Error));
        return run.Out;
    }

    /// <summary>Every file of the repository that setup may touch.</summary>
    private string Snapshot() => string.Join('\n', new[] { ".gitattributes", ".git/info/attributes", ".git/config", ".git/hooks/pre-commit" }
        .Select(name => name + "\n" + (File.Exists(_repo.Bench.PathOf(name)) ? _repo[name] : "not there")));
}
