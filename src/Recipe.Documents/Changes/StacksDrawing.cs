using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Planning.Comparing;

namespace Recipe.Documents.Changes;

/// <summary>Two stacks side by side, the mould below, each line a band as thick as it is against the others; what is one line on both sides is joined.</summary>
internal static class StacksDrawing
{
    private const double Width = 170;
    private const double BandWidth = 72;
    private const double LeastBand = 5.5;
    private const double MostBand = 14;
    private const double SizePt = 9;
    private const double Top = 7;
    private const double Mould = 4;
    private const double Edge = 0.5;

    /// <summary>The drawing; null when neither version has a stack.</summary>
    public static Drawing? Of(Plan before, Plan after)
    {
        if (before.Stack.IsEmpty && after.Stack.IsEmpty)
        {
            return null;
        }

        var changes = StackComparison.Of(before.Stack, after.Stack);
        var thickest = before.Stack.Concat(after.Stack).Max(ThicknessOf);
        var height = Top + Math.Max(before.Stack.Sum(Band), after.Stack.Sum(Band)) + Mould + (2 * Edge);
        var canvas = new Canvas(Width, height);
        canvas.Text(BandWidth / 2, 4.5, "before", SizePt, Anchor.Middle, strong: true);
        canvas.Text(Width - (BandWidth / 2), 4.5, "after", SizePt, Anchor.Middle, strong: true);
        var left = Bands(before.Stack, Edge, changes.Where(change => change.Before is not null).ToDictionary<StackChange, object>(change => change.Before!, ReferenceEqualityComparer.Instance));
        var right = Bands(after.Stack, Width - BandWidth - Edge, changes.Where(change => change.After is not null).ToDictionary<StackChange, object>(change => change.After!, ReferenceEqualityComparer.Instance));
        foreach (var change in changes)
        {
            if (change is { Before: { } was, After: { } now })
            {
                canvas.Line(BandWidth + Edge, left[was], Width - BandWidth - Edge, right[now], change.IsChange ? Pen.Firm : Pen.Thin);
            }
        }

        var what = changes.Where(change => change.IsChange).Select(change => $"{(change.After ?? change.Before)!.Item.Name} {PartChanges.MarkOf(change).Word()}");
        return canvas.Draw("stacks", "Both stacks, the mould below", $"The plies before and after: {string.Join(", ", what.DefaultIfEmpty("no line is different"))}.");

        double Band(StackPlan line) => thickest > 0 ? Math.Max(LeastBand, MostBand * ThicknessOf(line) / thickest) : LeastBand;

        // From the mould upwards; the answer is the height of the middle of each band.
        Dictionary<object, double> Bands(ImmutableArray<StackPlan> stack, double x, Dictionary<object, StackChange> changeOf)
        {
            var middles = new Dictionary<object, double>(ReferenceEqualityComparer.Instance);
            var at = height - Mould - Edge;
            canvas.Add(PathShape.Box(x, at, BandWidth, Mould, Pen.Thin, Fill.Hatched));
            foreach (var line in stack)
            {
                var change = changeOf[line];
                at -= Band(line);
                var middle = at + (Band(line) / 2);
                canvas.Add(PathShape.Box(
                    x, at, BandWidth, Band(line), change.IsChange ? Pen.Bold with { Dashed = change.Fate == LineFate.Removed } : Pen.Thin, line.Item is CoreItem ? Fill.Dotted : Fill.White));
                canvas.Text(
                    x + 1.5, middle + (Lettering.HeightMm(SizePt) / 2), Fitted.To(PartChanges.Line(line, named: true), SizePt, BandWidth - 3, change.IsChange), SizePt, strong: change.IsChange);
                middles.Add(line, middle);
            }

            return middles;
        }
    }

    private static double ThicknessOf(StackPlan line) => line.Thickness?.Value.Millimeters ?? 0;
}
