namespace Recipe.Engineering;

/// <summary>Why a file gives no mesh.</summary>
public enum MeshRefusalReason
{
    /// <summary>The file has no bytes.</summary>
    Empty,

    /// <summary>The bytes are of no form that is read here.</summary>
    NotAMesh,

    /// <summary>The file ends before what it announces.</summary>
    Truncated,

    /// <summary>A word or figure stands where the form has no place for it.</summary>
    Malformed,

    /// <summary>The form allows it, but it is not read here.</summary>
    NotSupported,

    /// <summary>A coordinate is infinite or not a number.</summary>
    NotANumber,

    /// <summary>A face has a corner that the file does not give.</summary>
    NoSuchCorner,

    /// <summary>There is no triangle, or none that has an area.</summary>
    NoTriangles,

    /// <summary>There are more triangles than are read.</summary>
    TooManyTriangles,

    /// <summary>A package holds more than is unpacked.</summary>
    TooMuchInside,

    /// <summary>The form has no unit and none is given.</summary>
    UnitNotSaid,

    /// <summary>A coordinate is too far away for a mould: the unit is probably wrong.</summary>
    TooLarge,

    /// <summary>The whole is too small for a mould: the unit is probably wrong.</summary>
    TooSmall,
}
