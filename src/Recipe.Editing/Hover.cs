using Recipe.Text;

namespace Recipe.Editing;

/// <summary>What is shown about a place.</summary>
/// <param name="Where">The word or value it is about.</param>
/// <param name="Markdown">The page.</param>
public sealed record Hover(TextSpan Where, string Markdown);
