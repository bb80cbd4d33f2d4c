namespace Recipe.Planning.Comparing;

/// <summary>What became of a line of the stack.</summary>
public enum LineFate
{
    /// <summary>It says what it said.</summary>
    Same,

    /// <summary>It has its name, but says something else: another cloth, another angle.</summary>
    Changed,

    /// <summary>It says what it said under another name.</summary>
    Renamed,

    /// <summary>It is new.</summary>
    Added,

    /// <summary>It is gone.</summary>
    Removed,
}

/// <summary>One line of the stack in two versions.</summary>
/// <param name="Before">The line before; null when it is new.</param>
/// <param name="After">The line after; null when it is gone.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="Moved">Whether it lies between other lines than before.</param>
public sealed record StackChange(StackPlan? Before, StackPlan? After, LineFate Fate, bool Moved)
{
    /// <summary>Whether anything is different.</summary>
    public bool IsChange => Fate != LineFate.Same || Moved;
}
