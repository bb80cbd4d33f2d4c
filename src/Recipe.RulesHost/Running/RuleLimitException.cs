namespace Recipe.RulesHost.Running;

/// <summary>A rule reached a limit; the message ends the sentence "the rule ...".</summary>
public sealed class RuleLimitException(string message) : Exception(message);
