using Recipe.RulesProcess;

namespace Recipe.RulesHost.Tests;

/// <summary>Hosts for tests: the real one beside the tests, and false ones that a shell plays.</summary>
internal static class Hosts
{
    /// <summary>The real host.</summary>
    public static RulesProcessOptions Real { get; } = new()
    {
        HostPath = Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "recipe-rules-host.exe" : "recipe-rules-host"),
        StartTime = TimeSpan.FromSeconds(60),
        CompileTime = TimeSpan.FromSeconds(120),
        RuleTime = TimeSpan.FromSeconds(30),
    };

    /// <summary>A host that a line of shell plays.</summary>
    public static RulesProcessOptions Shell(string line) => new()
    {
        HostPath = "/bin/sh",
        HostArguments = ["-c", line],
        StartTime = TimeSpan.FromSeconds(20),
        LongestAnswer = 100_000,
        MostProgress = 2_000,
    };

    public const string Greets = """echo '{"protocol":1,"host":"0"}'; """;

    public static RuleSource File(string text, string name = "one.rule.cs") => new(name, text);
}
