using Recipe.Text;

namespace Recipe.Editing;

/// <summary>A place that leads to another file.</summary>
/// <param name="Where">The text in quotes.</param>
/// <param name="Target">Name of the file, as a workspace names it.</param>
public sealed record Link(TextSpan Where, string Target);
