namespace Recipe.Engineering;

/// <summary>What can be said of the strain limits of a laminate under a load, and what cannot.</summary>
/// <param name="Governing">
/// The limit that is reached first among those that are given; null when none is given or the load never reaches one.
/// </param>
/// <param name="PliesWithoutLimits">Plies of which a layer has no strain limit at all, by index: no data, and not judged.</param>
/// <param name="PliesPartlyJudged">Plies that have limits, but not for every way in which this load strains them, by index.</param>
/// <param name="PliesWithoutExpansion">
/// Plies whose thermal expansion is not known although a change of temperature was asked for; when there are any, nothing is judged.
/// </param>
public sealed record FirstPlyAnswer(
    FirstPlyMargin? Governing,
    IReadOnlyList<int> PliesWithoutLimits,
    IReadOnlyList<int> PliesPartlyJudged,
    IReadOnlyList<int> PliesWithoutExpansion)
{
    /// <summary>Whether every ply was judged for every way in which the load strains it.</summary>
    public bool IsComplete => PliesWithoutLimits.Count + PliesPartlyJudged.Count + PliesWithoutExpansion.Count == 0;
}
