using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Syntax;
using Recipe.Text.Findings;

namespace Recipe.Semantics;

/// <summary>A file and what it means.</summary>
/// <param name="Tree">The file's tree.</param>
/// <param name="Model">What it and everything it uses mean together.</param>
/// <param name="Findings">
/// What was found wrong with the meaning of this file, sorted by place. Those of its syntax are the tree's, those of a used file
/// belong to that file.
/// </param>
public sealed record BoundFile(SyntaxTree Tree, RecipeModel Model, ImmutableArray<Finding> Findings)
{
    /// <summary>Every place in the file where a name is declared or used, in order.</summary>
    public ImmutableArray<NameUse> Names { get; init; } = [];
}
