using Microsoft.CodeAnalysis;

namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>Whether a value can be kept from one part to the next without carrying anything over.</summary>
internal static class Immutable
{
    private static readonly HashSet<string> ReadOnlyViews =
    [
        "System.Collections.Generic.IReadOnlyList`1", "System.Collections.Generic.IReadOnlyCollection`1",
        "System.Collections.Generic.IReadOnlyDictionary`2", "System.Collections.Generic.IReadOnlySet`1",
    ];

    private static readonly HashSet<string> Mutable =
    [
        "System.Array", "System.Collections.Generic.List`1", "System.Collections.Generic.Dictionary`2", "System.Collections.Generic.HashSet`1",
        "System.Collections.Generic.Queue`1", "System.Collections.Generic.Stack`1", "System.Collections.Generic.ICollection`1",
        "System.Collections.Generic.IList`1", "System.Collections.Generic.IDictionary`2", "System.Collections.Generic.ISet`1",
    ];

    /// <summary>Whether nothing about a value of the type can change.</summary>
    public static bool Is(ITypeSymbol type) => Is(type, []);

    /// <summary>Whether a cast to the type could open a read-only view.</summary>
    public static bool OpensViews(ITypeSymbol type) =>
        type is IArrayTypeSymbol or ITypeParameterSymbol || (type is INamedTypeSymbol named && Mutable.Contains(SymbolNames.Of(named)));

    private static bool Is(ITypeSymbol type, HashSet<ITypeSymbol> open)
    {
        if (type.TypeKind == TypeKind.Enum || type.SpecialType is >= SpecialType.System_Boolean and <= SpecialType.System_String)
        {
            return true;
        }

        if (type is not INamedTypeSymbol named)
        {
            return false;
        }

        var name = SymbolNames.Of(named);
        if (ReadOnlyViews.Contains(name) || name is "System.Nullable`1" or "System.Collections.Generic.KeyValuePair`2")
        {
            return named.TypeArguments.All(argument => Is(argument, open));
        }

        if (name.StartsWith("UnitsNet.", System.StringComparison.Ordinal) || name is "System.StringComparer" or "System.Globalization.CultureInfo")
        {
            return true;
        }

        if (!named.Locations.Any(location => location.IsInSource) || named.TypeKind is not (TypeKind.Class or TypeKind.Struct) || !(named.IsSealed || named.IsValueType))
        {
            return named.IsTupleType && named.TypeArguments.All(argument => Is(argument, open));
        }

        // A type of the rule's own that refers to itself is settled by its other fields.
        return !open.Add(named)
            || (named.BaseType is null or { SpecialType: SpecialType.System_Object or SpecialType.System_ValueType }
                && named.GetMembers().OfType<IFieldSymbol>().Where(field => !field.IsStatic).All(field => field.IsReadOnly && Is(field.Type, open)));
    }
}
