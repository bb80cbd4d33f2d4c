namespace Recipe.Engineering;

/// <summary>How well the hands know this job.</summary>
public enum Experience
{
    /// <summary>Many parts of this kind made and weighed.</summary>
    Experienced,

    /// <summary>New to the work, or the first part after a change.</summary>
    Novice,
}
