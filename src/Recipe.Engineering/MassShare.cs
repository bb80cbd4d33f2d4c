using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One thing that adds to the mass of a part, and how far it may be off.</summary>
/// <param name="Expected">Expected mass; zero or more.</param>
/// <param name="HalfWidth">Half the width of its band, relative to the expected mass; zero or more.</param>
public sealed record MassShare(Mass Expected, Ratio HalfWidth);
