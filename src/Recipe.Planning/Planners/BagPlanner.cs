using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>One layer of the bag while the plan is made.</summary>
/// <param name="Layer">The layer.</param>
/// <param name="Length">Length of one sheet, m.</param>
/// <param name="Width">Width of one sheet, m.</param>
/// <param name="Sheets">Sheets of all sides and repeats.</param>
/// <param name="PickupPerArea">Resin that all its repeats take from a square metre of part, kg/m2.</param>
/// <param name="WetArea">Area of one side on which resin can reach it, m2.</param>
/// <param name="Sides">Sides laid.</param>
internal sealed record LayerWork(BagLayer Layer, Num Length, Num Width, int Sheets, Num PickupPerArea, Num WetArea, int Sides)
{
    /// <summary>Resin that all sheets could carry away before the plies had a word in it, kg; null when they take all they can.</summary>
    public Num? CouldTake { get; init; }

    /// <summary>Area of all sheets, m2.</summary>
    public Num Area => Length * Width * Sheets;

    /// <summary>Resin that all sheets carry away, kg.</summary>
    public Num Pickup => PickupPerArea * WetArea * Sides;
}

/// <summary>The bag while the plan is made.</summary>
/// <param name="Layers">The layers.</param>
/// <param name="Tape">Sealant tape, all sides, m.</param>
/// <param name="TapeLine">Line that the tape follows, all sides, m.</param>
/// <param name="FilmArea">Area of film inside the tape, all sides, m2.</param>
/// <param name="Bags">How many bags that is: one for each side laid.</param>
internal sealed record BagWork(ImmutableArray<LayerWork> Layers, Num Tape, Num TapeLine, Num FilmArea, int Bags)
{
    /// <summary>Resin that the layers could carry away before the plies had a word in it, kg; null when they take all they can.</summary>
    public Num? CouldTake { get; init; }

    /// <summary>Resin that all layers carry away, kg.</summary>
    public Num Pickup
    {
        get
        {
            var sum = Num.Zero;
            foreach (var layer in Layers)
            {
                sum += layer.Pickup;
            }

            return sum;
        }
    }
}

/// <summary>Sizes of the bag's layers, of film and of tape.</summary>
internal static class BagPlanner
{
    public static BagWork? Work(PlanContext context, Ground? ground)
    {
        if (context.Part.Bag is not { } bag)
        {
            return null;
        }

        if (ground is null)
        {
            context.Miss("sizes of the bag", "the surface is not known");
            return null;
        }

        var trim = context.Figures.Length(context.Part.Trim, context.PartOwner, "trim", zero: true) ?? context.Take(Defaults.Trim);
        var edge = trim;
        var flow = new ResinFlow(context);
        var layers = ImmutableArray.CreateBuilder<LayerWork>(bag.Layers.Length);
        foreach (var layer in bag.Layers)
        {
            var pickup = flow.Through(layer);
            if (Sheet(context, ground, bag, layer, trim, ref edge) is { } sheet)
            {
                var repeats = Math.Clamp(layer.Count, 1, 1000);
                var wet = Num.Min(ground.AreaWithBorder(trim), sheet.Length * sheet.Width);
                layers.Add(new LayerWork(layer, sheet.Length, sheet.Width, repeats * ground.Sides, pickup, wet, ground.Sides));
            }
            else
            {
                context.Miss($"size of the {layer.Material.Label}", "nothing is left of the layer");
            }
        }

        return Seal(context, ground, bag, layers.DrainToImmutable());
    }

    public static BagPlan Publish(PlanLedger ledger, BagWork bag)
    {
        var layers = ImmutableArray.CreateBuilder<BagLayerPlan>(bag.Layers.Length);
        foreach (var layer in bag.Layers)
        {
            layers.Add(new BagLayerPlan(
                layer.Layer,
                ledger.PublishLength(layer.Length),
                ledger.PublishLength(layer.Width),
                layer.Sheets,
                ledger.PublishArea(layer.Area),
                ledger.PublishMass(layer.Pickup))
            {
                WetArea = Area.FromSquareMeters((layer.WetArea * layer.Sheets).Si),
                CouldTake = Mass.FromKilograms((layer.CouldTake ?? layer.Pickup).Si),
            });
        }

        return new BagPlan
        {
            Bags = bag.Bags,
            Layers = layers.MoveToImmutable(),
            SealantTape = ledger.PublishLength(bag.Tape),
            TapeLine = ledger.PublishLength(bag.TapeLine),
            Pickup = ledger.PublishMass(bag.Pickup),
            CouldTake = ledger.PublishMass(bag.CouldTake ?? bag.Pickup),
        };
    }

