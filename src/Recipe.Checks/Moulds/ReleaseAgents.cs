using Recipe.Model;

namespace Recipe.Checks;

/// <summary>Release agents that a fix can offer, and which of a mould's own meet.</summary>
internal static class ReleaseAgents
{
    /// <summary>Whether two lines of a release go on one face: not when each names another half.</summary>
    public static bool Meets(this ReleaseCoat coat, ReleaseCoat other) => coat.On is null || other.On is null || coat.On == other.On;

    /// <summary>The agent of a kind that comes first by name and holds no silicone; null when there is none in scope.</summary>
    public static ReleaseAgent? First(RecipeModel model, ReleaseKind kind) => model.Materials.Values
        .OfType<ReleaseAgent>()
        .Where(a => a.Kind == kind && a.HoldsSilicone != true)
        .MinBy(a => a.Name, StringComparer.Ordinal);
}
