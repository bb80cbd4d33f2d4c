using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>Outlines laid out on rolls and offcuts.</summary>
/// <param name="Placements">The pieces that are laid, by roll as given, then from the cut end.</param>
/// <param name="Uses">Each roll or offcut that something is cut from, as given.</param>
/// <param name="Missing">The pieces for which there was no room.</param>
/// <param name="EndedEarly">Whether the search was stopped before its work was done; then another run may give another layout.</param>
public sealed record OutlineNest(
    ImmutableArray<OutlinePlacement> Placements,
    ImmutableArray<RollUse> Uses,
    ImmutableArray<OutlineMissing> Missing,
    bool EndedEarly);
