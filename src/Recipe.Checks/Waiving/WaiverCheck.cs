namespace Recipe.Checks;

/// <summary>A check of the waivers themselves. It runs when all other checks have spoken, once for the file.</summary>
public abstract class WaiverCheck : Check
{
    /// <summary>A waiver of a waiver would never end.</summary>
    public sealed override bool CanBeAccepted => false;

    /// <summary>Looks at what became of each waiver.</summary>
    public sealed override void Examine(CheckContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        foreach (var use in context.Waivers)
        {
            Examine(context, use);
        }
    }

    private protected abstract void Examine(CheckContext context, WaiverUse use);
}
