namespace Recipe.Compiler.Comparing;

/// <summary>The texts of an earlier version, or why there are none.</summary>
/// <param name="Files">The texts, by the names they have now; null when they cannot be had. It may be disposable.</param>
/// <param name="Refusal">Why they cannot be had, as a sentence; null when they can.</param>
public sealed record OpenedRevision(IFileStore? Files, string? Refusal);
