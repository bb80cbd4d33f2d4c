using Recipe.Model;

namespace Recipe.Documents.Bags;

/// <summary>
/// A place on the bag as one looks at it from above. The feed of an infusion is drawn below, so its vent is above; where there is no feed, these are the two
/// long edges.
/// </summary>
internal enum BagPlace
{
    /// <summary>The recipe names no place.</summary>
    Unsaid,

    /// <summary>It names one that a drawing of this part does not know: "trailing edge".</summary>
    Unread,

    /// <summary>Beside the part on the flange; on which side is not said.</summary>
    Flange,

    /// <summary>Along the edge where the resin comes in.</summary>
    Feed,

    /// <summary>Along the edge where the air goes out.</summary>
    Vent,

    /// <summary>All round.</summary>
    Rim,

    /// <summary>In the middle of the part.</summary>
    Middle,

    /// <summary>At the left end.</summary>
    Left,

    /// <summary>At the right end.</summary>
    Right,

    /// <summary>Across the part from the port.</summary>
    Opposite,
}

/// <summary>
/// Where the fittings of a bag are. A recipe says it in words; the words that the trade uses for it are read, all others are left alone and their place
/// counts as assumed.
/// </summary>
/// <param name="Vent">Where the vent is.</param>
/// <param name="VentSaid">Whether the recipe says so.</param>
internal sealed record BagPlaces(BagPlace Vent, bool VentSaid)
{
    /// <summary>The places of a bag, with the vent of its infusion.</summary>
    public static BagPlaces Of(Infusion? infusion) => Read(infusion?.Vent) switch
    {
        BagPlace.Unsaid or BagPlace.Unread or BagPlace.Flange => new(BagPlace.Vent, false),
        BagPlace.Opposite or BagPlace.Feed => new(BagPlace.Vent, true),
        var read => new(read, true),
    };

    /// <summary>Where a port is, and whether the recipe says so; of one that is on the flange, it does not say on which side.</summary>
    public (BagPlace Place, bool IsSaid) Port(Placed<Fitting> port, Infusion? infusion)
    {
        var read = Read(port.At);
        if (read == BagPlace.Unread && SharesAnEdge(port.At!, infusion?.Vent))
        {
            return (Vent, VentSaid);
        }

        // Without a word a port of an infusion sits on its vent: air leaves there (common practice).
        return read switch
        {
            BagPlace.Vent => (Vent, true),
            BagPlace.Unsaid or BagPlace.Unread or BagPlace.Flange when infusion is not null => (Vent, false),
            BagPlace.Unsaid or BagPlace.Unread => (BagPlace.Flange, false),
            BagPlace.Opposite => (infusion is null ? BagPlace.Vent : Vent, true),
            _ => (read, read != BagPlace.Flange),
        };
    }

    /// <summary>Where the gauge is, and whether the recipe says so: across from the port where it says nothing.</summary>
    public (BagPlace Place, bool IsSaid) Gauge(string? at, Infusion? infusion)
    {
        var read = Read(at);
        if (read == BagPlace.Unread && SharesAnEdge(at!, infusion?.Vent))
        {
            return (Vent, VentSaid);
        }

        return read is BagPlace.Unsaid or BagPlace.Unread or BagPlace.Flange ? (BagPlace.Opposite, false) : (read == BagPlace.Vent ? Vent : read, true);
    }

    /// <summary>The place that words mean.</summary>
    public static BagPlace Read(string? at)
    {
        if (string.IsNullOrWhiteSpace(at))
        {
            return BagPlace.Unsaid;
        }

        var words = at.Replace('-', ' ');
        return Has("between") ? BagPlace.Middle
            : Has("opposite", "other side", "other end", "far side", "far end") ? BagPlace.Opposite
            : Has("vent side", "vent end", "at the vent", "on the vent", "vacuum side", "vacuum line") ? BagPlace.Vent
            : Has("feed") ? BagPlace.Feed
            : Has("ring ", "all round", "round the rim") ? BagPlace.Rim
            : Has("far edge", "far long edge", "far rim") ? BagPlace.Vent
            : Has("middle", "centre", "center") ? BagPlace.Middle
            : Has("left end", "left side", "left edge", "on the left") ? BagPlace.Left
            : Has("right end", "right side", "right edge", "on the right") ? BagPlace.Right
            : Has("flange", "beside the", "past the plies", "past the end") ? BagPlace.Flange
            : BagPlace.Unread;

        bool Has(params ReadOnlySpan<string> phrases)
        {
            foreach (var phrase in phrases)
            {
                if (words.Contains(phrase, StringComparison.OrdinalIgnoreCase))
                {
                    return true;
                }
            }

            return false;
        }
    }

    // "trailing-edge side" is where a vent "along the trailing edge" is, wherever that lies.
    private static bool SharesAnEdge(string at, string? vent) => vent is not null && Edge(at) is { } edge && edge.Equals(Edge(vent), StringComparison.OrdinalIgnoreCase);

    private static string? Edge(string words)
    {
        var each = words.Replace('-', ' ').Split([' ', ',', ';'], StringSplitOptions.RemoveEmptyEntries);
        var at = Array.FindIndex(each, word => word.Equals("edge", StringComparison.OrdinalIgnoreCase));
        return at > 0 ? each[at - 1] : null;
    }
}
