using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Model;

/// <summary>How bad a shop holds a finding to be: <c>findings { cold-night advice }</c>.</summary>
/// <param name="Code">Code or readable name, as written.</param>
/// <param name="Severity">The severity wanted.</param>
/// <param name="Where">The line.</param>
public sealed record SeveritySetting(string Code, Severity Severity, SourceSpan Where);
