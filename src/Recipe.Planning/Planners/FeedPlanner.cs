using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>The feed lines of an infusion while the plan is made.</summary>
/// <param name="Lines">How many, all halves together.</param>
/// <param name="Length">Length of one, m; null when not known.</param>
/// <param name="Bore">Inner diameter, m.</param>
internal sealed record FeedWork(Num Lines, Num? Length, Num Bore);

/// <summary>
/// Counts the feed lines: what `infuse` says is said of one bag, and each half of a mould has a bag of its own, as its plies and sheets are those of
/// one half too.
/// </summary>
internal static class FeedPlanner
{
    public static FeedWork? Work(PlanContext context, Ground? ground)
    {
        if (context.Process != Process.Infused)
        {
            return null;
        }

        var (infusion, sides) = (context.Part.Infusion, ground?.Sides ?? 1);
        var stated = context.Figures.Count(infusion?.FeedLines, context.PartOwner, "feed-lines");
        var each = stated ?? (sides > 1 ? context.TakeKnown(Defaults.FeedLines) : new Known<int>(1, Rests.None));
        var length = context.Figures.Length(infusion?.FeedLine, context.PartOwner, "feed-line length", zero: true)
            ?? (ground is null ? null : new Num(ground.Surface.DevelopedLength.Meters, ground.ShapeOn | context.Ledger.Assume(Defaults.FeedLine)));
        return new FeedWork(new Num((double)each.Value * sides, each.On), length, Bore(context));
    }

    /// <summary>Inner diameter of a line, m: as it is said, else that of the hose in the bag, which it is cut from.</summary>
    public static Num Bore(PlanContext context) =>
        context.Figures.Length(context.Part.Infusion?.LineDiameter, context.PartOwner, "feed-line diameter")
        ?? HoseWork.BoreOf(context)
        ?? context.Take(Defaults.LineBore);

    public static FeedPlan Publish(PlanLedger ledger, FeedWork work) => new()
    {
        Lines = ledger.Publish((int)Math.Min(work.Lines.Si, int.MaxValue), work.Lines.On),
        Length = ledger.PublishLength(work.Length),
        Bore = ledger.PublishLength(work.Bore),
    };
}
