namespace Recipe.Editing;

/// <summary>What a computed figure beside a line is about; each can be switched off.</summary>
public enum HintTopic
{
    /// <summary>Thickness of a ply and of the stack so far.</summary>
    Thickness,

    /// <summary>Grams of resin.</summary>
    Resin,

    /// <summary>Minutes on the clock.</summary>
    Clock,

    /// <summary>Absolute pressure in the bag.</summary>
    Pressure,

    /// <summary>Hours, gel and degree of cure.</summary>
    Cure,
}

/// <summary>A computed figure that an editor shows beside the line that causes it.</summary>
/// <param name="Offset">Behind which character it stands.</param>
/// <param name="Text">The figure, short.</param>
/// <param name="Tooltip">What it is and what it rests on.</param>
/// <param name="Topic">What it is about.</param>
public sealed record Hint(int Offset, string Text, string Tooltip, HintTopic Topic);
