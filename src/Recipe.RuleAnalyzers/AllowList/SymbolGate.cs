using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>Holds one symbol to the list.</summary>
internal sealed class SymbolGate(IAssemblySymbol own)
{
    private readonly Dictionary<ITypeSymbol, string?> _types = new(SymbolEqualityComparer.Default);

    /// <summary>Whether a symbol is written in the rule itself.</summary>
    public static bool IsOwn(ISymbol symbol, IAssemblySymbol own) => SymbolEqualityComparer.Default.Equals(symbol.ContainingAssembly, own);

    /// <summary>Holds whatever a node means to the list.</summary>
    public IEnumerable<Violation> Symbol(ISymbol? symbol, SyntaxNode at, bool writes) => symbol switch
    {
        IMethodSymbol or IPropertySymbol or IFieldSymbol or IEventSymbol => Member(symbol, at, writes),
        ITypeSymbol type => Type(type, at),
        _ => [],
    };

    /// <summary>Holds a type, and what it is made of, to the list.</summary>
    public IEnumerable<Violation> Type(ITypeSymbol? type, SyntaxNode at)
    {
        if (type is not null && Unknown(type) is { } message)
        {
            yield return new Violation(Violation.Name, Place(at), message);
        }
    }

    /// <summary>Holds a member to the list, with the types that it is used with.</summary>
    public IEnumerable<Violation> Member(ISymbol member, SyntaxNode at, bool writes)
    {
        if (Message(member, writes) is { } message)
        {
            yield return new Violation(Violation.Name, Place(at), message);
        }
    }

    private string? Message(ISymbol member, bool writes)
    {
        var definition = member is IMethodSymbol { ReducedFrom: { } reduced } ? reduced.OriginalDefinition : member.OriginalDefinition;
        var unknown = member is IMethodSymbol generic ? generic.TypeArguments.Select(Unknown).FirstOrDefault(found => found is not null) : null;
        if (unknown is not null || definition.ContainingType is not { } container)
        {
            return unknown;
        }

        if (Unknown(member.ContainingType) is { } type)
        {
            return type;
        }

        if (definition is IMethodSymbol { MethodKind: MethodKind.BuiltinOperator or MethodKind.LocalFunction or MethodKind.AnonymousFunction })
        {
            return null;
        }

        if (IsOwn(definition, own) || container.IsAnonymousType)
        {
            // A record has one that the compiler made of the hash codes of its texts.
            return definition is { Name: "GetHashCode", IsImplicitlyDeclared: true } ? Reasons.Member("", "GetHashCode") : null;
        }

        // The named elements of a tuple are fields of the tuple, not of its definition.
        var name = definition is IFieldSymbol { CorrespondingTupleField: { } field } ? field.MetadataName : definition.MetadataName;
        if (definition is IMethodSymbol { AssociatedSymbol: IPropertySymbol property } accessor)
        {
            (name, writes) = (property.MetadataName, accessor.MethodKind == MethodKind.PropertySet);
        }

        var typeName = SymbolNames.Of(container);
        writes = writes && definition is not IFieldSymbol;
        if (container.IsTupleType && definition is IFieldSymbol)
        {
            return null;
        }

        return NameList.Source.Allows(typeName, name, writes, SymbolNames.Parameters(definition)) ? null : Reasons.Member(typeName, name);
    }

    private string? Unknown(ITypeSymbol type)
    {
        if (_types.TryGetValue(type, out var known))
        {
            return known;
        }

        // Set first: a type may be an argument of its own base.
        _types[type] = null;
        return _types[type] = Find(type);
    }

    private string? Find(ITypeSymbol type)
    {
        switch (type)
        {
            case IArrayTypeSymbol array:
                return Unknown(array.ElementType);
            case IDynamicTypeSymbol:
                return "`dynamic` is not allowed in a rule: what it calls is known too late. Write the type, or `var`.";
            case IPointerTypeSymbol or IFunctionPointerTypeSymbol:
                return "A pointer is not allowed in a rule: a rule does not reach the memory of the machine. Use a list or an array.";
            case INamedTypeSymbol { TypeKind: not TypeKind.Error } named:
                var arguments = named.TypeArguments.Select(Unknown).FirstOrDefault(found => found is not null);
                if (arguments is not null || IsOwn(named, own) || named.IsAnonymousType || named.IsTupleType)
                {
                    return arguments ?? (named.ContainingType is { } outer ? Unknown(outer) : null);
                }

                var name = SymbolNames.Of(named);
                return NameList.Source.Knows(name) ? null : Reasons.Type(name);
            default:
                return null;
        }
    }

    // The last name says it best: of a.B.C() the caret stands at C.
    private static Microsoft.CodeAnalysis.Text.TextSpan Place(SyntaxNode at) => at switch
    {
        InvocationExpressionSyntax call => Place(call.Expression),
        MemberAccessExpressionSyntax access => access.Name.Span,
        MemberBindingExpressionSyntax access => access.Name.Span,
        ObjectCreationExpressionSyntax made => made.Type.Span,
        CommonForEachStatementSyntax loop => loop.Expression.Span,
        _ => at.Span,
    };
}
