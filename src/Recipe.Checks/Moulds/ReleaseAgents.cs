using Recipe.Model;

namespace Recipe.Checks;

/// <summary>Release agents that a fix can offer.</summary>
internal static class ReleaseAgents
{
    /// <summary>The agent of a kind that comes first by name and holds no silicone; null when there is none in scope.</summary>
    public static ReleaseAgent? First(RecipeModel model, ReleaseKind kind) => model.Materials.Values
        .OfType<ReleaseAgent>()
        .Where(a => a.Kind == kind && a.HoldsSilicone != true)
        .MinBy(a => a.Name, StringComparer.Ordinal);
}
