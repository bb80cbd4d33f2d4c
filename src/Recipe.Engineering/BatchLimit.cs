namespace Recipe.Engineering;

/// <summary>What keeps a pot from being larger.</summary>
public enum BatchLimit
{
    /// <summary>Nothing: one pot holds the whole need.</summary>
    Need,

    /// <summary>The largest mass allowed in one pot.</summary>
    PotLimit,

    /// <summary>The pot life: a larger pot would go off before it is laid.</summary>
    PotLife,
}
