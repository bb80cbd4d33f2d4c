using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Stiffness while the plan is made.</summary>
internal sealed record StiffnessWork(Laminate Laminate, IReadOnlyList<PlyContribution> Lines, ImmutableArray<string> Names, Rests On);

/// <summary>
/// From the full-cover lines of the stack to a laminate of Recipe.Engineering. Each ply has the fibre content that the plan gives it
/// after the bag has done its work, so that a veil that drinks resin is as thick and as soft as it will be.
/// </summary>
internal static class StiffnessPlanner
{
    private const string Subject = "stiffness";

    public static StiffnessWork? Work(PlanContext context, ImmutableArray<LineWork> stack, PlyContents contents)
    {
        var plies = ImmutableArray.CreateBuilder<LaminatePly>();
        var names = ImmutableArray.CreateBuilder<string>();
        var rests = Rests.None;
        foreach (var line in stack)
        {
            if (!line.CoversAll || line.Item is InsertItem)
            {
                continue;
            }

            if (Ply(context, line, contents) is not { } ply)
            {
                return null;
            }

            plies.Add(ply.Value);
            names.Add(line.Item.Name);
            rests |= ply.On;
        }

        if (plies.Count == 0)
        {
            return null;
        }

        try
        {
            var laminate = new Laminate(plies);
            return new StiffnessWork(laminate, Contributions.Of(laminate), names.ToImmutable(), rests);
        }
        catch (ArgumentOutOfRangeException)
        {
            context.Miss(Subject, "its lines are too unlike to be worked out together");
            return null;
        }
    }

    public static StiffnessPlan Publish(PlanLedger ledger, StiffnessWork work)
    {
        var (laminate, on) = (work.Laminate, work.On);
        var before = ledger.PublishedAssumptions();
        var constants = laminate.StretchingConstants();
        return new StiffnessPlan
        {
            Along = ledger.Publish(constants.X, on),
            Across = ledger.Publish(constants.Y, on),
            Shear = ledger.Publish(constants.Shear, on),
            StripAlong = ledger.Publish(laminate.StripStiffness(), on),
            StripAcross = ledger.Publish(laminate.StripStiffness(Angle.FromDegrees(90)), on),
            Lines = [.. work.Lines.Select((share, i) => Share(work.Names[i], share))],
            OwnAssumptions = [.. ledger.PublishedAssumptions().Select(a => a.Key).Except(before.Select(a => a.Key), StringComparer.Ordinal)],
        };
    }

    private static PlyShare Share(string name, PlyContribution share) => new(
        name,
        share.MassShare.DecimalFractions,
        share.ThicknessShare.DecimalFractions,
        share.StretchingShare.DecimalFractions,
        share.BendingShare.DecimalFractions,
        share.BendingShare.DecimalFractions * (share.BendingAsSpacer / share.Bending));

    private static Known<LaminatePly>? Ply(PlanContext context, LineWork line, PlyContents contents)
    {
        try
        {
            return line.Item switch
            {
                PlyItem ply => Cloth(context, ply, line, contents),
                CoreItem core => Core(context, core, line),
                _ => null,
            };
        }
        catch (ArgumentOutOfRangeException)
        {
            context.Miss(Subject, $"the figures of {line.Item.Name} cannot be those of a ply");
            return null;
        }
    }

    private static Known<LaminatePly>? Cloth(PlanContext context, PlyItem ply, LineWork line, PlyContents contents)
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

        var share = stuff.Weight / stuff.Solid * stuff.Layers / thickness;
        var wet = new WetCloth(
            AreaDensity.FromKilogramsPerSquareMeter(stuff.Weight.Si), fibre.Value, resin.Value, Ratio.FromDecimalFractions(share.Si));
        var one = Oriented(context, ply, wet);
        return new Known<LaminatePly>(Repeated(one.Value, stuff.Layers), share.On | fibre.On | resin.On | one.On);
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

    private static Known<FibreConstants>? Fibre(PlanContext context, Reinforcement material, PlyStuff stuff)
    {
        if (material.Fibre is not { } fibre)
        {
            context.Miss(Subject, $"{material.Name} names no fibre");
            return null;
        }

        var (figures, owner) = (context.Figures, Owner.Of(fibre));
        if (Modulus(figures, fibre.Modulus, owner, "modulus") is not { } along
            || Modulus(figures, fibre.TransverseModulus, owner, "transverse-modulus") is not { } across
            || Modulus(figures, fibre.ShearModulus, owner, "shear-modulus") is not { } shear
            || figures.Number(fibre.Poisson, owner, "poisson") is not { } poisson)
        {
            context.Miss(Subject, $"fibre {fibre.Name} gives no modulus, transverse-modulus, shear-modulus or poisson");
            return null;
        }

        return new Known<FibreConstants>(
            new FibreConstants(
                Pressure.FromPascals(along.Si), Pressure.FromPascals(across.Si), Pressure.FromPascals(shear.Si), poisson.Si,
                Density.FromKilogramsPerCubicMeter(stuff.Solid.Si)),
            along.On | across.On | shear.On | poisson.On);
    }

    // Thousands of millions of pascals are beyond what other figures may be; the laminate looks at the range itself.
    private static Num? Modulus(FigureReader figures, Figure<Pressure>? figure, Owner owner, string word) =>
        figures.Any(figure, owner, word) is { } known ? new Num(known.Value.Pascals, known.On) : null;

    private static Known<ResinConstants>? Resin(PlanContext context, PlyContents contents)
    {
        if (context.Part.Resin is not { } resin)
        {
            context.Miss(Subject, "the part names no resin");
            return null;
        }

        var (figures, owner) = (context.Figures, Owner.Of(resin));
        if (Modulus(figures, resin.Modulus, owner, "modulus") is not { } modulus || figures.Number(resin.Poisson, owner, "poisson") is not { } poisson)
        {
            context.Miss(Subject, $"{resin.Name} gives no modulus or poisson");
            return null;
        }

        var cured = contents.CuredDensity;
        return new Known<ResinConstants>(
            new ResinConstants(Pressure.FromPascals(modulus.Si), poisson.Si, Density.FromKilogramsPerCubicMeter(cured.Si)), modulus.On | poisson.On | cured.On);
    }

    private static Known<LaminatePly>? Core(PlanContext context, CoreItem core, LineWork line)
    {
        var (figures, owner) = (context.Figures, Owner.Of(core.Material));
        if (line.Thickness is not { } thickness || figures.Density(core.Material.Density, owner, "density") is not { } density)
        {
            context.Miss(Subject, $"core {core.Material.Name} gives no thickness or density");
            return null;
        }

        if (Modulus(figures, core.Material.Modulus, owner, "modulus") is not { } modulus)
        {
            context.Miss(Subject, $"core {core.Material.Name} gives no modulus");
            return null;
        }

        var poisson = context.Take(Defaults.CorePoisson);
        var uptake = line is { NetResin: { } resin, NetArea: { Si: > 0 } area } ? resin / area : Num.Zero;
        var ply = Plies.Core(
            Lamina.Isotropic(Pressure.FromPascals(modulus.Si), poisson.Si),
            Length.FromMeters(thickness.Si),
            Density.FromKilogramsPerCubicMeter(density.Si),
            resinTaken: AreaDensity.FromKilogramsPerSquareMeter(uptake.Si));
        return new Known<LaminatePly>(ply, thickness.On | density.On | modulus.On | poisson.On | uptake.On);
    }
}
