namespace Recipe.RuleProtocol;

/// <summary>A file of rules.</summary>
/// <param name="Name">Its name, as answers name it; the same in no other file of a set.</param>
/// <param name="Text">Its text.</param>
public sealed record RuleSource(string Name, string Text);
