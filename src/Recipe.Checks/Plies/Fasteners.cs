using Recipe.Model;

namespace Recipe.Checks;

/// <summary>Holes that a fastener is to go through.</summary>
internal static class Fasteners
{
    private static readonly string[] Words = ["bolt", "rivet", "screw", "fastener", "hinge", "cleat"];

    /// <summary>Whether a finishing step drills a hole for a fastener, by its words.</summary>
    public static bool Named(FinishStep step) =>
        step.Verb == "drill" && Words.Any(word => step.Text.Contains(word, StringComparison.OrdinalIgnoreCase));
}
