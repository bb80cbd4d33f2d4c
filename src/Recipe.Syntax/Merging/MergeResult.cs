namespace Recipe.Syntax.Merging;

/// <summary>What a merge came to.</summary>
/// <param name="Text">The merged text; where both sides changed the same, both stand in it between markers.</param>
/// <param name="Conflicts">How many places somebody has to settle; 0 for a clean merge.</param>
/// <param name="ByLines">Whether it was merged line by line as any text, because one of the three cannot be read as a recipe.</param>
public sealed record MergeResult(string Text, int Conflicts, bool ByLines);
