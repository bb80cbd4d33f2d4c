using Recipe.Cli.Text;
using Recipe.RulesProcess;

namespace Recipe.Cli.Tests;

public sealed class TrustVerbTests : IDisposable
{
    private readonly Bench _bench = new();

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_folder_is_trusted_listed_and_forgotten()
    {
        Directory.CreateDirectory(_bench.PathOf("shop"));
        var trust = Run("trust", _bench.PathOf("shop"));
        Assert.Equal(ExitStatus.Clean, trust.Status);
        Assert.Contains("A rule is a program: read it first.", trust.Out, StringComparison.Ordinal);
        Assert.EndsWith("shop\n", Run("trust", "--list").Out, StringComparison.Ordinal);
        Assert.Contains("no longer", Run("trust", "--forget", _bench.PathOf("shop")).Out, StringComparison.Ordinal);
        Assert.Equal("", Run("trust", "--list").Out);
    }

    [Fact]
    public void A_folder_below_a_trusted_one_stays_trusted()
    {
        Directory.CreateDirectory(_bench.PathOf("shop/rules"));
        Run("trust", _bench.PathOf("shop"));
        Run("trust", _bench.PathOf("shop/rules"));
        Assert.Contains("a folder above it is still there", Run("trust", "--forget", _bench.PathOf("shop/rules")).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("there is no folder", "trust", "none-such")]
    [InlineData("is not on the list", "trust", "--forget", "none-such")]
    [InlineData("do not go together", "trust", "--forget", "--list")]
    public void What_cannot_be_done_is_said(string says, params string[] args)
    {
        var run = Run(args);
        Assert.Equal(ExitStatus.CouldNotRun, run.Status);
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_folder_for_settings_nothing_is_trusted() =>
        Assert.Contains("no folder for settings", Bench.Run("trust", _bench.Folder).Error, StringComparison.Ordinal);

    [Theory]
    [InlineData(true, "\rcompiling rules, 1 of 2: cold.rule.cs\r                                     \r")]
    [InlineData(false, "")]
    public void What_is_compiled_is_said_on_a_terminal_and_wiped_when_it_is_over(bool isTerminal, string said)
    {
        using var error = new StringWriter();
        var progress = new Progress(error, isTerminal);
        progress.Compiling(new RuleCompiling("shop/rules/cold.rule.cs", 1, 2));
        progress.Compiling(null);
        Assert.Equal(said, error.ToString());
    }

    private Outcome Run(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var terminal = new Terminal(output, error, () => Stream.Null)
        {
            Today = new DateOnly(2026, 6, 1),
            Trusted = new TrustedFolders(_bench.PathOf("settings/trusted-folders")),
        };
        var status = CommandLine.Run(args, terminal);
        return new Outcome(status, output.ToString(), error.ToString());
    }
}
