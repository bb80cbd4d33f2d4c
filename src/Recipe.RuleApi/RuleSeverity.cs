namespace Recipe.RuleApi;

/// <summary>How bad a finding is.</summary>
public enum RuleSeverity
{
    /// <summary>Worth a look.</summary>
    Advice,

    /// <summary>Likely to spoil something.</summary>
    Warning,

    /// <summary>Not to be built like this.</summary>
    Error,
}
