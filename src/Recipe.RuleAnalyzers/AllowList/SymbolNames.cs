using Microsoft.CodeAnalysis;

namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>Names of symbols as the metadata writes them.</summary>
internal static class SymbolNames
{
    /// <summary>The name of a type without its arguments: <c>System.Collections.Generic.List`1+Enumerator</c>.</summary>
    public static string Of(INamedTypeSymbol type)
    {
        var original = type.OriginalDefinition;
        if (original.ContainingType is { } outer)
        {
            return Of(outer) + "+" + original.MetadataName;
        }

        return original.ContainingNamespace is { IsGlobalNamespace: false } space ? space.ToDisplayString() + "." + original.MetadataName : original.MetadataName;
    }

    /// <summary>The simple names of the types of a method's parameters, <c>!</c> for a type parameter.</summary>
    public static IReadOnlyList<string> Parameters(ISymbol member) => member switch
    {
        IMethodSymbol method => [.. method.Parameters.Select(parameter => Simple(parameter.Type))],
        IPropertySymbol property => [.. property.Parameters.Select(parameter => Simple(parameter.Type))],
        _ => [],
    };

    private static string Simple(ITypeSymbol type) => type switch
    {
        IArrayTypeSymbol array => Simple(array.ElementType) + "[]",
        ITypeParameterSymbol => "!",
        _ => type.MetadataName.Split('`')[0],
    };
}
