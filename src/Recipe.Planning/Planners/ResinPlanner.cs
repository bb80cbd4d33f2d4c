using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>One line of the resin sum while the plan is made.</summary>
internal readonly record struct ResinLineWork(ResinUse Use, string Label, Num Mass);

/// <summary>The resin sum while the plan is made.</summary>
/// <param name="System">The resin.</param>
/// <param name="Lines">The sum.</param>
/// <param name="Need">Without spare, kg.</param>
/// <param name="ToMix">To mix, kg.</param>
/// <param name="Stated">The author's pots, kg; empty when the program plans them.</param>
internal sealed record ResinWork(ResinSystem System, ImmutableArray<ResinLineWork> Lines, Num Need, Num ToMix, ImmutableArray<Num> Stated);

/// <summary>
/// From laminate to pot: to mix = in the cut plies + core faces + carried away by the bag + lines + loss + spare. Where the author
/// states the pots, they are what is mixed, and the spare is what they hold over the need (none when they hold less).
/// </summary>
/// <remarks>
/// Loss is the author's or the shop's figure; else brush and roller plus a share of what is mixed (<c>mix = (laminate + pick-up +
/// tools) (1 + spare) / (1 - pot loss)</c>, conservation of mass). An infusion has no brush: its loss is the reserve in
/// the feed pot and what the part's own figure adds, and it has no spare but a stated one. Prepreg brings its resin along and mixes none.
/// </remarks>
internal static class ResinPlanner
{
    private const string Subject = "resin to mix";

    private static Num One => new(1, Rests.None);

    public static ResinWork? Work(PlanContext context, ImmutableArray<LineWork> stack, BagWork? bag, JoinWork? join, Conditions conditions, PlyContents contents, FeedWork? feed)
    {
        if (context.Process == Process.Prepreg)
        {
            return null;
        }

        if (context.Part.Resin is not { } resin)
        {
            context.Miss(Subject, "the part names no resin");
            return null;
        }

        if (context.MissesForAPly(Subject))
        {
            return null;
        }

        var lines = ImmutableArray.CreateBuilder<ResinLineWork>();
        if (!AddLaminate(stack, lines) || (context.Part.Bag is not null && bag is null))
        {
            context.Miss(Subject, "the resin of one of its lines is not known");
            return null;
        }

        var held = Sum(lines);
        AddPickups(bag, lines);
        if (join is { SameSession: true } && join.LaminatingResin is { Si: > 0 } seam)
        {
            lines.Add(new ResinLineWork(ResinUse.Laminate, "seam tape and filler", seam));
        }

        if (context.Process == Process.Infused)
        {
            AddFeedLines(context, feed, contents, lines);
        }

        var used = Sum(lines);
        if (used.Si <= 0)
        {
            context.Miss(Subject, "nothing in the part takes resin");
            return null;
        }

        return Mix(context, resin, lines, held, used, conditions);
    }

    public static ResinPlan Publish(PlanLedger ledger, ResinWork work)
    {
        var lines = ImmutableArray.CreateBuilder<ResinLine>(work.Lines.Length);
        foreach (var line in work.Lines)
        {
            lines.Add(new ResinLine(line.Use, line.Label, ledger.PublishMass(line.Mass)));
        }

        return new ResinPlan
        {
            System = work.System,
            Lines = lines.MoveToImmutable(),
            Need = ledger.PublishMass(work.Need),
            ToMix = ledger.PublishMass(work.ToMix),
            PotsStated = !work.Stated.IsEmpty,
        };
    }

    private static bool AddLaminate(ImmutableArray<LineWork> stack, ImmutableArray<ResinLineWork>.Builder lines)
    {
        Num? plies = Num.Zero;
        Num? area = Num.Zero;
        Num? faces = Num.Zero;
        foreach (var line in stack)
        {
            plies = line.Item is PlyItem ? plies + line.CutResin : plies;
            area = line.Item is PlyItem ? area + line.CutArea : area;
            faces = line.Item is CoreItem ? faces + line.CutResin : faces;
        }

        if (plies is not { } laminate || area is not { } cut || faces is not { } cores)
        {
            return false;
        }

        if (cut.Si > 0)
        {
            lines.Add(new ResinLineWork(ResinUse.Laminate, $"plies as cut, {Words.Area(cut.Si)}", laminate));
        }

        if (cores.Si > 0)
        {
            lines.Add(new ResinLineWork(ResinUse.CoreFaces, "both faces of the core", cores));
        }

        return true;
    }

    private static void AddPickups(BagWork? bag, ImmutableArray<ResinLineWork>.Builder lines)
    {
        foreach (var layer in bag?.Layers ?? [])
        {
            if (layer.Pickup.Si > 0)
            {
                var wet = layer.WetArea.Si * layer.Sides;
                lines.Add(new ResinLineWork(
                    ResinUse.Pickup,
                    $"{layer.Layer.Material.Label}, {Words.Area(wet)} at {Words.Number(layer.PickupPerArea.Si * 1e3)} g/m2",
                    layer.Pickup));
            }
        }
    }

