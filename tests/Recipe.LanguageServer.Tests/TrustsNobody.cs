using System.Collections.Concurrent;
using Recipe.RuleApi;
using Recipe.RuleProtocol;

namespace Recipe.LanguageServer.Tests;

/// <summary>Runs no rule, as of a user who agreed to none, and remembers which files it was asked about.</summary>
internal sealed class TrustsNobody : IRuleRunner
{
    public ConcurrentQueue<string> Asked { get; } = [];

    public bool IsTrusted(string name)
    {
        Asked.Enqueue(name);
        return false;
    }

    public RuleSetAnswer Describe(IReadOnlyList<RuleSource> files) => throw new InvalidOperationException("Rules that nobody agreed to were to be compiled.");

    public RuleRunAnswer Examine(IReadOnlyList<RuleSource> files, IReadOnlyList<FactSheet> parts) => throw new InvalidOperationException("Rules that nobody agreed to were to be run.");
}
