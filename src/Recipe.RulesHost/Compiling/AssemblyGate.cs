using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using Recipe.RuleAnalyzers.AllowList;

namespace Recipe.RulesHost.Compiling;

/// <summary>
/// Holds a compiled assembly to the list: every type and member outside itself that its tables name. It needs no compiler, and it
/// sees what the compiler called although nobody wrote it.
/// </summary>
internal static class AssemblyGate
{
    private static readonly NameList Written = NameList.Wider(NameList.Source, CompilerNames.List);

    /// <summary>The names that are not on the list.</summary>
    /// <exception cref="BadImageFormatException">It is no assembly.</exception>
    public static IEnumerable<string> Examine(byte[] image)
    {
        using var file = new PEReader(new MemoryStream(image, writable: false));
        var reader = file.GetMetadataReader();
        var names = new MetadataNames();
        var found = new SortedSet<string>(StringComparer.Ordinal);
        if (reader.GetTableRowCount(TableIndex.ImplMap) > 0 || reader.GetTableRowCount(TableIndex.File) > 0 || reader.GetTableRowCount(TableIndex.ManifestResource) > 0)
        {
            found.Add("code outside the assembly");
        }

        foreach (var handle in reader.TypeReferences)
        {
            var type = MetadataNames.Of(reader, handle);
            if (!Written.Knows(type) && !IsMark(type))
            {
                found.Add(type);
            }
        }

        foreach (var handle in reader.MemberReferences)
        {
            var member = reader.GetMemberReference(handle);
            var parent = member.Parent.Kind switch
            {
                HandleKind.TypeReference => MetadataNames.Of(reader, (TypeReferenceHandle)member.Parent),
                HandleKind.TypeSpecification => reader.GetTypeSpecification((TypeSpecificationHandle)member.Parent).DecodeSignature(MetadataNames.Full, null),
                _ => "",
            };

            // Members of the assembly's own generic types, and of its arrays of one dimension.
            if (parent.Length == 0 || parent[0] == '!')
            {
                continue;
            }

            var name = reader.GetString(member.Name);
            var parameters = member.GetKind() == MemberReferenceKind.Method ? member.DecodeMethodSignature(names, null).ParameterTypes : [];
            var writes = name.StartsWith("set_", StringComparison.Ordinal);
            var plain = writes || name.StartsWith("get_", StringComparison.Ordinal) ? name[4..] : name;
            if (!Written.Allows(parent, plain, writes, parameters) && !(IsMark(parent) && name == ".ctor"))
            {
                found.Add($"{parent}.{name}");
            }
        }

        return found;
    }

    // Marks that the compiler leaves on what it made; they run nothing.
    private static bool IsMark(string type) =>
        type.EndsWith("Attribute", StringComparison.Ordinal)
        && (type.StartsWith("System.Runtime.CompilerServices.", StringComparison.Ordinal) || type.StartsWith("System.Diagnostics.", StringComparison.Ordinal) || type is "System.ParamArrayAttribute" or "System.Reflection.DefaultMemberAttribute");
}
