using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>A git repository of its own, in which git finds this program as <c>recipe</c> and no settings but those of the repository.</summary>
internal sealed class Repo : IDisposable
{
    public Repo()
    {
        Git("init", "--quiet", "--initial-branch=main");
        Git("config", "user.name", "A Laminator");
        Git("config", "user.email", "laminator@example.org");
    }

    public Bench Bench { get; } = new();

    /// <summary>A file of the working copy.</summary>
    public string this[string name]
    {
        get => File.ReadAllText(Bench.PathOf(name));
        set => Bench.Write(name, value);
    }

    /// <summary>The hatch lid of the samples and its shop, committed.</summary>
    public static Repo OfHatchLid(params string[] setup)
    {
        var repo = new Repo();
        repo["hatch-lid.recipe"] = Repository.Read("samples/hatch-lid.recipe");
        repo["shop.recipe"] = Repository.Read("samples/shop.recipe");
        repo.Commit("A lid");
        if (setup.Length > 0)
        {
            Assert.Equal(ExitStatus.Clean, repo.Bench.RunHere(setup).Status);
            repo.Commit("Let git know recipes");
        }

        return repo;
    }

    /// <summary>Writes another text in place of one, in a file of the working copy.</summary>
    public void Change(string name, string was, string now)
    {
        Assert.Contains(was, this[name], StringComparison.Ordinal);
        this[name] = this[name].Replace(was, now, StringComparison.Ordinal);
    }

    public void Commit(string message)
    {
        Git("add", "--all");
        Git("commit", "--quiet", "--no-verify", "--message", message);
    }

    /// <summary>What git says, when it agrees.</summary>
    public string Git(params string[] arguments)
    {
        var run = TryGit(arguments);
        Assert.True(run.Status == 0, run.Out + run.Error);
        return run.Out;
    }

    public Outcome TryGit(params string[] arguments) => Start("git", arguments, []);

    /// <summary>Runs a line of a shell in the working copy.</summary>
    public Outcome Shell(string line, params (string Name, string Value)[] environment) => Start("sh", ["-c", line], environment);

    public void Dispose() => Bench.Dispose();

    private Outcome Start(string program, string[] arguments, (string Name, string Value)[] environment) => RealProgram.Start(
        Bench.Folder,
        program,
        arguments,
        [
            ("PATH", AppContext.BaseDirectory + Path.PathSeparator + Environment.GetEnvironmentVariable("PATH")),
            ("GIT_CONFIG_GLOBAL", "/dev/null"),
            ("GIT_CONFIG_NOSYSTEM", "1"),
            ("GIT_EDITOR", "true"),
            .. environment,
        ]);
}
