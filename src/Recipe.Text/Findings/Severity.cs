namespace Recipe.Text.Findings;

/// <summary>How bad a finding is.</summary>
public enum Severity
{
    /// <summary>Good practice that is missing; the part will probably be sound.</summary>
    Advice,

    /// <summary>Usually wrong; can be accepted with a written reason.</summary>
    Warning,

    /// <summary>Would ruin the part or the mould, or hurt someone, in any shop.</summary>
    Error,
}