    // A layer's edge is counted from the trim line: where the plies end, and so far past that; or inside the layer below. What lies below a flow medium
    // runs past the plies, and it is the plies that must be out of its reach at the vent, so it is counted from them.
    private static (Num Length, Num Width)? Sheet(PlanContext context, Ground ground, Bag bag, BagLayer layer, Num trim, ref Num edge)
    {
        var figures = context.Figures;
        var beyond = figures.Length(layer.Beyond, context.PartOwner, $"{layer.Material.Name} beyond", zero: true);
        if (layer.Class == LayerClass.BagFilm)
        {
            return Film(context, ground, bag, beyond + trim);
        }

        if (figures.Length(layer.Smaller, context.PartOwner, $"{layer.Material.Name} smaller", zero: true) is { } smaller)
        {
            edge = layer.Class == LayerClass.FlowMedium ? trim - smaller : edge - smaller;
        }
        else if (beyond is { } stated)
        {
            edge = trim + stated;
        }
        else
        {
            edge = layer.Class is LayerClass.Caul or LayerClass.FlowMedium ? trim : trim + context.Take(Defaults.LayerBeyond);
        }

        var surface = ground.Surface;
        var length = surface.DevelopedLength.Meters + (2 * edge.Si);
        var width = surface.DevelopedWidth.Meters + (surface.IsClosedTube ? 0 : 2 * edge.Si);
        if (length <= 0 || width <= 0 || edge.Si > 100)
        {
            return null;
        }

        // Round a tube it has to close over the plies as well, so that no wet cloth touches what lies on it; a caul and a mesh lie side by side.
        var lap = surface.IsClosedTube && layer.Class is not (LayerClass.Caul or LayerClass.FlowMedium) ? context.Take(Defaults.LayerBeyond) : Num.Zero;
        var piece = BagSize.Layer(surface, Length.FromMeters(edge.Si), Length.FromMeters(lap.Si));
        var on = ground.ShapeOn | edge.On | lap.On;
        return (new Num(piece.Length.Meters, on), new Num(piece.Width.Meters, on));
    }

    private static (Num Length, Num Width) Film(PlanContext context, Ground ground, Bag bag, Num? stated)
    {
        var edge = stated ?? context.Take(Defaults.FilmEdge);
        var surface = ground.Surface;
        var factor = surface.IsFlat ? new Num(1, Rests.None) : context.Take(Defaults.FilmFactor);
        var rule = new BagAllowances { FilmEdge = Length.FromMeters(Math.Min(edge.Si, 100)), ShapedFactor = factor.Si };
        var piece = bag.IsEnvelope ? BagSize.Envelope(surface, rule) : BagSize.Film(surface, rule);
        var on = ground.ShapeOn | edge.On | factor.On;
        return (new Num(piece.Length.Meters, on), new Num(piece.Width.Meters, on));
    }

    private static BagWork Seal(PlanContext context, Ground ground, Bag bag, ImmutableArray<LayerWork> layers)
    {
        var surface = ground.Surface;
        var spare = context.Take(Defaults.TapeSpare);
        var offset = context.Take(Defaults.TapeOffset);
        var film = Film(context, ground, bag, null);
        foreach (var layer in layers)
        {
            film = layer.Layer.Class == LayerClass.BagFilm ? (layer.Length, layer.Width) : film;
        }

        // A flat part has pleats of no height, so their number plays no part there.
        var shaped = surface.Depth.Meters > 0;
        var pleats = context.Figures.Count(bag.Pleats, context.PartOwner, "pleats", least: 0)
            ?? (shaped ? context.TakeKnown(Defaults.Pleats) : new Known<int>(0, Rests.None));
        var rule = new BagAllowances
        {
            TapeOffset = Length.FromMeters(offset.Si),
            Pleats = Math.Min(pleats.Value, 1000),
            TapeSpare = Ratio.FromDecimalFractions(spare.Si),
        };
        if (bag.IsEnvelope)
        {
            // Along the slit and across both ends of the film, which is there twice over.
            var line = (film.Length + film.Width) * ground.Sides;
            return new BagWork(layers, line + (line * spare), line, film.Length * film.Width * ground.Sides, ground.Sides);
        }

        var on = ground.ShapeOn | offset.On;
        var tapeLine = new Num(BagSize.TapeLine(surface, rule).Meters * ground.Sides, on);
        var length = new Num(BagSize.Tape(surface, rule).Meters * ground.Sides, on | spare.On | (shaped ? pleats.On : Rests.None));
        return new BagWork(layers, length, tapeLine, film.Length * film.Width * ground.Sides, ground.Sides);
    }
}
