using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A part that nobody gave a title.</summary>
public sealed class NoTitle : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3199",
        Name = "no-title",
        Severity = Severity.Advice,
        Title = "A part without a title",
        Reason = "On a rack of ten a name of the file is not what people call the part.",
        Remedy = "Give it the title that people call it by.",
        Source = "common practice",
        Exceptions = "A variant has the title of its part.",
        BadExample = """
            part lid {
              use cosmetic
            }
            """,
        GoodExample = """
            part lid {
              use cosmetic
              title "Lid"
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => new LinesRead(part.Where);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Title is not null || part.VariantOf is not null)
        {
            return;
        }

        context.Report(
            part.Where,
            $"{part.Name} has no title",
            fixes: [Edits.Fix("Call it Lid", FixSafety.NeedsALook, Edits.Last(part.Where, "title \"Lid\""))]);
    }
}
