namespace Recipe.Engineering;

/// <summary>The types of figures in polygon files.</summary>
internal enum PlyType
{
    None,
    Int8,
    UInt8,
    Int16,
    UInt16,
    Int32,
    UInt32,
    Float,
    Double,
}
