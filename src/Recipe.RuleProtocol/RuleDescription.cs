using Recipe.RuleApi;

namespace Recipe.RuleProtocol;

/// <summary>What a rule says of itself.</summary>
/// <param name="File">The file that it is in.</param>
/// <param name="Start">The offset of its class's name in the file, in UTF-16 units.</param>
/// <param name="End">The offset behind it.</param>
/// <param name="Name">Its name in kebab case.</param>
/// <param name="Title">What is wrong, in one short line.</param>
/// <param name="Reason">Why it matters.</param>
/// <param name="Remedy">What to do about it.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="Severity">How bad a finding is when it does not say.</param>
/// <param name="Exceptions">When it stays silent although it looks as if it should speak; may be empty.</param>
/// <param name="BadExample">A recipe that earns one finding of it; may be empty.</param>
/// <param name="GoodExample">The same done right; may be empty.</param>
public sealed record RuleDescription(
    string File,
    int Start,
    int End,
    string Name,
    string Title,
    string Reason,
    string Remedy,
    string Source,
    RuleSeverity Severity,
    string Exceptions,
    string BadExample,
    string GoodExample);
