namespace Recipe.Engineering;

/// <summary>Where in a layer a strain or stress is read.</summary>
public enum LayerFace
{
    /// <summary>The face towards the mould.</summary>
    MouldSide,

    /// <summary>Half-way through the layer.</summary>
    Middle,

    /// <summary>The face towards the bag.</summary>
    BagSide,
}
