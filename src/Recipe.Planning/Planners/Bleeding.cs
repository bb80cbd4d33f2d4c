using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>
/// What the bag does to a laminate that was laid wet: resin laid = resin that stays + resin that the layers carry away, shared out over
/// the plies by the resin in them. A ply whose laid content is stated gives up its share; one whose final content is known is laid
/// that much wetter. What a core's faces drink stays in them.
/// </summary>
/// <remarks>
/// A bag squeezes a cloth only so dry: a ply gives no more than that leaves (a light laminate, laid lean), and then the layers take less
/// than they could, the outermost first. Where there is no ply to bleed they take nothing. Resin under a core that covers everything cannot reach the bag; it is taken to bleed like the rest.
/// </remarks>
internal static class Bleeding
{
    public static (ImmutableArray<LineWork> Stack, BagWork? Bag) Work(PlanContext context, ImmutableArray<LineWork> stack, BagWork? bag)
    {
        if (context.Process is not (Process.Hand or Process.Bagged) || !context.Part.UnreadPlies.IsEmpty)
        {
            return (stack, bag);
        }

        var taken = bag?.Pickup ?? Num.Zero;
        var all = Num.Zero;
        foreach (var line in stack)
        {
            if (line.Item is PlyItem)
            {
                if (line.CutResin is not { } resin)
                {
                    return (stack, bag);
                }

                all += resin;
            }
        }

        var share = all.Si > 0 ? taken / all : Num.Zero;
        var lines = ImmutableArray.CreateBuilder<LineWork>(stack.Length);
        var given = Num.Zero;
        foreach (var line in stack)
        {
            var bled = Bleed(context, line, share);
            lines.Add(bled.Line);
            given += bled.Gives;
        }

        // Sums that only differ by rounding leave the layers as they are.
        return (lines.MoveToImmutable(), bag is not null && taken.Si - given.Si > 1e-12 * taken.Si ? Limit(bag, taken - given) with { CouldTake = taken } : bag);
    }

    private static (LineWork Line, Num Gives) Bleed(PlanContext context, LineWork line, Num share)
    {
        if (line.Item is not PlyItem ply || line.CutResin is not { } resin || share.Si <= 0)
        {
            return (line with { LaidResin = line.CutResin }, Num.Zero);
        }

        var gives = resin * share;
        if (!line.IsAsLaid)
        {
            return (line with { LaidResin = resin + gives }, gives);
        }

        var most = resin - Driest(context, ply, line, resin);
        gives = gives.Si <= most.Si ? gives : most;
        var perArea = (resin - gives) / line.CutArea!.Value;
        return (line.Holding(perArea) with { LaidResin = resin, Content = After(line, perArea) }, gives);
    }

    // Resin in the driest laminate that a bag makes of the ply; no more than was laid.
    private static Num Driest(PlanContext context, PlyItem ply, LineWork line, Num laid)
    {
        var content = Defaults.DriestContent(ply.Material.Form);
        var least = line.CutMass!.Value * (content.Value / (1 - content.Value));
        return least.Si < laid.Si ? least.And(context.Ledger.Assume(content)) : laid;
    }

    // The content that is left, said as the stated one was: by weight, or fibre by volume.
    private static Known<Content>? After(LineWork line, Num resin)
    {
        if (line.Content is not { } stated || line.Stuff is not { } stuff)
        {
            return line.Content;
        }

        var (counted, rest) = stated.Value.Basis == ContentBasis.ResinByWeight
            ? (resin, stuff.Weight)
            : (stuff.Weight / stuff.Solid, resin / stuff.Cured);
        var fraction = counted / (counted + rest);
        return new Known<Content>(stated.Value with { Fraction = fraction.Si }, fraction.On | stated.On);
    }

    private static BagWork Limit(BagWork bag, Num excess)
    {
        var layers = bag.Layers.ToBuilder();
        for (var i = layers.Count - 1; i >= 0 && excess.Si > 0; i--)
        {
            var layer = layers[i];
            var less = Num.Min(layer.Pickup, excess);
            if (less.Si > 0)
            {
                layers[i] = layer with { PickupPerArea = (layer.Pickup - less) / (layer.WetArea * layer.Sides), CouldTake = layer.Pickup };
                excess -= less;
            }
        }

        return bag with { Layers = layers.ToImmutable() };
    }
}
