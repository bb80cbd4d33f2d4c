using System.Collections.Immutable;
using System.Runtime.Loader;
using Recipe.RuleApi;

namespace Recipe.RulesHost.Running;

/// <summary>The rules of one file, ready to run.</summary>
internal sealed class LoadedRules
{
    private const int MostThatStay = 200;
    private static int _loads;

    private LoadedRules(string file, ImmutableArray<Type> types, ImmutableArray<RuleDescription> descriptions)
    {
        File = file;
        Types = types;
        Descriptions = descriptions;
    }

    /// <summary>The file.</summary>
    public string File { get; }

    /// <summary>The classes, in the order of the file.</summary>
    public ImmutableArray<Type> Types { get; }

    /// <summary>What each says of itself, in the same order.</summary>
    public ImmutableArray<RuleDescription> Descriptions { get; }

    /// <summary>Loads an assembly that passed the gate.</summary>
    /// <remarks>
    /// The first stay until the host ends: the runtime compiles methods that can be unloaded with all optimisations at once, which takes ten times as
    /// long as the rule then runs. Only an author who types for long gets to those that can.
    /// </remarks>
    public static ImmutableArray<Type> Load(byte[] image, IEnumerable<string> types)
    {
        var context = new AssemblyLoadContext("rules", isCollectible: ++_loads > MostThatStay);
        using var stream = new MemoryStream(image, writable: false);
        var assembly = context.LoadFromStream(stream);
        return [.. types.Select(type => assembly.GetType(type, throwOnError: true)!)];
    }

    /// <summary>Rules whose descriptions are known.</summary>
    public static LoadedRules Of(string file, ImmutableArray<Type> types, ImmutableArray<RuleDescription> descriptions) =>
        new(file, types, [.. descriptions.Select(rule => rule with { File = file })]);

    /// <summary>The same rules when the same text is another file.</summary>
    public LoadedRules In(string file) => file == File ? this : Of(file, Types, Descriptions);

    /// <summary>A new instance of a rule.</summary>
    public static HouseRule Make(Type type) => (HouseRule)Activator.CreateInstance(type)!;
}
