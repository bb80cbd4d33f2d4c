namespace Recipe.Compiler.Previewing;

/// <summary>What a file is compared with.</summary>
/// <param name="File">The file in the earlier version; null when it had none, or when there is no earlier version.</param>
/// <param name="Name">What the version is called: "the last commit".</param>
/// <param name="Refusal">Why nothing can be compared, as a sentence; null when it can.</param>
public sealed record EarlierText(CompiledFile? File, string Name, string? Refusal);
