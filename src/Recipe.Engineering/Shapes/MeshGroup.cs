namespace Recipe.Engineering;

/// <summary>A named stretch of the triangles of a mesh, as files of several solids or groups have them.</summary>
/// <param name="Name">The name in the file.</param>
/// <param name="First">Index of its first triangle.</param>
/// <param name="Count">How many triangles it has.</param>
public sealed record MeshGroup(string Name, int First, int Count);
