using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>
/// Resin, coats and adhesive of the takeoff: grams, with millilitres on the label where a density is known. A system with a known ratio
/// has a line for its resin and one for its hardener.
/// </summary>
/// <remarks>
/// Shelf and prices know a hardener by its own name; where they know only the system's name, that is the kit, of which resin and hardener
/// have their shares.
/// </remarks>
internal sealed class LiquidTakeoff(PlanContext context, Prices prices, int quantity)
{
    /// <summary>
    /// The laminating resin: what is mixed, the spare in it, and a later batch for the seam. It has no waste: losses and spare are in the
    /// sum already.
    /// </summary>
    public void AddLaminating(ResinWork? resin, JoinWork? join, List<TakeoffWork> lines)
    {
        var later = join is { SameSession: false, LaminatingResin: { Si: > 0 } seam } ? seam : Num.Zero;
        var system = resin?.System ?? (later.Si > 0 ? context.Part.Resin : null);
        if (system is not null)
        {
            Add(TakeoffGroup.Resin, system, (resin?.ToMix ?? Num.Zero) + later, Num.Zero, lines);
        }
    }

    /// <summary>Coats on the mould, laid over the trim as far as the plies run.</summary>
    public void AddCoats(Ground? ground, List<TakeoffWork> lines)
    {
        foreach (var coat in context.Part.Coats)
        {
            var net = LaminatePlanner.CoatMass(context, ground, coat);
            if (net is not { } inside || ground is null)
            {
                context.Miss($"{coat.Material.Label} in the takeoff", "the surface is not known");
                continue;
            }

            var trim = context.Figures.Length(context.Part.Trim, context.PartOwner, "trim", zero: true) ?? context.Take(Defaults.Trim);
            Add(TakeoffGroup.Coat, coat.Material, inside / ground.Area * ground.AreaWithBorder(trim), context.Take(Defaults.WasteConsumable), lines);
        }
    }

    /// <summary>Adhesive and filler of the join.</summary>
    public void AddAdhesive(JoinWork? join, List<TakeoffWork> lines)
    {
        if (join?.Join.Adhesive is { } adhesive)
        {
            var mass = (join.Adhesive ?? Num.Zero) + (join.Fillet ?? Num.Zero);
            if (mass.Si > 0)
            {
                Add(TakeoffGroup.Adhesive, adhesive, mass, context.Take(Defaults.WasteConsumable), lines);
            }
        }
    }

    private void Add(TakeoffGroup group, ResinSystem system, Num forOne, Num waste, List<TakeoffWork> lines)
    {
        var net = forOne * quantity;
        var ratio = MixRatios.ByWeight(context, system);
        var owner = Owner.Of(system);
        if (ratio is not { } parts)
        {
            var mixed = context.Figures.Density(system.Density, owner, "density");
            lines.Add(Line(group, system, system.Name, system.Label, net, waste, mixed, 1));
            return;
        }

        var share = new Num(parts.Value.HardenerShare.DecimalFractions, parts.On);
        var hardener = net * share;
        var resin = net - hardener;
        var ownName = system.Hardener is { } named && prices.Knows(named) ? named : null;
        lines.Add(Line(
            group, system, system.Name, $"{system.Label}, resin", resin, waste,
            context.Figures.Density(system.ResinDensity, owner, "density resin"), ownName is null ? 1 - share.Si : 1));
        var label = system.Hardener is { } block ? $"{system.Label}, hardener {block}" : $"{system.Label}, hardener";
        var density = context.Figures.Density(system.HardenerDensity, owner, "density hardener");
        var second = Line(group, system, ownName ?? system.Name, label, hardener, waste, density, ownName is null ? share.Si : 1);
        lines.Add(second with { IsHardener = true });
    }

    private static TakeoffWork Line(
        TakeoffGroup group, ResinSystem system, string name, string label, Num net, Num waste, Num? density, double part)
    {
        var gross = net + (net * waste);
        var text = density is { } rho ? $"{label} ({Words.Millilitres(gross.Si / rho.Si)})" : label;
        return new TakeoffWork(group, system, name, text, net, gross, TakeoffUnits.Gram, density, part);
    }
}
