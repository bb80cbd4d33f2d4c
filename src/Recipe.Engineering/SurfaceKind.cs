namespace Recipe.Engineering;

/// <summary>The shapes whose areas and rims <see cref="Surfaces"/> works out.</summary>
public enum SurfaceKind
{
    /// <summary>A flat rectangle.</summary>
    FlatRectangle,

    /// <summary>A flat disc.</summary>
    FlatDisc,

    /// <summary>The lateral face of a whole cylinder, open at both ends.</summary>
    Cylinder,

    /// <summary>The lateral face of a cone or of a frustum of a cone.</summary>
    Frustum,

    /// <summary>A cap cut from a sphere by a plane.</summary>
    SphericalCap,

    /// <summary>Half an ellipsoid, cut through the plane of two of its axes.</summary>
    HalfEllipsoid,

    /// <summary>A paraboloid of revolution from its vertex to its rim.</summary>
    Paraboloid,

    /// <summary>An open box: a bottom and four walls.</summary>
    OpenBox,

    /// <summary>A shaped surface of which only the area is known.</summary>
    ShapedArea,
}
