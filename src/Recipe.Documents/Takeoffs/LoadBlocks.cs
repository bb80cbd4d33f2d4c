using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Takeoffs;

/// <summary>What the stated loads do to the stack, and how it wants to spring when it cools.</summary>
internal static class LoadBlocks
{
    // In kelvin: less than a temperature is said to.
    private const double LeastCooling = 0.05;

    public static IEnumerable<Block> Of(PaperContext context, StiffnessPlan stiffness)
    {
        if (stiffness.Loads.IsEmpty)
        {
            yield break;
        }

        yield return new Table(
            "What the stated loads do to a flat piece of the full-cover stack; a strip is judged bent either way",
            [
                new("Load", NamesTheRow: true), new("Stated", WidthMm: 62), new("Times until the first limit", Align.Right, 34),
                new("First there", WidthMm: 58), new("Largest stress", WidthMm: 48), new("Sag", Align.Right, 24),
            ],
            [.. stiffness.Loads.Select(load => Row(context, load))]);
        yield return new Paragraph(
            "By the rule of maximum strain, with the limits that the recipe gives: no scatter, hole, knock, damp, heat, fatigue, buckling or stress of the cure is in it. "
            + "A line whose limits are not known is not judged.",
            Fine: true);
    }

    /// <summary>Curl on one line.</summary>
    public static string Curl(PaperContext context, StiffnessPlan stiffness)
    {
        if (stiffness.Curl is not { } curl)
        {
            return context.Plan.Gaps.Any(gap => gap.Subject == "curl on cooling") ? "not computed, see below" : "not computed: no hold in the mould is stated";
        }

        if (curl.IsSymmetric)
        {
            return "none, the stack is the same from both sides";
        }

        var text = context.Text;
        if (curl.StressFree is { } cured && Math.Abs((cured.Value - curl.Room.Value).Kelvins) < LeastCooling)
        {
            return $"none, the part cures at the {text.Temperature(curl.Room.Value)} of the room";
        }

        var from = curl.StressFree is { } free ? $" from {text.Temperature(free.Value)} to {text.Temperature(curl.Room.Value)}" : "";
        var (rise, width) = (text.Deflection(curl.RiseAlong.Value), text.Deflection(curl.RiseAcross.Value));
        return $"a flat piece {text.Sheet(curl.Length, curl.Width)}, free of everything, that cools{from} rises "
            + (context.Tube is null
                ? $"{rise} in the middle of its length, {width} in that of its width and {text.Deflection(curl.CornerRise.Value)} at a corner; a shell is held by its shape: compare stacks with it"
                : $"{rise} in the middle of its length and {width} in that of its width; a closed tube is held by its shape: compare stacks with it");
    }

    private static CellRow Row(PaperContext context, LoadPlan plan) => new(
    [
        plan.Load.Name,
        Stated(context, plan.Load),
        new TextCell(plan.First is { } first ? Numbers.Significant(first.Factor.Value, 2, Rounding.Down) : Never(plan), NotJudged(plan)),
        plan.First is { } limit ? $"{limit.Line}, {Words(context, limit)}" : "",
        Largest(context, plan),
        plan.Sag is { } sag ? context.Text.Deflection(sag.Value).ToString() : "",
    ]);

    private static string Never(LoadPlan plan) => plan.WithoutLimits.Length == plan.Lines.Length ? "not known" : "no known limit reached";

    private static string? NotJudged(LoadPlan plan)
    {
        var without = plan.WithoutLimits.IsEmpty ? null : "no limit known: " + string.Join(", ", plan.WithoutLimits);
        var partly = plan.PartlyJudged.IsEmpty ? null : "not every limit known: " + string.Join(", ", plan.PartlyJudged);
        return without is null ? partly : partly is null ? without : $"{without}; {partly}";
    }

    private static string Stated(PaperContext context, StatedLoad load)
    {
        var text = context.Text;
        var way = load.Direction == LoadDirection.Along ? "along" : "across";
        return load switch
        {
            PullLoad pull => $"{text.Written(pull.Pull, text.Pull)} {way}",
            StripLoad strip => $"strip {text.Written(strip.Width, text.Size)} wide cut {way}, supports {text.Written(strip.Span, text.Size)} apart, "
                + $"{text.Written(strip.Load, text.AsMass)} in the middle",
            _ => way,
        };
    }

    private static string Words(PaperContext context, FirstLimit limit)
    {
        var mode = limit.Mode switch
        {
            StrainMode.StretchAlong => "stretched along its yarns",
            StrainMode.PressAlong => "pressed along its yarns",
            StrainMode.StretchAcross => "stretched across its yarns",
            StrainMode.PressAcross => "pressed across its yarns",
            _ => "sheared in its plane",
        };
        return (limit.BagSideStretched, context.IsWrapped) switch
        {
            (true, false) => mode + ", the bag side stretched",
            (false, false) => mode + ", the mould side stretched",
            (true, true) => mode + ", the outside stretched",
            (false, true) => mode + ", the mandrel side stretched",
            (null, _) => mode,
        };
    }

    private static string Largest(PaperContext context, LoadPlan plan) => plan.Lines.MaxBy(line => line.Along.Value.Pascals) is { } line
        ? $"{context.Text.Stress(line.Along.Value)} along the yarns of {line.Name}"
        : "";
}
