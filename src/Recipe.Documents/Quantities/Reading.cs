namespace Recipe.Documents;

/// <summary>A quantity as people read it. Number and unit are joined by a no-break space.</summary>
/// <param name="Main">In the units that come first: "118 g".</param>
/// <param name="Beside">The same in other units, or null: "4.16 oz".</param>
public readonly record struct Reading(string Main, string? Beside = null)
{
    /// <summary>Both on one line: "118 g (4.16 oz)".</summary>
    public override string ToString() => Beside is null ? Main : $"{Main} ({Beside})";
}

/// <summary>Which way a number is rounded when the other way would be the dangerous one.</summary>
public enum Rounding
{
    /// <summary>To the nearest.</summary>
    Nearest,

    /// <summary>A limit: never more than was computed.</summary>
    Down,

    /// <summary>A need: never less than was computed.</summary>
    Up,
}