    // The vacuum line stays empty; every feed line is full of resin when it is clamped.
    private static void AddFeedLines(PlanContext context, FeedWork? feed, PlyContents contents, ImmutableArray<ResinLineWork>.Builder lines)
    {
        if (feed?.Length is not { } line)
        {
            context.Miss("resin in the feed line", "its length is not known");
            return;
        }

        var (count, bore) = (feed.Lines, feed.Bore);
        var mass = bore * bore * (Math.PI / 4) * line * contents.CuredDensity * count;
        var size = $"{Words.Millimetres(line.Si)} of {Words.Millimetres(bore.Si)}";
        lines.Add(new ResinLineWork(ResinUse.Lines, count.Si > 1 ? $"{Words.Number(count.Si)} feed lines, each {size}" : $"feed line, {size}", mass));
    }

    private static ResinWork Mix(
        PlanContext context, ResinSystem resin, ImmutableArray<ResinLineWork>.Builder lines, Num held, Num used, Conditions conditions)
    {
        var figures = context.Figures;
        var wetOut = context.Part.WetOut;
        var stated = StatedPots(context);
        var (tools, potShare) = Loss(context, lines, held, used, conditions);
        if (!stated.IsEmpty)
        {
            var mixed = Sum(stated);
            AddPotLoss(lines, mixed * potShare);
            var need = Sum(lines);
            var over = mixed - need;
            lines.Add(new ResinLineWork(ResinUse.Spare, "spare in the stated pots", over.Si > 0 ? over : over with { Si = 0 }));
            return new ResinWork(resin, lines.ToImmutable(), need, mixed, stated);
        }

        var spare = figures.Number(wetOut?.Spare, context.PartOwner, "spare")
            ?? (context.Process == Process.Infused ? Num.Zero : context.Take(Defaults.Spare));
        var wanted = (used + tools) * spare;
        var toMix = (used + tools + wanted) / (One - potShare);
        AddPotLoss(lines, toMix * potShare);
        var sum = Sum(lines);
        lines.Add(new ResinLineWork(ResinUse.Spare, $"spare, {Words.Percent(spare.Si)}", wanted));
        return new ResinWork(resin, lines.ToImmutable(), sum, toMix, []);
    }

    // Adds what stays on the tools to the lines; what stays in the pots depends on what is mixed, so only its share is returned.
    private static (Num Tools, Num PotShare) Loss(
        PlanContext context, ImmutableArray<ResinLineWork>.Builder lines, Num held, Num used, Conditions conditions)
    {
        var figures = context.Figures;
        if (context.Process == Process.Infused)
        {
            var reserve = figures.Number(context.Part.Infusion?.Reserve, context.PartOwner, "reserve") ?? context.Take(Defaults.FeedReserve);
            var tail = used * reserve;
            lines.Add(new ResinLineWork(ResinUse.Loss, $"reserve in the feed pot, {Words.Percent(reserve.Si)}", tail));

            // The shop's figure is one of brush and roller; only what the part itself says is said of this pot.
            var stuck = figures.Mass(context.Part.WetOut?.Loss, context.PartOwner, "loss", zero: true) ?? context.Take(Defaults.FeedLoss);
            if (stuck.Si > 0)
            {
                lines.Add(new ResinLineWork(ResinUse.Loss, "on pot and stick", stuck));
            }

            return (tail + stuck, Num.Zero);
        }

        var stated = figures.Mass(context.Part.WetOut?.Loss, context.PartOwner, "loss", zero: true)
            ?? figures.Mass(context.Shop?.Loss, context.ShopOwner, "loss", zero: true);
        if (stated is { } loss)
        {
            lines.Add(new ResinLineWork(ResinUse.Loss, "pot, brush and roller", loss));
            return (loss, Num.Zero);
        }

        var brush = (context.Take(Defaults.ToolLoss) * conditions.Laminators.Value).And(conditions.Laminators.On);
        brush = held.Si < brush.Si ? held.And(brush.On) : brush;
        lines.Add(new ResinLineWork(ResinUse.Loss, "brush and roller", brush));
        return (brush, context.Take(Defaults.PotLoss));
    }

    private static void AddPotLoss(ImmutableArray<ResinLineWork>.Builder lines, Num loss)
    {
        if (loss.Si > 0)
        {
            lines.Add(new ResinLineWork(ResinUse.Loss, "left in the pots", loss));
        }
    }

    // `pots 3` with one `pot 100 g` means three of a hundred; several `pot` lines are the pots themselves.
    private static ImmutableArray<Num> StatedPots(PlanContext context)
    {
        var wetOut = context.Part.WetOut;
        var pots = ImmutableArray.CreateBuilder<Num>();
        foreach (var figure in wetOut?.PotMasses ?? [])
        {
            if (context.Figures.Mass(figure, context.PartOwner, "pot") is { } mass)
            {
                pots.Add(mass);
            }
        }

        if (pots.Count == 1 && context.Figures.Count(wetOut?.Pots, context.PartOwner, "pots") is { Value: > 1 and <= PotPlanner.MostPots } count)
        {
            while (pots.Count < count.Value)
            {
                pots.Add(pots[0].And(count.On));
            }
        }

        return pots.ToImmutable();
    }

    private static Num Sum(ImmutableArray<ResinLineWork>.Builder lines)
    {
        var sum = Num.Zero;
        foreach (var line in lines)
        {
            sum += line.Mass;
        }

        return sum;
    }

    private static Num Sum(ImmutableArray<Num> masses)
    {
        var sum = Num.Zero;
        foreach (var mass in masses)
        {
            sum += mass;
        }

        return sum;
    }
}
