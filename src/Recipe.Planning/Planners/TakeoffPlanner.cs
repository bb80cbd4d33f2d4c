using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Ledger;
using Recipe.Text.Units;

namespace Recipe.Planning.Planners;

/// <summary>One line of the takeoff while the plan is made.</summary>
/// <param name="Group">Its group.</param>
/// <param name="Material">The material.</param>
/// <param name="Name">The name under which shelf and prices know it.</param>
/// <param name="Label">What papers call it.</param>
/// <param name="Net">What the parts need, SI.</param>
/// <param name="Gross">Net and waste, SI.</param>
/// <param name="Unit">The unit it is bought in; null for pieces.</param>
/// <param name="Density">Density that turns mass into volume, or null.</param>
/// <param name="Part">Share of a kit that the line is, when shelf and price know only the kit; 1 otherwise.</param>
/// <param name="IsHardener">Whether it is the hardener of a system.</param>
internal sealed record TakeoffWork(
    TakeoffGroup Group, Material Material, string Name, string Label, Num Net, Num Gross, Unit? Unit, Num? Density, double Part = 1, bool IsHardener = false);

/// <summary>
/// What to take from the shelf or buy for all the parts: net, waste, gross, on the shelf, to buy, cost. What comes back after the cure
/// (vacuum hose, ports, catch pot, cauls) is not in it; the feed lines of an infusion are, since what is in them cures there. One line for each
/// material; resin and hardener have a line each.
/// </summary>
internal sealed class TakeoffPlanner
{
    // An inch written in millimetres is rounded by less.
    private const double SameBore = 0.3e-3;

    private readonly PlanContext _context;
    private readonly Prices _prices;
    private readonly int _quantity;
    private readonly List<TakeoffWork> _lines = [];

    private TakeoffPlanner(PlanContext context)
    {
        _context = context;
        _prices = new Prices(context);
        _quantity = Math.Clamp(context.Part.Quantity, 1, 1_000_000);
    }

    public static ImmutableArray<TakeoffWork> Work(
        PlanContext context, Ground? ground, ImmutableArray<LineWork> stack, BagWork? bag, JoinWork? join, ResinWork? resin, FeedWork? feed, ImmutableArray<OwnMixWork> mixes)
    {
        var takeoff = new TakeoffPlanner(context);
        takeoff.AddStack(stack);
        if (join is { Join.Tape: { } tape, TapeArea: { } area })
        {
            takeoff.AddCloth(tape, area, context.Take(Defaults.WasteStraight));
        }

        new LiquidTakeoff(context, takeoff._prices, takeoff._quantity).Add(resin, mixes, takeoff._lines);
        takeoff.AddBag(bag);
        takeoff.AddFeed(feed);
        ReleaseTakeoff.Add(context, ground, takeoff._quantity, takeoff._lines);

        // A stable sort: lines of a group stay in the order of the recipe.
        return [.. takeoff._lines.OrderBy(static l => l.Group)];
    }

    public static ImmutableArray<TakeoffLine> Publish(PlanContext context, ImmutableArray<TakeoffWork> work)
    {
        var ledger = context.Ledger;
        var prices = new Prices(context);

        // A resin may be laminating resin in one line and adhesive in another; the shelf gives it only once.
        var giving = new ShelfGiving();
        var lines = ImmutableArray.CreateBuilder<TakeoffLine>(work.Length);
        foreach (var line in work)
        {
            var dimension = line.Unit?.Dimension ?? Dimension.None;
            var stock = prices.OnTheShelf(line.Name, dimension, line.Material, line.Density) * line.Part;
            var left = giving.For(line.Name, line.IsHardener, line.Gross.Si, stock);
            var price = prices.Of(line.Name, line.Material);
            var waste = line.Net.Si > 0 ? (line.Gross.Si / line.Net.Si) - 1 : 0;
            lines.Add(new TakeoffLine
            {
                Group = line.Group,
                Material = line.Material,
                Label = line.Label,
                Density = line.Density is { } density ? UnitsNet.Density.FromKilogramsPerCubicMeter(density.Si) : null,
                ShelfName = line.Name,
                IsHardener = line.IsHardener,
                Net = ledger.Publish(new Amount(line.Net.Si, line.Unit), line.Net.On),
                Waste = ledger.Publish(Math.Round(Math.Max(0, waste), 9), line.Gross.On),
                Gross = ledger.Publish(new Amount(line.Gross.Si, line.Unit), line.Gross.On),
                InStock = stock is { } shelf ? new Amount(shelf, line.Unit) : null,
                Shelf = [.. context.Model.Stock.Where(shelf => shelf.Material == line.Name)],
                ToBuy = left is { } there ? new Amount(Math.Max(0, line.Gross.Si - there), line.Unit) : null,
                Price = price,
                Cost = Prices.Cost(price, line.Gross.Si, dimension, line.Material, line.Density),
            });
        }

        return lines.MoveToImmutable();
    }

