using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A temperature and the band it may lie in.</summary>
/// <param name="Expected">The likeliest.</param>
/// <param name="Low">The coolest.</param>
/// <param name="High">The hottest.</param>
public sealed record TemperatureBand(Temperature Expected, Temperature Low, Temperature High);
