namespace Recipe.Text.Findings;

/// <summary>A second place of a finding, with a few words about it.</summary>
/// <param name="Where">The place.</param>
/// <param name="Text">A few words: "peel ply here".</param>
public sealed record FindingLabel(SourceSpan Where, string Text);
