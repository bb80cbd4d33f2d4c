using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Diagnostics;
using Recipe.RuleAnalyzers.AllowList;

namespace Recipe.RuleAnalyzers;

/// <summary>Marks in the files <c>*.rule.cs</c> of a project what the rules host will refuse, by the host's own list.</summary>
[DiagnosticAnalyzer(LanguageNames.CSharp)]
public sealed class RuleAnalyzer : DiagnosticAnalyzer
{
    private static readonly ImmutableDictionary<string, DiagnosticDescriptor> Descriptors = new[]
    {
        Describe(Violation.Name, "A name that a rule may not use"),
        Describe(Violation.Construct, "A construct that a rule may not use"),
        Describe(Violation.State, "Something that a rule may not keep"),
        Describe(Violation.Format, "A format that a rule may not use"),
    }.ToImmutableDictionary(one => one.Id);

    /// <inheritdoc/>
    public override ImmutableArray<DiagnosticDescriptor> SupportedDiagnostics { get; } = [.. Descriptors.Values.OrderBy(one => one.Id)];

    /// <inheritdoc/>
    public override void Initialize(AnalysisContext context)
    {
        context.ConfigureGeneratedCodeAnalysis(GeneratedCodeAnalysisFlags.Analyze | GeneratedCodeAnalysisFlags.ReportDiagnostics);
        context.EnableConcurrentExecution();
        context.RegisterSemanticModelAction(Examine);
    }

    private static void Examine(SemanticModelAnalysisContext context)
    {
        var tree = context.SemanticModel.SyntaxTree;
        if (!tree.FilePath.EndsWith(".rule.cs", System.StringComparison.OrdinalIgnoreCase))
        {
            return;
        }

        foreach (var violation in RuleGate.Examine(context.SemanticModel, context.CancellationToken))
        {
            context.ReportDiagnostic(Diagnostic.Create(Descriptors[violation.Code], Location.Create(tree, violation.Span), violation.Message));
        }
    }

    // A rule that the host refuses does not run at all, so these are errors.
    private static DiagnosticDescriptor Describe(string id, string title) =>
        new(id, title, "{0}", "House rules", DiagnosticSeverity.Error, isEnabledByDefault: true);
}
