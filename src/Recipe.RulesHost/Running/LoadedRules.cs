using System.Collections.Immutable;
using System.Runtime.Loader;
using Recipe.RuleApi;

namespace Recipe.RulesHost.Running;

/// <summary>The rules of one file, ready to run.</summary>
internal sealed class LoadedRules
{
    private LoadedRules(ImmutableArray<Type> types, ImmutableArray<RuleDescription> descriptions)
    {
        Types = types;
        Descriptions = descriptions;
    }

    /// <summary>The classes, in the order of the file.</summary>
    public ImmutableArray<Type> Types { get; }

    /// <summary>What each says of itself, in the same order.</summary>
    public ImmutableArray<RuleDescription> Descriptions { get; }

    /// <summary>Loads an assembly that passed the gate.</summary>
    public static ImmutableArray<Type> Load(byte[] image, IEnumerable<string> types)
    {
        var context = new AssemblyLoadContext("rules", isCollectible: true);
        using var stream = new MemoryStream(image, writable: false);
        var assembly = context.LoadFromStream(stream);
        return [.. types.Select(type => assembly.GetType(type, throwOnError: true)!)];
    }

    /// <summary>Rules whose descriptions are known.</summary>
    public static LoadedRules Of(ImmutableArray<Type> types, ImmutableArray<RuleDescription> descriptions) => new(types, descriptions);

    /// <summary>A new instance of a rule.</summary>
    public static HouseRule Make(Type type) => (HouseRule)Activator.CreateInstance(type)!;
}
