using System.Reflection;
using System.Reflection.Metadata;
using Microsoft.CodeAnalysis;
using Recipe.RuleApi;
using UnitsNet;

namespace Recipe.RulesHost.Compiling;

/// <summary>What rules are compiled against, made once.</summary>
internal static class References
{
    /// <summary>What an author's source sees.</summary>
    public static IReadOnlyList<MetadataReference> ForAuthors { get; } =
    [
        Embedded("System.Runtime"), Embedded("System.Collections"), Embedded("System.Linq"), Loaded(typeof(HouseRule).Assembly), Loaded(typeof(Mass).Assembly),
    ];

    /// <summary>The same and the counter of steps.</summary>
    public static IReadOnlyList<MetadataReference> WithSteps { get; } = [.. ForAuthors, Loaded(typeof(Running.Steps).Assembly)];

    private static PortableExecutableReference Embedded(string name)
    {
        using var stream = typeof(References).Assembly.GetManifestResourceStream($"references/{name}.dll")
            ?? throw new InvalidOperationException($"{name} is not in the rules host");
        return MetadataReference.CreateFromStream(stream);
    }

    private static unsafe PortableExecutableReference Loaded(Assembly assembly)
    {
        if (!assembly.TryGetRawMetadata(out var blob, out var length))
        {
            throw new InvalidOperationException($"{assembly.GetName().Name} has no metadata");
        }

        return AssemblyMetadata.Create(ModuleMetadata.CreateFromMetadata((IntPtr)blob, length)).GetReference();
    }
}
