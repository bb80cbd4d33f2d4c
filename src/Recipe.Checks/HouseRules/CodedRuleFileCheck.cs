using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A check of a file of rules in C# where it is named.</summary>
public abstract class CodedRuleFileCheck : ElsewhereCheck
{
    /// <summary>Rules that are not run protect nobody, and no reason changes that.</summary>
    public sealed override bool CanBeAccepted => false;

    /// <summary>Nobody is hurt by it: the checks of the program speak all the same.</summary>
    public sealed override bool IsSafety => false;

    /// <summary>The trouble that it speaks of.</summary>
    public abstract CodedRuleTrouble Trouble { get; }

    internal void Examine(CheckContext context, CodedRuleNote note)
    {
        if (note.Trouble == Trouble)
        {
            context.Report(note.Where, note.Said, labels: note.At is { } place ? [new FindingLabel(place, "here")] : null);
        }
    }
}
