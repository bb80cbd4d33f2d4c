using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Checks;

/// <summary>
/// The order of a bag from the part outwards: peel ply, release film, bleeder, solid film, breather, bag film; in an infusion peel ply,
/// perforated film, flow medium, bag film. Any of them may be left out; what matters is what lies under what.
/// </summary>
/// <remarks>
/// FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-6 to 3-8; US Army TM 1-1500-204-23-11 (page files 0045, 0046, 0170 to 0175).
/// </remarks>
internal static class BagOrder
{
    /// <summary>Whether the list is wrong as written and right the other way round, with a felt or the bag film on the laminate.</summary>
    public static bool IsUpsideDown(Part part)
    {
        if (part.Bag is not { Layers: { Length: > 1 } layers })
        {
            return false;
        }

        var order = layers.Select(l => l.Class).ToImmutableArray();
        return order[0] is LayerClass.Breather or LayerClass.Bleeder or LayerClass.BagFilm or LayerClass.FlowMedium
            && !IsLegal(order)
            && IsLegal([.. order.Reverse()]);
    }

    /// <summary>Whether a list of layers can be laid in its order, from the part outwards.</summary>
    public static bool IsLegal(ImmutableArray<LayerClass> order)
    {
        if (order is [LayerClass.Breather or LayerClass.Bleeder or LayerClass.FlowMedium, ..] or [LayerClass.BagFilm, _, ..])
        {
            return false;
        }

        var bagFilm = order.IndexOf(LayerClass.BagFilm);
        var lastPeelPly = order.LastIndexOf(LayerClass.PeelPly);
        var firstFilm = order.IndexOf(LayerClass.ReleaseFilm);
        return (bagFilm < 0 || bagFilm == order.Length - 1)
            && (firstFilm < 0 || lastPeelPly < firstFilm);
    }

    /// <summary>Index of the first item that answers, or -1.</summary>
    public static int IndexOf<T>(this ImmutableArray<T> items, Func<T, bool> answers)
    {
        for (var i = 0; i < items.Length; i++)
        {
            if (answers(items[i]))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Index of the last item that answers, or -1.</summary>
    public static int LastIndexOf<T>(this ImmutableArray<T> items, Func<T, bool> answers)
    {
        for (var i = items.Length - 1; i >= 0; i--)
        {
            if (answers(items[i]))
            {
                return i;
            }
        }

        return -1;
    }
}
