namespace Recipe.Compiler;

/// <summary>A text that a compiled file rests on: itself, one that it uses, its settings, or the file of a shape.</summary>
/// <param name="Name">The name.</param>
/// <param name="Text">The text, of a shape the digest of its bytes; null when there was none with this name, and its coming would change the result.</param>
/// <param name="IsShape">Whether it is the file of a shape.</param>
public sealed record TextUsed(string Name, string? Text, bool IsShape = false);
