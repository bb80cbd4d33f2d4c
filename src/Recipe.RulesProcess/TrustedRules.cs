using Recipe.RuleApi;

namespace Recipe.RulesProcess;

/// <summary>Runs rules in C# of the folders that the user agreed to. One host serves the whole program; it is started when a rule is first needed.</summary>
/// <param name="process">Runs them.</param>
/// <param name="trusted">The folders; null when the user has none.</param>
public sealed class TrustedRules(RulesProcess process, TrustedFolders? trusted) : IRuleRunner
{
    /// <summary>Rules run by the host that is installed beside the program; the host ends with the program. Made once, where the program begins, and handed down.</summary>
    /// <param name="trusted">The folders; null when the user has none.</param>
    /// <param name="compiling">Is told of each file before it is compiled, and of null when that is over.</param>
    public static TrustedRules Installed(TrustedFolders? trusted, Action<RuleCompiling?> compiling)
    {
        var process = new RulesProcess(RulesProcessOptions.Installed()) { Compiling = compiling };
        AppDomain.CurrentDomain.ProcessExit += (_, _) => process.Dispose();
        return new TrustedRules(process, trusted);
    }

    /// <inheritdoc/>
    public bool IsTrusted(string name) => trusted?.IsTrusted(name) == true;

    /// <inheritdoc/>
    public RuleSetAnswer Describe(IReadOnlyList<RuleSource> files) => process.Describe(files, CancellationToken.None);

    /// <inheritdoc/>
    public RuleRunAnswer Examine(IReadOnlyList<RuleSource> files, IReadOnlyList<FactSheet> parts) => process.Examine(files, parts, CancellationToken.None);
}
