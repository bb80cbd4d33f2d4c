using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How far an infusion comes.</summary>
/// <param name="Time">Time from opening the feed until all is wet, or null when the front stops short.</param>
/// <param name="Front">Distance or radius of the front at the end: the one asked for, or where it is when the viscosity limit is reached.</param>
/// <param name="Viscosity">Viscosity at that moment; null when the front creeps on for ever towards <paramref name="Front"/> and never gets there.</param>
public sealed record FillOutcome(Duration? Time, Length Front, DynamicViscosity? Viscosity);
