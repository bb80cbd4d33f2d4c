using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Editing;

/// <summary>A name that can be changed.</summary>
/// <param name="Where">Where it stands.</param>
/// <param name="Name">The name.</param>
public sealed record RenameTarget(TextSpan Where, string Name);

/// <summary>What comes of a change of name.</summary>
/// <param name="Edits">The changes, in all files; empty when it is refused.</param>
/// <param name="Refusal">Why it is refused, in one sentence; or null.</param>
public sealed record RenameResult(ImmutableArray<TextEdit> Edits, string? Refusal);
