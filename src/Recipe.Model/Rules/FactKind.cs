namespace Recipe.Model;

/// <summary>What kind of thing a fact is.</summary>
public enum FactKind
{
    /// <summary>A quantity with a unit, or a share.</summary>
    Quantity,

    /// <summary>A count, or a number without a unit.</summary>
    Number,

    /// <summary>Money, in the currency of the shop.</summary>
    Money,

    /// <summary>A word of the language, or a name.</summary>
    Word,

    /// <summary>What the author wrote in a text.</summary>
    Text,

    /// <summary>Yes or no.</summary>
    YesNo,
}
