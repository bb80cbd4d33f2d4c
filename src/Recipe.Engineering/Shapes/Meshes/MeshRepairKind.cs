namespace Recipe.Engineering;

/// <summary>What was mended in a mesh, or seen and left as it was.</summary>
public enum MeshRepairKind
{
    /// <summary>Points with the very same coordinates were made one; every STL file has them.</summary>
    PointsMerged,

    /// <summary>Points on open edges that lie within the rounding of a file were made one.</summary>
    PointsWelded,

    /// <summary>Points on open edges across a small gap were made one.</summary>
    GapsClosed,

    /// <summary>Triangles without an area were dropped.</summary>
    ZeroAreaDropped,

    /// <summary>Triangles with the same corners as an earlier one were dropped.</summary>
    DuplicatesDropped,

    /// <summary>Triangles were turned to face the side of their neighbours, or a closed body outwards.</summary>
    TrianglesTurned,

    /// <summary>Points of no triangle were dropped.</summary>
    UnusedPointsDropped,

    /// <summary>Bytes after the last triangle were not read.</summary>
    TrailingBytesIgnored,

    /// <summary>Left as they were: edges at which more than two triangles meet.</summary>
    NonManifoldEdgesLeft,

    /// <summary>Left as they were: edges whose two triangles cannot both face one side, as on a band with half a twist.</summary>
    OpposedEdgesLeft,

    /// <summary>Left as they were: edges of one triangle only, the rims and holes of an open surface.</summary>
    OpenEdgesLeft,
}
