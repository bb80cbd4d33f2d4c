using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A check of a file of rules in C# where it is named. It looks at no part.</summary>
public abstract class CodedRuleFileCheck : Check
{
    /// <summary>Rules that are not run protect nobody, and no reason changes that.</summary>
    public sealed override bool CanBeAccepted => false;

    /// <summary>Nobody is hurt by it: the checks of the program speak all the same.</summary>
    public sealed override bool IsSafety => false;

    /// <summary>The trouble that it speaks of.</summary>
    public abstract CodedRuleTrouble Trouble { get; }

    /// <summary>Nothing: files of rules are looked at one by one.</summary>
    public sealed override void Examine(CheckContext context)
    {
    }

    internal void Examine(CheckContext context, CodedRuleNote note)
    {
        if (note.Trouble == Trouble)
        {
            context.Report(note.Where, note.Said, labels: note.At is { } place ? [new FindingLabel(place, "here")] : null);
        }
    }
}
