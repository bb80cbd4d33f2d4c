namespace Recipe.Checks;

/// <summary>A check of a rule of the house where it is written down.</summary>
public abstract class RuleFileCheck : ElsewhereCheck
{
    /// <summary>A rule that is wrong is put right, not accepted.</summary>
    public sealed override bool CanBeAccepted => false;

    /// <summary>Nobody is hurt by it: the part is looked at by the rule itself.</summary>
    public sealed override bool IsSafety => false;

    /// <summary>Looks at one rule. Says nothing when all is well.</summary>
    internal abstract void Examine(CheckContext context, JudgedRule rule);
}
