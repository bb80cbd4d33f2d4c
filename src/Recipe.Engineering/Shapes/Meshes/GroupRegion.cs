namespace Recipe.Engineering;

/// <summary>The triangles of every group with a name.</summary>
/// <param name="Name">The name, as it is in the file.</param>
public sealed record GroupRegion(string Name) : MeshRegion;
