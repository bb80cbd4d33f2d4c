using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>
/// One thing that can be wrong with a recipe. A check is one small class: what it says about itself, when it fires, and what could
/// be changed. It holds no state, so one object serves every part and every thread.
/// </summary>
public abstract class Check
{
    /// <summary>Code, name, severity, reason, documentation.</summary>
    public abstract FindingDescriptor Descriptor { get; }

    /// <summary>
    /// Whether a written reason can silence it. False only where somebody could be hurt: no reason makes a burning pot safe.
    /// </summary>
    public virtual bool CanBeAccepted => true;

    /// <summary>
    /// Whether somebody can be hurt: a shop's settings then make it no milder than a warning. What <see cref="CanBeAccepted"/> refuses is safety too.
    /// </summary>
    public virtual bool IsSafety => !CanBeAccepted;

    /// <summary>
    /// Whether what it finds is a slip from which nearly all else follows that is found of the part: until it is mended or accepted, only this and what
    /// is safety are said. Such a finding is an error, so that nothing is built on it.
    /// </summary>
    public virtual bool SettlesFirst => false;

    /// <summary>
    /// The block whose lines the check misses or whose order it judges; null when it speaks of what stands there. While a line of that
    /// block is not understood the check does not run, since the line may be the one it would miss.
    /// </summary>
    public virtual LinesRead? Reads(Part part) => null;

    /// <summary>
    /// Looks at one part. Reports what is wrong, or what is missing to tell; says nothing when all is well.
    /// Must not throw, whatever is absent from the part or its plan.
    /// </summary>
    public abstract void Examine(CheckContext context);
}
