namespace Recipe.Engineering;

/// <summary>A mesh of a net, between two warp and two weft threads.</summary>
/// <param name="I">Least number of its warp steps: it reaches from I to I + 1.</param>
/// <param name="J">Least number of its weft steps.</param>
/// <param name="Shear">90 degrees less the angle between the threads towards rising I and J, mean of its four corners; -pi/2 to pi/2, rad.</param>
/// <param name="IsWhole">Whether its four corners lie on the surface.</param>
/// <param name="SquareMetres">Area of the part that lies on the surface, m2.</param>
public readonly record struct DrapeCell(int I, int J, double Shear, bool IsWhole, double SquareMetres);
