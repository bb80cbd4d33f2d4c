namespace Recipe.Engineering;

/// <summary>A crossing of two threads of a net.</summary>
/// <param name="I">Steps along the warp from the start; in the cloth's plane X is this many steps.</param>
/// <param name="J">Steps along the weft from the start, counter-clockwise of the warp; Y is this many steps.</param>
/// <param name="Place">Where it lies, m.</param>
/// <param name="OnSurface">Whether it lies on the surface, and not past the rim or over cloth that is there already.</param>
public readonly record struct DrapeNode(int I, int J, Point3 Place, bool OnSurface);
