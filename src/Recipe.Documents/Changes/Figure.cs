using Recipe.Planning;

namespace Recipe.Documents.Changes;

/// <summary>A figure by which two versions of a part are compared.</summary>
/// <param name="Key">What programs call it, with its SI unit: <c>trimmed_mass_kg</c>.</param>
/// <param name="Label">What people call it.</param>
/// <param name="Value">The figure in SI, or null when a plan has none.</param>
/// <param name="Text">How it is written in the shop's units.</param>
/// <param name="InShares">Whether a difference is said in per cent too.</param>
internal sealed record Figure(string Key, string Label, Func<Plan, double?> Value, Func<QuantityText, double, string> Text, bool InShares = false);
