namespace Recipe.Engineering;

/// <summary>A part of a mesh that is asked for: <see cref="HalfSpaceRegion"/>, <see cref="GroupRegion"/> or <see cref="PatchRegion"/>.</summary>
public abstract record MeshRegion
{
    private protected MeshRegion()
    {
    }
}
