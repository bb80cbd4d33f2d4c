namespace Recipe.Engineering;

/// <summary>The form of a mesh file, told by its bytes; the name is asked only where the bytes leave a choice.</summary>
public enum MeshFormat
{
    /// <summary>None of those below.</summary>
    Unknown,

    /// <summary>Stereolithography file of 50 bytes a triangle; it says no unit.</summary>
    StlBinary,

    /// <summary>Stereolithography file in words; it says no unit.</summary>
    StlAscii,

    /// <summary>Wavefront object file; it says no unit.</summary>
    Obj,

    /// <summary>Polygon file, in words or in bytes of either order; it says no unit.</summary>
    Ply,

    /// <summary>3D Manufacturing Format (ISO/IEC 25422), a package of XML; it says its unit.</summary>
    ThreeMf,
}
