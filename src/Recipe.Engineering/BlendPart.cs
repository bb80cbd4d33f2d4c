using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One ingredient of a resin side: parts by weight, and its epoxide equivalent weight when it carries epoxide.</summary>
/// <param name="Parts">Parts by weight; greater than zero when used.</param>
/// <param name="EpoxideEquivalent">
/// Epoxide equivalent weight (grams holding one mole of epoxide groups), or null for fillers, pigments and other parts without any.
/// </param>
public sealed record BlendPart(double Parts, MolarMass? EpoxideEquivalent);
