using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One point of a cure.</summary>
/// <param name="Time">Time from its start.</param>
/// <param name="Temperature">Temperature.</param>
/// <param name="Degree">Degree of cure.</param>
/// <param name="GlassTransition">Glass transition, or null when it is not known.</param>
public sealed record CurePoint(Duration Time, Temperature Temperature, Ratio Degree, Temperature? GlassTransition);
