using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.HouseRules;

/// <summary>The changes that a rule offers, in the text of the recipe.</summary>
internal static class RuleChanges
{
    /// <summary>The change; null where it has nothing to change: the fact is computed or stands in another file, or the block is not there.</summary>
    public static Fix? Fix(RuleFix fix, FactNode thing, FactNode part, SourceText text)
    {
        if (!fix.AddsLine)
        {
            var where = (thing.Find(fix.Word) ?? part.Find(fix.Word))?.Where;
            return where is { } place && ReferenceEquals(place.Source, text) && place.Text != fix.NewText
                ? new Fix($"Write {fix.NewText}", FixSafety.NeedsALook, new TextEdit(place, fix.NewText))
                : null;
        }

        if (!ReferenceEquals(part.Where.Source, text) || BlockText.BlockAfter(text, part.Where.Span.Start) is not { } block || BlockText.BlockIn(text, block, fix.Word) is not { } head)
        {
            return null;
        }

        return Edits.Fix($"Add {fix.NewText} to {fix.Word}", FixSafety.NeedsALook, Edits.Last(new SourceSpan(text, head), fix.NewText));
    }
}
