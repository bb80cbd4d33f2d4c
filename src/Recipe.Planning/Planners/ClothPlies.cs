using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>From a line of cloth, mat or veil with its resin to a ply of Recipe.Engineering.</summary>
internal static class ClothPlies
{
    private const string Subject = StiffnessPlanner.Subject;

    /// <summary>The ply of a line; null after a note of what is missing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The figures cannot be those of a ply.</exception>
    public static PlyWork? Ply(PlanContext context, PlyItem ply, LineWork line, PlyContents contents)
    {
        if (line.Stuff is not { } stuff || line.Thickness is not { Si: > 0 } thickness)
        {
            context.Miss(Subject, $"the resin in {ply.Name} is not known");
            return null;
        }

        if (Fibre(context, ply.Material, stuff) is not { } fibre || Resin(context, contents) is not { } resin)
        {
            return null;
        }

        var material = ply.Material;
        var hasDirection = material.Form is not (ReinforcementForm.Mat or ReinforcementForm.Veil);
        var limits = LimitReader.Read(context.Figures, material.StrainLimits, Owner.Of(material), hasDirection);
        var share = stuff.Weight / stuff.Solid * stuff.Layers / thickness;
        var wet = new WetCloth(
            AreaDensity.FromKilogramsPerSquareMeter(stuff.Weight.Si), fibre.Value, resin.Value, Ratio.FromDecimalFractions(share.Si), limits.Value);
        var one = Oriented(context, ply, wet);
        return new PlyWork(
            ply.Name,
            material.Name,
            Repeated(one.Value, stuff.Layers),
            one.Value,
            stuff.Layers,
            share.On | fibre.On | resin.On | one.On,
            limits.On,
            fibre.HeatOn | resin.HeatOn,
            fibre.NoExpansion ?? resin.NoExpansion);
    }

    // Repeats of a line are one line of the comparison, as they are one line of the recipe.
    private static LaminatePly Repeated(LaminatePly ply, int count) => count == 1
        ? ply
        : new LaminatePly([.. Enumerable.Repeat(ply.Layers, count).SelectMany(layers => layers)], ply.Mass * count);

    private static Known<LaminatePly> Oriented(PlanContext context, PlyItem ply, WetCloth wet)
    {
        var material = ply.Material;
        if (material.Form is ReinforcementForm.Mat or ReinforcementForm.Veil)
        {
            return new Known<LaminatePly>(Plies.RandomMat(wet), Rests.None);
        }

        var (orientation, on) = context.Figures.Any(ply.Orientation, context.PartOwner, "orientation") ?? context.TakeKnown(Defaults.Orientation);
        var first = Angle.FromDegrees(orientation.First);
        if (material.Form == ReinforcementForm.Unidirectional)
        {
            return new Known<LaminatePly>(Plies.Unidirectional(wet, first), on);
        }

        var warp = context.Figures.Number(material.WarpShare, Owner.Of(material), "warp-share") ?? new Num(0.5, Rests.None);
        on |= warp.On;
        if (material.FibreAngles?.Value is { Kind: OrientationKind.Pair } fibres)
        {
            var (one, other) = orientation.Kind == OrientationKind.Pair
                ? (orientation.First, orientation.Second)
                : (orientation.First + fibres.First, orientation.First + fibres.Second);
            return new Known<LaminatePly>(Plies.Stitched(wet, [Share(one, warp.Si), Share(other, 1 - warp.Si)]), on);
        }

        // A cloth pulled askew has its yarns at another angle than a right one.
        return orientation.Kind == OrientationKind.Pair && Math.Abs(Math.Abs(orientation.First - orientation.Second) - 90) > 0.5
            ? new Known<LaminatePly>(
                Plies.Stitched(wet, [Share(orientation.First, warp.Si / 2), Share(orientation.Second, 1 - warp.Si), Share(orientation.First, warp.Si / 2)]), on)
            : new Known<LaminatePly>(Plies.Woven(wet, Ratio.FromDecimalFractions(warp.Si), first), on);

        static FibreDirection Share(double degrees, double share) => new(Angle.FromDegrees(degrees), Ratio.FromDecimalFractions(share));
    }

    private static Constants<FibreConstants>? Fibre(PlanContext context, Reinforcement material, PlyStuff stuff)
    {
        if (material.Fibre is not { } fibre)
        {
            context.Miss(Subject, $"{material.Name} names no fibre");
            return null;
        }

        var (figures, owner) = (context.Figures, Owner.Of(fibre));
        if (figures.Modulus(fibre.Modulus, owner, "modulus") is not { } along
            || figures.Modulus(fibre.TransverseModulus, owner, "transverse-modulus") is not { } across
            || figures.Modulus(fibre.ShearModulus, owner, "shear-modulus") is not { } shear
            || figures.Number(fibre.Poisson, owner, "poisson") is not { } poisson)
        {
            context.Miss(Subject, $"fibre {fibre.Name} gives no modulus, transverse-modulus, shear-modulus or poisson");
            return null;
        }

        var expansion = figures.Expansion(fibre.Expansion, owner, "expansion");
        var transverse = figures.Expansion(fibre.TransverseExpansion, owner, "transverse-expansion");
        return new Constants<FibreConstants>(
            new FibreConstants(
                Pressure.FromPascals(along.Si), Pressure.FromPascals(across.Si), Pressure.FromPascals(shear.Si), poisson.Si,
                Density.FromKilogramsPerCubicMeter(stuff.Solid.Si), LimitReader.Expansion(expansion), LimitReader.Expansion(transverse)),
            along.On | across.On | shear.On | poisson.On,
            (expansion?.On ?? Rests.None) | (transverse?.On ?? Rests.None),
            expansion is null || transverse is null ? $"fibre {fibre.Name} gives no expansion or transverse-expansion" : null);
    }

    private static Constants<ResinConstants>? Resin(PlanContext context, PlyContents contents)
    {
        if (context.Part.Resin is not { } resin)
        {
            context.Miss(Subject, "the part names no resin");
            return null;
        }

        var (figures, owner) = (context.Figures, Owner.Of(resin));
        if (figures.Modulus(resin.Modulus, owner, "modulus") is not { } modulus || figures.Number(resin.Poisson, owner, "poisson") is not { } poisson)
        {
            context.Miss(Subject, $"{resin.Name} gives no modulus or poisson");
            return null;
        }

        var cured = contents.CuredDensity;
        var expansion = figures.Expansion(resin.Expansion, owner, "expansion");
        return new Constants<ResinConstants>(
            new ResinConstants(
                Pressure.FromPascals(modulus.Si), poisson.Si, Density.FromKilogramsPerCubicMeter(cured.Si), LimitReader.Expansion(expansion)),
            modulus.On | poisson.On | cured.On,
            expansion?.On ?? Rests.None,
            expansion is null ? $"{resin.Name} gives no expansion" : null);
    }

    /// <summary>Constants of a fibre or a resin; what its expansion rests on, or lacks, stays apart.</summary>
    private readonly record struct Constants<T>(T Value, Rests On, Rests HeatOn, string? NoExpansion);
}
