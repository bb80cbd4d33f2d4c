namespace Recipe.Engineering;

/// <summary>From where a strip of laminate between feed lines is wetted.</summary>
public enum FeedSides
{
    /// <summary>From one edge; the vacuum line lies along the other.</summary>
    One,

    /// <summary>From both edges; the fronts meet midway, where a vacuum line or a path for the air must be.</summary>
    Both,
}
