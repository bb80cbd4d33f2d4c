using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Documents;
using Recipe.Planning;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>A file, compiled.</summary>
public sealed record CompiledFile
{
    /// <summary>Its tree.</summary>
    public required SyntaxTree Tree { get; init; }

    /// <summary>What it means.</summary>
    public required BoundFile Bound { get; init; }

    /// <summary>The plans of its parts and variants, in order.</summary>
    public required ImmutableArray<Plan> Plans { get; init; }

    /// <summary>What the checks found in all of them together.</summary>
    public required CheckReport Report { get; init; }

    /// <summary>All findings of all stages, in the order of the text; accepted ones are not among them.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Ten letters that change when the text, or a text it uses, changes.</summary>
    public required string Revision { get; init; }

    /// <summary>The text.</summary>
    public SourceText Source => Tree.Source;

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(finding => finding.Severity == Severity.Error);

    /// <summary>
    /// What the papers of one part are made from. Of the file's findings they carry those that the part earns by itself, so that the
    /// traveller of a part does not repeat the troubles of its variants.
    /// </summary>
    /// <param name="plan">One of <see cref="Plans"/>.</param>
    /// <param name="printed">The day they are printed, or null to print none.</param>
    /// <param name="today">The day the file was checked for.</param>
    public PaperInput PaperInputFor(Plan plan, DateOnly? printed, DateOnly? today)
    {
        var own = CheckRunner.Run(plan, Bound.Model, today);
        var earned = own.Findings.Concat(own.Accepted).Select(f => (f.Descriptor.Code, f.Where, f.Message)).ToHashSet();
        return new PaperInput(
            plan,
            [.. Report.Findings.Concat(Report.Accepted).Where(f => earned.Contains((f.Descriptor.Code, f.Where, f.Message)))],
            own.NotChecked,
            Revision,
            printed,
            Source.Name);
    }
}
