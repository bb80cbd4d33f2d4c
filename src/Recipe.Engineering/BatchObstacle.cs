namespace Recipe.Engineering;

/// <summary>Why no split into pots works.</summary>
public enum BatchObstacle
{
    /// <summary>The usable life is over before even a small pot is mixed.</summary>
    LifeShorterThanMixing,

    /// <summary>The pots would have to be smaller than the smallest that can be weighed well.</summary>
    PotBelowSmallest,

    /// <summary>More pots than allowed would be needed.</summary>
    TooManyPots,
}
