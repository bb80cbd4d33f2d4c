using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A finding and the check that raised it.</summary>
internal readonly record struct Raised(Check Check, Finding Finding);

/// <summary>What the checks say of one part, before any reason is heard. See <see cref="Examiner.Conclude"/>.</summary>
public sealed class PartExamination
{
    internal PartExamination(Part part, ImmutableArray<Raised> raised, ImmutableArray<NotChecked> unspoken)
    {
        (Part, Raised, Unspoken) = (part, raised, unspoken);
    }

    /// <summary>The part.</summary>
    public Part Part { get; }

    internal ImmutableArray<Raised> Raised { get; }

    internal ImmutableArray<NotChecked> Unspoken { get; }

    /// <summary>
    /// The same said of the same part in a later text, in which its words stand elsewhere; null when a place that is spoken of has
    /// no successor.
    /// </summary>
    /// <param name="part">The part as the later text has it.</param>
    /// <param name="place">Where a span of the earlier text is now; null when it is gone.</param>
    public PartExamination? MovedTo(Part part, Func<SourceSpan, SourceSpan?> place)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(place);
        var lost = false;
        var moved = new PartExamination(
            part,
            [.. Raised.Select(raised => raised with { Finding = Moved(raised.Finding) })],
            [.. Unspoken.Select(note => note with { Where = Place(note.Where) })]);
        return lost ? null : moved;

        Finding Moved(Finding finding) => finding with
        {
            Where = Place(finding.Where),
            Labels = [.. finding.Labels.Select(label => label with { Where = Place(label.Where) })],
            Fixes = [.. finding.Fixes.Select(fix => new Fix(fix.Title, fix.Safety, [.. fix.Edits.Select(edit => edit with { Where = Place(edit.Where) })]))],
        };

        SourceSpan Place(SourceSpan where)
        {
            var now = place(where);
            lost |= now is null;
            return now ?? where;
        }
    }
}
