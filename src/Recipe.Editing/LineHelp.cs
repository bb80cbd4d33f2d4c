using System.Collections.Immutable;

namespace Recipe.Editing;

/// <summary>What may stand on a line, and where the cursor is in it.</summary>
/// <param name="Label">The line's pattern.</param>
/// <param name="Parts">Its parts, in order.</param>
/// <param name="Active">Index of the part the cursor is in; the number of parts when it is past them.</param>
/// <param name="Doc">What the line says.</param>
public sealed record LineHelp(string Label, ImmutableArray<LineHelpPart> Parts, int Active, string Doc);

/// <summary>A part of a line's pattern.</summary>
/// <param name="Start">Where it stands in the label.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Doc">What it takes.</param>
public sealed record LineHelpPart(int Start, int Length, string Doc);