    private void AddStack(ImmutableArray<LineWork> stack)
    {
        foreach (var line in stack)
        {
            if (line.Item is PlyItem ply && line.CutArea is { } cut && line.Waste is { } waste)
            {
                AddCloth(ply.Material, cut, waste);
            }
            else if (line.Item is CoreItem core && line.CutArea is { } board && line.Waste is { } offcut)
            {
                Add(TakeoffGroup.Core, core.Material, board, offcut, TakeoffUnits.Board(_context, core.Material));
            }
            else if (line.Item is InsertItem insert)
            {
                var count = line.Item.Count < 1 ? 1 : line.Item.Count;
                var sides = _context.Part.Mould is { Halves.Length: > 1 } ? 2 : 1;
                Add(TakeoffGroup.Insert, insert.Material, new Num((double)count * sides, Rests.None), Num.Zero, null);
            }
        }
    }

    private void AddCloth(Reinforcement cloth, Num area, Num waste) => Add(
        TakeoffGroup.Reinforcement, cloth, area, waste,
        TakeoffUnits.Sheet(_context, cloth, cloth.ArealWeight?.Written, cloth.Width?.Written, cloth.RollLength?.Written));

    private void AddBag(BagWork? bag)
    {
        if (bag is null)
        {
            return;
        }

        foreach (var layer in bag.Layers)
        {
            var material = layer.Layer.Material;
            if (layer.Layer.Class != LayerClass.Caul)
            {
                var chosen = layer.Layer.ChosenByDefault ? _context.ChosenByDefault(material) : Rests.None;
                Add(TakeoffGroup.Bag, material, layer.Area.And(chosen), _context.Take(Defaults.WasteConsumable),
                    TakeoffUnits.Sheet(_context, material, material.ArealWeight?.Written, material.Width?.Written, material.RollLength?.Written));
            }
        }

        if (_context.Part.Bag!.SealantTape is not { } tape)
        {
            _context.Miss("sealant tape in the takeoff", "the bag names none");
            return;
        }

        // The tape's length has its spare in it already.
        var named = tape.ChosenByDefault ? _context.ChosenByDefault(tape.Material) : Rests.None;
        Add(TakeoffGroup.Bag, tape.Material, bag.Tape.And(named), Num.Zero,
            TakeoffUnits.Run(_context, tape.Material, tape.Material.Width?.Written, tape.Material.RollLength?.Written));
    }

    // Cut from the hose of the bag. One of another bore than the feed lines are said to have is not what they are cut from.
    private void AddFeed(FeedWork? feed)
    {
        const string subject = "feed line in the takeoff";
        if (feed is null)
        {
            return;
        }

        if (_context.Part.Bag?.Hose is not { Material: var hose } named)
        {
            _context.Miss(subject, "the bag names no hose to cut it from");
            return;
        }

        if (feed.Length is not { } length)
        {
            _context.Miss(subject, "its length is not known");
            return;
        }

        if (_context.Part.Infusion?.LineDiameter is { } bore && hose.InnerDiameter is { } inside && Math.Abs(bore.Value.Meters - inside.Value.Meters) > SameBore)
        {
            _context.Miss(subject, $"it is {bore.Written} inside and {hose.Name} is {inside.Written}: the bag names no other hose to cut it from");
            return;
        }

        var chosen = named.ChosenByDefault ? _context.ChosenByDefault(hose) : Rests.None;
        Add(TakeoffGroup.Bag, hose, (length * feed.Lines).And(chosen), _context.Take(Defaults.WasteConsumable), TakeoffUnits.Run(_context, hose, hose.InnerDiameter?.Written, null), $"{hose.Label}, for feed lines");
    }

    // Lines of the same material become one.
    private void Add(TakeoffGroup group, Material material, Num forOne, Num waste, Unit? unit, string? label = null)
    {
        var net = forOne * _quantity;
        var gross = net + (net * waste);
        for (var i = 0; i < _lines.Count; i++)
        {
            if (_lines[i].Group == group && _lines[i].Material.Name == material.Name)
            {
                _lines[i] = _lines[i] with { Net = _lines[i].Net + net, Gross = _lines[i].Gross + gross };
                return;
            }
        }

        _lines.Add(new TakeoffWork(group, material, material.Name, label ?? material.Label, net, gross, unit, null));
    }
}
