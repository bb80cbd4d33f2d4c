using System.Runtime.CompilerServices;

namespace Recipe.RulesProcess;

/// <summary>Where the rules host is, and how long and how much it may.</summary>
public sealed record RulesProcessOptions
{
    /// <summary>The variable of the environment that names another rules host.</summary>
    public const string HostVariable = "RECIPE_RULES_HOST";

    /// <summary>The program: an executable, or a <c>.dll</c> that <c>dotnet</c> runs.</summary>
    public required string HostPath { get; init; }

    /// <summary>Arguments before the host's own; for tests.</summary>
    public IReadOnlyList<string> HostArguments { get; init; } = [];

    /// <summary>The folder of what was compiled and answered before; null to keep nothing.</summary>
    public string? CacheFolder { get; init; }

    /// <summary>Until the host greets.</summary>
    public TimeSpan StartTime { get; init; } = TimeSpan.FromSeconds(15);

    /// <summary>For compiling one file.</summary>
    public TimeSpan CompileTime { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>For one rule on one part: time spent computing, and at most five times as long on the clock.</summary>
    public TimeSpan RuleTime { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>The most memory that the host's heap may take, in bytes.</summary>
    public long MemoryCap { get; init; } = 400L << 20;

    /// <summary>The longest line that is read from the host, in bytes.</summary>
    public int LongestAnswer { get; init; } = 16 << 20;

    /// <summary>How many times the host is started again after a rule had to be stopped from outside.</summary>
    public int MostRestarts { get; init; } = 5;

    /// <summary>How many lines of progress a host may write for one question: of files, rules and parts together there are far fewer.</summary>
    public int MostProgress { get; init; } = 100_000;

    /// <summary>The host beside the program, or the one that the environment names, and the user's own cache folder.</summary>
    public static RulesProcessOptions Installed() => new()
    {
        HostPath = Environment.GetEnvironmentVariable(HostVariable) is { Length: > 0 } other
            ? other
            : HostIn(Path.Combine(AppContext.BaseDirectory, "rules-host")),
        CacheFolder = UserFolders.Cache is { } cache ? Path.Combine(cache, "rules") : null,
    };

    // Whoever runs this program on .NET has .NET for the host too, and a tool for any system brings no program that runs on all of them.
    private static string HostIn(string folder)
    {
        var program = Path.Combine(folder, OperatingSystem.IsWindows() ? "recipe-rules-host.exe" : "recipe-rules-host");
        var library = Path.Combine(folder, "recipe-rules-host.dll");
        return RuntimeFeature.IsDynamicCodeSupported && File.Exists(library) ? library : program;
    }
}
