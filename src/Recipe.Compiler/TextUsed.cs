namespace Recipe.Compiler;

/// <summary>A text that a compiled file rests on: itself, one that it uses, or its settings.</summary>
/// <param name="Name">The name.</param>
/// <param name="Text">The text; null when there was none with this name, and its coming would change the result.</param>
public sealed record TextUsed(string Name, string? Text);
