using Recipe.RuleProtocol;
using Recipe.RulesProcess;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>Runs the program in this process, in a folder of its own.</summary>
internal sealed class Bench : IDisposable
{
    private static readonly Lock OneAtATime = new();

    public Bench()
    {
        Folder = Directory.CreateTempSubdirectory("recipe-cli-").FullName;
    }

    public string Folder { get; }

    public string PathOf(string name) => Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        var path = PathOf(name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    /// <summary>A file of the repository, by its path from the top.</summary>
    /// <summary>Runs no rules in C#: this user has agreed to none. No process is started.</summary>
    public static IRuleRunner NobodyTrusts { get; } = new TrustedRules(new RulesProcess.RulesProcess(new RulesProcessOptions { HostPath = "none" }), null);

    public static string Sample(string path) => Repository.PathOf(path);

    public static Outcome Run(params string[] args) => Run(args, "");

    public static Outcome Run(string[] args, string input)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var terminal = new Terminal(output, error, () => new MemoryStream(Terminal.Encoding.GetBytes(input))) { Today = new DateOnly(2026, 6, 1), Rules = NobodyTrusts };
        var status = CommandLine.Run(args, terminal);
        return new Outcome(status, output.ToString(), error.ToString());
    }

    /// <summary>Runs in the bench's folder; the current folder belongs to the process, so one at a time.</summary>
    public Outcome RunHere(params string[] args) => InFolder(() => Run(args));

    /// <summary>Runs something in the bench's folder.</summary>
    public Outcome InFolder(Func<Outcome> run)
    {
        lock (OneAtATime)
        {
            var before = Directory.GetCurrentDirectory();
            Directory.SetCurrentDirectory(Folder);
            try
            {
                return run();
            }
            finally
            {
                Directory.SetCurrentDirectory(before);
            }
        }
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

/// <summary>What a run left behind.</summary>
internal sealed record Outcome(int Status, string Out, string Error);
