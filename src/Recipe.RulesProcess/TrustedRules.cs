using Recipe.RuleApi;

namespace Recipe.RulesProcess;

/// <summary>Runs rules in C# of the folders that the user agreed to. One host serves the whole program; it is started when a rule is first needed.</summary>
/// <param name="process">Runs them.</param>
/// <param name="trusted">The folders; null when the user has none.</param>
public sealed class TrustedRules(RulesProcess process, TrustedFolders? trusted) : IRuleRunner
{
    private static readonly Lazy<TrustedRules> User = new(() =>
    {
        var process = new RulesProcess(RulesProcessOptions.Installed());
        AppDomain.CurrentDomain.ProcessExit += (_, _) => process.Dispose();
        return new TrustedRules(process, TrustedFolders.OfUser());
    });

    /// <summary>Those of the user, with the host that is installed beside the program.</summary>
    public static TrustedRules OfUser => User.Value;

    /// <summary>Is told of each file before it is compiled, and of null when that is over.</summary>
    public Action<RuleCompiling?>? Compiling { set => process.Compiling = value; }

    /// <inheritdoc/>
    public bool IsTrusted(string name) => trusted?.IsTrusted(name) == true;

    /// <inheritdoc/>
    public RuleSetAnswer Describe(IReadOnlyList<RuleSource> files) => process.Describe(files, CancellationToken.None);

    /// <inheritdoc/>
    public RuleRunAnswer Examine(IReadOnlyList<RuleSource> files, IReadOnlyList<FactSheet> parts) => process.Examine(files, parts, CancellationToken.None);
}
