using System.Collections.Immutable;
using System.Reflection.Metadata;

namespace Recipe.Architecture.Tests;

/// <summary>Turns metadata into documentation ids (ECMA-334, annex D), as far as names of banned members need them.</summary>
internal sealed class DocumentationNames(MetadataReader reader) : ISignatureTypeProvider<string, object?>
{
    public string Of(TypeReferenceHandle handle)
    {
        var type = reader.GetTypeReference(handle);
        var name = reader.GetString(type.Name);
        if (type.ResolutionScope.Kind == HandleKind.TypeReference)
        {
            return $"{Of((TypeReferenceHandle)type.ResolutionScope)}.{name}";
        }

        return type.Namespace.IsNil ? name : $"{reader.GetString(type.Namespace)}.{name}";
    }

    /// <summary>The member referred to, or null for one of the assembly's own types or of an array.</summary>
    public MemberUse? Member(MemberReference member)
    {
        var type = member.Parent.Kind switch
        {
            HandleKind.TypeReference => Of((TypeReferenceHandle)member.Parent),
            HandleKind.TypeSpecification => Generic((TypeSpecificationHandle)member.Parent),
            _ => null,
        };
        if (type is null)
        {
            return null;
        }

        var name = reader.GetString(member.Name);
        if (member.GetKind() == MemberReferenceKind.Field)
        {
            return new MemberUse(type, name, $"F:{type}.{name}");
        }

        var parameters = member.DecodeMethodSignature(this, null).ParameterTypes;
        var id = $"M:{type}.{name.Replace('.', '#')}" + (parameters.IsEmpty ? "" : $"({string.Join(',', parameters)})");
        return new MemberUse(type, name, id);
    }

    public string GetPrimitiveType(PrimitiveTypeCode typeCode) => "System." + typeCode;

    public string GetTypeFromReference(MetadataReader reader, TypeReferenceHandle handle, byte rawTypeKind) => Of(handle);

    public string GetTypeFromDefinition(MetadataReader reader, TypeDefinitionHandle handle, byte rawTypeKind)
    {
        var type = reader.GetTypeDefinition(handle);
        return $"{reader.GetString(type.Namespace)}.{reader.GetString(type.Name)}";
    }

    public string GetTypeFromSpecification(MetadataReader reader, object? genericContext, TypeSpecificationHandle handle, byte rawTypeKind) =>
        reader.GetTypeSpecification(handle).DecodeSignature(this, genericContext);

    public string GetSZArrayType(string elementType) => elementType + "[]";

    public string GetArrayType(string elementType, ArrayShape shape) => $"{elementType}[{new string(',', shape.Rank - 1)}]";

    public string GetByReferenceType(string elementType) => elementType + "@";

    public string GetPointerType(string elementType) => elementType + "*";

    public string GetPinnedType(string elementType) => elementType;

    public string GetModifiedType(string modifier, string unmodifiedType, bool isRequired) => unmodifiedType;

    public string GetFunctionPointerType(MethodSignature<string> signature) => "function pointer";

    public string GetGenericInstantiation(string genericType, ImmutableArray<string> typeArguments) =>
        $"{genericType.Split('`')[0]}{{{string.Join(',', typeArguments)}}}";

    public string GetGenericTypeParameter(object? genericContext, int index) => $"`{index}";

    public string GetGenericMethodParameter(object? genericContext, int index) => $"``{index}";

    private string? Generic(TypeSpecificationHandle handle)
    {
        var type = reader.GetTypeSpecification(handle).DecodeSignature(this, null);
        var arguments = type.IndexOf('{', StringComparison.Ordinal);
        return arguments < 0 ? null : type[..arguments];
    }
}
