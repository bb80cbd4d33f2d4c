namespace Recipe.Engineering;

/// <summary>How a piece may be turned on its roll, besides lying as it is drawn.</summary>
public enum NestTurn
{
    /// <summary>Not at all: cloth with a pattern or a nap that runs one way.</summary>
    None,

    /// <summary>By half a turn: the strands stay where they were, so that any ply may.</summary>
    Half,

    /// <summary>By a quarter turn as well: mat, film, felt, and balanced woven cloth cut straight to the roll.</summary>
    Quarter,
}
