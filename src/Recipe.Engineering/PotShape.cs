namespace Recipe.Engineering;

/// <summary>The vessel that the mixed resin stands in, which decides how fast it gets rid of its heat.</summary>
public enum PotShape
{
    /// <summary>A cup or bucket, deeper than 10 mm of resin.</summary>
    DeepCup,

    /// <summary>A flat tray with at most 10 mm of resin.</summary>
    ShallowTray,
}
