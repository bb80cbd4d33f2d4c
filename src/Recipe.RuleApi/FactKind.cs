namespace Recipe.RuleApi;

/// <summary>What a fact holds.</summary>
public enum FactKind
{
    /// <summary>A quantity in its SI unit.</summary>
    Quantity,

    /// <summary>A plain number, a count or a share from 0 to 1.</summary>
    Number,

    /// <summary>A word of the language or a name.</summary>
    Word,

    /// <summary>A text that somebody wrote.</summary>
    Text,

    /// <summary>Yes or no.</summary>
    YesNo,
}
