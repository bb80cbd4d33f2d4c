namespace Recipe.Engineering;

/// <summary>How the need is spread over the pots.</summary>
public enum BatchStyle
{
    /// <summary>All pots alike: one mix card serves for all.</summary>
    Equal,

    /// <summary>Full pots first and the rest in the last one.</summary>
    FullPotsThenRest,
}
