using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>A rule keeps nothing from one part to the next: what is static neither changes nor holds anything that does.</summary>
internal static class KeptState
{
    /// <summary>The violations in the declaration of a type.</summary>
    public static IEnumerable<Violation> In(SyntaxNode node, SemanticModel model)
    {
        if (node is not TypeDeclarationSyntax declared || model.GetDeclaredSymbol(declared) is not INamedTypeSymbol type)
        {
            yield break;
        }

        foreach (var field in type.GetMembers().OfType<IFieldSymbol>().Where(field => field.IsStatic && !field.IsConst && !(field.IsReadOnly && Immutable.Is(field.Type))))
        {
            var shown = field.AssociatedSymbol ?? field;
            if (shown.Locations.FirstOrDefault(location => location.SourceTree == model.SyntaxTree && declared.Span.Contains(location.SourceSpan)) is { } place)
            {
                yield return new Violation(
                    Violation.State,
                    place.SourceSpan,
                    $"The static `{shown.Name}` is not allowed in a rule: it could carry something from one part to the next. Use `const`, or `static readonly` with a number, a text, a quantity, an `IReadOnlyList` or an `IReadOnlyDictionary` of them.");
            }
        }
    }
}
