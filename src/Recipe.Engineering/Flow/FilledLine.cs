using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A feed line, spiral or hose that stands full of resin.</summary>
/// <param name="Bore">Inner diameter; zero or more.</param>
/// <param name="Length">Length; zero or more.</param>
public sealed record FilledLine(Length Bore, Length Length);
