namespace Recipe.Compiler;

/// <summary>What stands in the file of a shape, as a store read it; the same object as long as the bytes are the same.</summary>
/// <param name="name">The name it was asked for.</param>
/// <param name="bytes">The bytes.</param>
public sealed class ShapeBytes(string name, ReadOnlyMemory<byte> bytes)
{
    /// <summary>The name it was asked for.</summary>
    public string Name { get; } = name;

    /// <summary>The bytes.</summary>
    public ReadOnlyMemory<byte> Bytes { get; } = bytes;
}
