using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A temperature read at a time.</summary>
/// <param name="Time">Time from the start of the cure.</param>
/// <param name="Temperature">Temperature of the part, or of the room where nothing better is known.</param>
public readonly record struct TemperatureReading(Duration Time, Temperature Temperature);
