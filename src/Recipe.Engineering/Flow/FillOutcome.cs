using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How far an infusion comes.</summary>
/// <param name="Time">Time from opening the feed until all is wet, or null when the front creeps on for ever and never gets there.</param>
/// <param name="Front">Distance or radius of the front at the end: the one asked for, or the one that it creeps towards.</param>
public sealed record FillOutcome(Duration? Time, Length Front);
