namespace Recipe.Model;

/// <summary>A file that a surface was drawn or scanned into, as it was read at one moment; the same object stands for the same bytes.</summary>
/// <param name="name">Its name, as the workspace calls it.</param>
/// <param name="bytes">What stands in it.</param>
public sealed class ShapeFile(string name, ReadOnlyMemory<byte> bytes)
{
    /// <summary>Its name, as the workspace calls it.</summary>
    public string Name { get; } = name;

    /// <summary>What stands in it.</summary>
    public ReadOnlyMemory<byte> Bytes { get; } = bytes;
}
