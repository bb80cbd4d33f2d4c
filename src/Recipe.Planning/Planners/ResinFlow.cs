using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>
/// Follows resin from the laminate outwards through the layers of a bag and says what each takes. A perforated film lets only so much
/// through; whatever lies above it shares that. What a film itself carries away is what its own figure says. Above a solid film, a caul or the bag film nothing arrives.
/// </summary>
internal sealed class ResinFlow(PlanContext context)
{
    // What can still come through, per area of part; null where nothing holds it back yet.
    private Num? _left;

    /// <summary>Resin that a layer and its repeats take from a square metre of part, kg/m2.</summary>
    public Num Through(BagLayer layer)
    {
        if (context.Process == Process.Prepreg)
        {
            return new Num(0, context.Ledger.Assume(Defaults.PrepregBleed));
        }

        var repeats = Math.Clamp(layer.Count, 1, 1000);
        switch (layer.Class)
        {
            case LayerClass.BagFilm or LayerClass.Caul:
                _left = new Num(0, _left?.On ?? Rests.None);
                return Num.Zero;
            case LayerClass.ReleaseFilm:
                var own = Own(layer);
                var clinging = own is { } figure ? Arriving(layer, figure * repeats) : Num.Zero;
                Narrow(layer);
                return clinging;
            default:
                return Take(layer, repeats);
        }
    }

    private void Narrow(BagLayer film)
    {
        var owner = Owner.Of(film.Material);
        var chosen = film.ChosenByDefault ? context.ChosenByDefault(film.Material) : Rests.None;
        var perforation = context.Figures.Any(film.Perforation, owner, "perforation")
            ?? context.Figures.Any(film.Material.Perforation, owner, "perforation");

        // A film that tells what it lets through is open, whatever it calls its holes.
        var bleed = perforation is { Value: Perforation.None } ? null : context.Figures.ArealWeight(film.Material.Bleed, owner, "bleed", zero: true);
        if (bleed is null)
        {
            var open = perforation ?? context.TakeKnown(Defaults.FilmPerforation);
            bleed = (Defaults.FilmBleed(open.Value) is { } usual ? context.Take(usual) : Num.Zero).And(open.On);
        }

        var through = bleed.Value.And(chosen);
        _left = _left is { } left ? Num.Min(left, through) : through;
    }

    private Num Take(BagLayer layer, int repeats)
    {
        if (_left is { Si: 0 } nothing)
        {
            return nothing;
        }

        var owner = Owner.Of(layer.Material);
        var taken = (Own(layer)
            ?? (layer.Class == LayerClass.Bleeder ? context.Figures.ArealWeight(layer.Material.Capacity, owner, "capacity", zero: true) : null)
            ?? context.Take(Usual(layer.Class))) * repeats;
        if (context.Figures.ArealWeight(layer.Material.Capacity, owner, "capacity", zero: true) is { } capacity && capacity.Si * repeats < taken.Si)
        {
            taken = capacity * repeats;
        }

        return Arriving(layer, taken);
    }

    // What the shop found comes before what the material's entry says.
    private Num? Own(BagLayer layer) =>
        context.Figures.ArealWeight(context.Shop?.PickupOf(layer.Material.Name), context.ShopOwner, $"resin-pickup {layer.Material.Name}", zero: true)
        ?? context.Figures.ArealWeight(layer.Material.ResinPickup, Owner.Of(layer.Material), "resin-pickup", zero: true);

    // So much of what it could take as gets there.
    private Num Arriving(BagLayer layer, Num taken)
    {
        taken = layer.ChosenByDefault ? taken.And(context.ChosenByDefault(layer.Material)) : taken;
        if (_left is { } left)
        {
            taken = Num.Min(taken, left);
            _left = left - taken;
        }

        return taken;
    }

    private static TradeDefault<UnitsNet.AreaDensity> Usual(LayerClass layer) => layer switch
    {
        LayerClass.PeelPly => Defaults.PeelPlyPickup,
        LayerClass.Bleeder => Defaults.BleederPickup,
        LayerClass.FlowMedium => Defaults.FlowMediumPickup,
        _ => Defaults.BreatherPickup,
    };
}
