namespace Recipe.RulesHost.Tests.Cases;

/// <summary>Something that a rule may not do.</summary>
/// <param name="Code">The code that it must be refused with.</param>
/// <param name="Says">Words that the message must hold.</param>
/// <param name="Body">Statements of Examine.</param>
/// <param name="Members">Members of the rule.</param>
/// <param name="Types">Types of the file.</param>
internal sealed record Escape(string Code, string Says, string Body = "", string Members = "", string Types = "");
