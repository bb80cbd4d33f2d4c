namespace Recipe.Engineering;

/// <summary>How a surface bends, which decides how a flat cloth takes to it.</summary>
public enum Curvature
{
    /// <summary>A plane: cloth lies on it without bending.</summary>
    Flat,

    /// <summary>Bent one way only (cylinder, cone): cloth bends to it without shear.</summary>
    Single,

    /// <summary>Plane faces that meet at edges: cloth needs cuts at the corners.</summary>
    Faceted,

    /// <summary>Bent both ways (cap, bowl): cloth has to shear, or be cut in darts or gores.</summary>
    Double,
}
