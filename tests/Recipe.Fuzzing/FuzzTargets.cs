using Recipe.Fuzzing.Targets;

namespace Recipe.Fuzzing;

/// <summary>All ways in.</summary>
internal static class FuzzTargets
{
    /// <summary>The targets, by name.</summary>
    public static IReadOnlyList<IFuzzTarget> All { get; } =
    [
        new TextTarget(), new CheckTarget(), new EditorTarget(), new RecordsTarget(), new MeshTarget(), new ShapeTarget(), new ProtocolTarget(), new HttpTarget(), new WireTarget(),
    ];

    /// <summary>A target by its name, or null.</summary>
    public static IFuzzTarget? Find(string name) => All.FirstOrDefault(target => target.Name == name);
}
