using Recipe.RuleApi;

namespace Recipe.RuleProtocol;

/// <summary>Compiles and runs rules in C#, wherever it does that. It never throws for what a rule does: the answer says what happened.</summary>
public interface IRuleRunner
{
    /// <summary>Whether the user agreed to run what stands in the folder of a file.</summary>
    /// <param name="name">The file, as the workspace names it.</param>
    bool IsTrusted(string name);

    /// <summary>The rules of the files, or why they cannot be used.</summary>
    /// <param name="files">The files; each has a name of its own.</param>
    RuleSetAnswer Describe(IReadOnlyList<RuleSource> files);

    /// <summary>Runs the rules of the files on parts.</summary>
    /// <param name="files">The files; each has a name of its own.</param>
    /// <param name="parts">The facts of each part.</param>
    RuleRunAnswer Examine(IReadOnlyList<RuleSource> files, IReadOnlyList<FactSheet> parts);
}
