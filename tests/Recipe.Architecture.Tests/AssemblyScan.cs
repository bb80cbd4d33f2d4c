using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace Recipe.Architecture.Tests;

/// <summary>What a compiled assembly refers to outside itself, read from its metadata without loading it.</summary>
internal sealed record AssemblyScan(IReadOnlySet<string> ReferencedAssemblies, IReadOnlySet<string> Types, IReadOnlySet<MemberUse> Members)
{
    // The compiler itself writes this property into every iterator, so it says nothing about the source.
    private static readonly MemberUse WrittenByTheCompiler =
        new("System.Environment", "get_CurrentManagedThreadId", "M:System.Environment.get_CurrentManagedThreadId");

    public static AssemblyScan Open(string path)
    {
        using var stream = File.OpenRead(path);
        using var file = new PEReader(stream);
        var reader = file.GetMetadataReader();
        var names = new DocumentationNames(reader);
        return new AssemblyScan(
            reader.AssemblyReferences.Select(handle => reader.GetString(reader.GetAssemblyReference(handle).Name)).ToHashSet(),
            reader.TypeReferences.Select(handle => names.Of(handle)).ToHashSet(),
            reader.MemberReferences.Select(handle => names.Member(reader.GetMemberReference(handle))).OfType<MemberUse>().ToHashSet());
    }

    /// <summary>Every use of a banned name: the banned member itself, or a member of a banned type, or that type alone.</summary>
    public IEnumerable<string> Banned(IReadOnlyDictionary<string, string> bans)
    {
        foreach (var type in Types.Where(type => bans.ContainsKey("T:" + type)))
        {
            var uses = Members.Where(member => member.Type == type).ToList();
            foreach (var use in uses.Where(use => use != WrittenByTheCompiler))
            {
                yield return $"{use.Id}: {bans["T:" + type]}";
            }

            if (uses.Count == 0)
            {
                yield return $"T:{type}: {bans["T:" + type]}";
            }
        }

        foreach (var member in Members)
        {
            if (bans.TryGetValue(member.Id, out var reason) || (member.Property is { } property && bans.TryGetValue(property, out reason)))
            {
                yield return $"{member.Id}: {reason}";
            }
        }
    }

    /// <summary>Calls of UnitsNet's parser through one of its hundred quantities, which a list of banned names cannot hold.</summary>
    public IEnumerable<string> UnitsNetParsing() =>
        Members
            .Where(member => member.Type.StartsWith("UnitsNet.", StringComparison.Ordinal))
            .Where(member => member.Name is "Parse" or "TryParse" or "ParseUnit" or "TryParseUnit")
            .Select(member => member.Id);
}
