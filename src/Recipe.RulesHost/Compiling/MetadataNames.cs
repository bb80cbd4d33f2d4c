using System.Collections.Immutable;
using System.Reflection.Metadata;

namespace Recipe.RulesHost.Compiling;

/// <summary>Names in the form of the list, from the tables of an assembly: simple ones for parameters, whole ones for types.</summary>
internal sealed class MetadataNames : ISignatureTypeProvider<string, object?>
{
    private readonly bool _full;

    public MetadataNames()
    {
    }

    private MetadataNames(bool full) => _full = full;

    /// <summary>Reads the whole name of the type that a member belongs to; one that starts with <c>!</c> is of the assembly itself.</summary>
    public static MetadataNames Full { get; } = new(full: true);

    public static string Of(MetadataReader reader, TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        var name = reader.GetString(type.Name);
        return type.ResolutionScope.Kind == HandleKind.TypeReference
            ? $"{Of(reader, (TypeReferenceHandle)type.ResolutionScope)}+{name}"
            : type.Namespace.IsNil ? name : $"{reader.GetString(type.Namespace)}.{name}";
    }

    public string GetPrimitiveType(PrimitiveTypeCode typeCode) => _full ? "System." + typeCode : typeCode.ToString();

    public string GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) =>
        _full ? Of(reader, handle) : Simple(reader.GetString(reader.GetTypeReference(handle).Name));

    public string GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind) => _full ? "!own" : "own";

    public string GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) =>
        reader.GetTypeSpecification(handle).DecodeSignature(this, genericContext);

    // An array of one dimension has no members of its own in the tables.
    public string GetSZArrayType(string elementType) => _full ? "System.Array" : elementType + "[]";

    public string GetArrayType(string elementType, ArrayShape shape) => _full ? "an array of several dimensions" : elementType + "[,]";

    public string GetByReferenceType(string elementType) => elementType;

    public string GetPointerType(string elementType) => "a pointer";

    public string GetPinnedType(string elementType) => "a pinned value";

    public string GetModifiedType(string modifier, string unmodifiedType, bool isRequired) => unmodifiedType;

    public string GetFunctionPointerType(MethodSignature<string> signature) => "a pointer to a function";

    public string GetGenericInstantiation(string genericType, ImmutableArray<string> typeArguments) => genericType;

    public string GetGenericTypeParameter(object? genericContext, int index) => "!";

    public string GetGenericMethodParameter(object? genericContext, int index) => "!";

    private static string Simple(string name) => name.Split('`')[0];
}
