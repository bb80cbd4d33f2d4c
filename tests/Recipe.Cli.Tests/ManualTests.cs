using System.Text.RegularExpressions;

namespace Recipe.Cli.Tests;

/// <summary>The manual page and what shells complete.</summary>
public sealed partial class ManualTests
{
    [Fact]
    public void The_manual_names_every_verb_and_every_option_of_the_help()
    {
        var manual = Bench.Run("manual").Out;
        foreach (var verb in VerbOfHelp().Matches(Bench.Run("--help").Out).Select(match => match.Groups[1].Value))
        {
            Assert.Contains($".SS recipe {verb}", manual, StringComparison.Ordinal);
            var options = Option().Matches(Bench.Run(verb, "--help").Out).Select(match => match.Groups[1].Value).Where(name => name != "--help");
            Assert.All(options, option => Assert.Contains(option.Replace("-", "\\-", StringComparison.Ordinal), manual, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_help_is_a_page_and_not_a_list_of_all_that_can_be_completed()
    {
        var help = Bench.Run("--help").Out;
        Assert.InRange(help.Length, 1_000, 6_000);
        Assert.All(help.Split('\n'), line => Assert.InRange(line.Length, 0, 200));
    }

    [Fact]
    public void No_line_of_the_manual_is_a_command_by_accident()
    {
        var known = new[] { ".TH", ".SH", ".SS", ".TP", ".PP", ".B", ".I", ".RI" };
        var lines = Bench.Run("manual").Out.Split('\n');
        Assert.All(lines.Where(line => line is ['.' or '\'', ..]), line => Assert.Contains(line.Split(' ')[0], known));
        Assert.All(lines, line => Assert.DoesNotMatch(@"(?<!\\)-", line));
    }

    [Theory]
    [InlineData("recipe ch", "check")]
    [InlineData("recipe check ", "")]
    [InlineData("recipe check --f", "--fix --format")]
    [InlineData("recipe check --format ju", "junit")]
    [InlineData("recipe new lid --process ", "bagged hand infused prepreg")]
    [InlineData("recipe explain demould-too-e", "demould-too-early")]
    [InlineData("recipe completions ", "bash fish powershell zsh")]
    public void Bash_completes(string line, string offers)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var bench = new Bench();
        bench.Write("recipe.bash", Bench.Run("completions", "bash").Out);
        var script = $$"""
            source ./recipe.bash
            COMP_LINE="$1"; COMP_POINT=${#COMP_LINE}
            read -ra COMP_WORDS <<< "$COMP_LINE"; [[ "$COMP_LINE" == *' ' ]] && COMP_WORDS+=("")
            COMP_CWORD=$(( ${#COMP_WORDS[@]} - 1 ))
            COMP_WORDS[0]="{{Path.Combine(AppContext.BaseDirectory, "recipe")}}"; COMP_LINE="${COMP_WORDS[0]}${COMP_LINE#recipe}"; COMP_POINT=${#COMP_LINE}
            _recipe
            echo "${COMPREPLY[*]}"
            """;
        var run = RealProgram.Start(bench.Folder, "bash", ["-c", script, "bash", line]);
        Assert.Equal((offers, ""), (run.Out.Trim(), run.Error));
    }

    [Fact]
    public void Each_shell_has_lines_that_ask_the_program() =>
        Assert.All((string[])["bash", "zsh", "fish", "powershell"], shell => Assert.Contains("suggest:", Bench.Run("completions", shell).Out, StringComparison.Ordinal));

    [GeneratedRegex(@"^  ([a-z]+)  ?[ <]", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex VerbOfHelp();

    [GeneratedRegex(@"^ +(?:-[a-z], )?(--[a-z-]+)", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Option();
}
