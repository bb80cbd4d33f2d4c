using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>A part with everything that follows from it.</summary>
/// <param name="Part">What the recipe says.</param>
/// <param name="Plan">What follows from it.</param>
/// <param name="Report">What the checks found.</param>
public sealed record CompiledPart(Part Part, Plan Plan, CheckReport Report);

/// <summary>A file, compiled.</summary>
public sealed record CompiledFile
{
    /// <summary>The text.</summary>
    public required SourceText Source { get; init; }

    /// <summary>Its tree.</summary>
    public required SyntaxTree Tree { get; init; }

    /// <summary>What it means.</summary>
    public required BoundFile Bound { get; init; }

    /// <summary>Its parts and variants, in order.</summary>
    public required ImmutableArray<CompiledPart> Parts { get; init; }

    /// <summary>All findings of all stages, in the order of the text; accepted ones are not among them.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Findings that a waiver in the recipe accepts.</summary>
    public required ImmutableArray<Finding> Accepted { get; init; }

    /// <summary>Checks that could not speak.</summary>
    public required ImmutableArray<NotChecked> NotChecked { get; init; }

    /// <summary>Ten letters that change when the text, or a text it uses, changes.</summary>
    public required string Revision { get; init; }

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(finding => finding.Severity == Severity.Error);
}
