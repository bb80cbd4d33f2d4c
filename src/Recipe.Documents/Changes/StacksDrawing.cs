using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
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

    public static Drawing? Of(Plan before, Plan after)
    {
        if (before.Stack.IsEmpty && after.Stack.IsEmpty)
        {
            return null;
        }

        var changes = StackComparison.Of(before.Stack, after.Stack);
        var thick = before.Stack.Concat(after.Stack).Max(line => line.Thickness?.Value.Millimeters ?? 0);
        var (left, right) = (Heights(before, thick), Heights(after, thick));
        var height = Top + Math.Max(left.Values.Sum(), right.Values.Sum()) + Mould + 1;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.Add(new TextShape(new(BandWidth / 2, 4.5), "before", SizePt, Anchor.Middle, Strong: true));
        shapes.Add(new TextShape(new(Width - (BandWidth / 2), 4.5), "after", SizePt, Anchor.Middle, Strong: true));
        var lefts = Bands(shapes, 0.5, height, left, changes, line => changes.First(change => ReferenceEquals(change.Before, line)));
        var rights = Bands(shapes, Width - BandWidth - 0.5, height, right, changes, line => changes.First(change => ReferenceEquals(change.After, line)));
        foreach (var change in changes)
        {
            if (change is { Before: { } was, After: { } now })
            {
                shapes.Add(PathShape.Line(BandWidth + 0.5, lefts[was], Width - BandWidth - 0.5, rights[now], change.IsChange ? Pen.Firm : Pen.Thin));
            }
        }

        var what = changes.Where(change => change.IsChange).Select(change => $"{(change.After ?? change.Before)!.Item.Name} {Word(change)}");
        return new Drawing(
            "stacks", "Both stacks, the mould below", $"The plies before and after: {string.Join(", ", what.DefaultIfEmpty("no line is different"))}.", Width, height, shapes.ToImmutable());
    }

    private static Dictionary<StackPlan, double> Heights(Plan plan, double thickest) => plan.Stack.ToDictionary(
        line => line,
        line => thickest > 0 ? Math.Max(LeastBand, MostBand * (line.Thickness?.Value.Millimeters ?? 0) / thickest) : LeastBand,
        (IEqualityComparer<StackPlan>)ReferenceEqualityComparer.Instance);

    // From the mould upwards; the answer is the height of the middle of each band.
    private static Dictionary<StackPlan, double> Bands(
        ImmutableArray<Shape>.Builder shapes, double x, double height, Dictionary<StackPlan, double> heights, ImmutableArray<StackChange> changes, Func<StackPlan, StackChange> changeOf)
    {
        var middles = new Dictionary<StackPlan, double>(ReferenceEqualityComparer.Instance);
        var at = height - Mould - 0.5;
        shapes.Add(PathShape.Box(x, at, BandWidth, Mould, Pen.Thin, Fill.Hatched));
        var inOrder = changes.SelectMany(change => new[] { change.Before, change.After }).OfType<StackPlan>().Where(heights.ContainsKey).Distinct<StackPlan>(ReferenceEqualityComparer.Instance);
        foreach (var line in inOrder.OrderBy(line => IndexOf(heights, line)))
        {
            var change = changeOf(line);
            var band = heights[line];
            at -= band;
            shapes.Add(PathShape.Box(x, at, BandWidth, band, change.IsChange ? Pen.Bold with { Dashed = change.Fate == LineFate.Removed } : Pen.Thin, line.Item is Model.CoreItem ? Fill.Dotted : Fill.White));
            var text = Fit($"{(line.Number > 0 ? Numbers.Whole(line.Number) + " " : "")}{line.Item.Name}: {WrittenText.ForReading(StackComparison.RestOf(line.Item))}", BandWidth - 3);
            shapes.Add(new TextShape(new(x + 1.5, at + (band / 2) + (Lettering.HeightMm(SizePt) / 2)), text, SizePt, Strong: change.IsChange));
            middles.Add(line, at + (band / 2));
        }

        return middles;
    }

    private static int IndexOf(Dictionary<StackPlan, double> heights, StackPlan line) => heights.Keys.TakeWhile(key => !ReferenceEquals(key, line)).Count();

    private static string Word(StackChange change) => change.Fate switch
    {
        LineFate.Added => "new",
        LineFate.Removed => "gone",
        LineFate.Renamed => "renamed",
        LineFate.Changed => "changed",
        _ => "moved",
    };

    private static string Fit(string text, double width)
    {
        if (Lettering.WidthMm(text, SizePt, strong: true) <= width)
        {
            return text;
        }

        var length = text.Length;
        while (length > 1 && Lettering.WidthMm(text[..length] + "…", SizePt, strong: true) > width)
        {
            length--;
        }

        return text[..length].TrimEnd() + "…";
    }
}
