using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What is cut from one roll or offcut.</summary>
/// <param name="Stock">Index of the roll or offcut among those given.</param>
/// <param name="Pieces">How many pieces lie on it; 1 or more.</param>
/// <param name="LengthUsed">From its cut end to the far edge of the last piece.</param>
/// <param name="LeastLength">No layout of these pieces on it is shorter: the greater of their area over its width and the longest of them, each in its shorter allowed position.</param>
/// <param name="Waste">Share of the used length that lies outside the pieces; 0 to 1.</param>
public sealed record RollUse(int Stock, int Pieces, Length LengthUsed, Length LeastLength, Ratio Waste);
