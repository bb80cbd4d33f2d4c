using Recipe.Model;

namespace Recipe.Checks;

/// <summary>Release agents that a fix can offer, and which of a mould's own meet.</summary>
internal static class ReleaseAgents
{
    /// <summary>The lines of the release, for a check that misses or counts one: the mould's where it has no release block.</summary>
    public static LinesRead? ReleaseLines(this Part part) =>
        part.Mould is { } mould ? new LinesRead(mould.ReleaseWhere ?? mould.Where, AllOfTheLine: mould.ReleaseWhere is not null) : null;

    /// <summary>The lines of the mould itself, for a check that misses one.</summary>
    public static LinesRead? MouldLines(this Part part) => part.Mould is { } mould ? new LinesRead(mould.Where, AllOfTheLine: true) : null;

    /// <summary>Whether two lines of a release go on one face: not when each names another half.</summary>
    public static bool Meets(this ReleaseCoat coat, ReleaseCoat other) => coat.On is null || other.On is null || coat.On == other.On;

    /// <summary>The agent of a kind that comes first by name and holds no silicone; null when there is none in scope.</summary>
    public static ReleaseAgent? First(RecipeModel model, ReleaseKind kind) => model.Materials.Values
        .OfType<ReleaseAgent>()
        .Where(a => a.Kind == kind && a.HoldsSilicone != true)
        .MinBy(a => a.Name, StringComparer.Ordinal);
}
