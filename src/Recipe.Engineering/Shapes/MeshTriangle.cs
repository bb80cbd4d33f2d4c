namespace Recipe.Engineering;

/// <summary>A triangle by the indices of its corners, counter-clockwise seen from the side that cloth is laid on.</summary>
/// <param name="A">First corner.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
public readonly record struct MeshTriangle(int A, int B, int C);
