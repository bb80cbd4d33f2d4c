using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Stiffness while the plan is made.</summary>
/// <param name="Laminate">The laminate.</param>
/// <param name="Lines">What each line brings.</param>
/// <param name="Plies">The lines, in the order of the laminate's plies.</param>
/// <param name="On">What its stiffness rests on.</param>
internal sealed record StiffnessWork(Laminate Laminate, IReadOnlyList<PlyContribution> Lines, ImmutableArray<PlyWork> Plies, Rests On)
{
    /// <summary>Plies and cores that cover only part of the surface and so play no part.</summary>
    public ImmutableArray<string> LeftOut { get; init; } = [];

    /// <summary>What its limits rest on besides.</summary>
    public Rests LimitsOn => Plies.Aggregate(Rests.None, static (on, ply) => on | ply.LimitsOn);

    /// <summary>
    /// Shear stiffness of the one core between two skins, for each unit of width, N/m; null for any other stack, and where the core gives no
    /// shear modulus.
    /// </summary>
    public Num? CoreShear { get; init; }

    /// <summary>What its expansions rest on besides.</summary>
    public Rests HeatOn => Plies.Aggregate(Rests.None, static (on, ply) => on | ply.HeatOn);
}

/// <summary>A line of the stack as a ply of the laminate. What its limits and expansions rest on stays apart, for stiffness needs neither.</summary>
/// <param name="Line">Name of the line.</param>
/// <param name="Material">Name of its material.</param>
/// <param name="Ply">The ply, of all repeats of the line.</param>
/// <param name="One">One of the repeats.</param>
/// <param name="Count">How many repeats there are.</param>
/// <param name="On">What its stiffness rests on.</param>
/// <param name="LimitsOn">What its strain limits rest on.</param>
/// <param name="HeatOn">What its expansion rests on.</param>
/// <param name="NoExpansion">What gives no expansion, in words; null when all is known.</param>
internal sealed record PlyWork(string Line, string Material, LaminatePly Ply, LaminatePly One, int Count, Rests On, Rests LimitsOn, Rests HeatOn, string? NoExpansion)
{
    /// <summary>Whether it is a core.</summary>
    public bool IsCore { get; init; }

    /// <summary>Shear modulus of a core, Pa; null when its material gives none, and for cloth.</summary>
    public Num? CoreShear { get; init; }
}

/// <summary>
/// From the full-cover lines of the stack to a laminate of Recipe.Engineering. Each ply has the fibre content that the plan gives it
/// after the bag has done its work, so that a veil that drinks resin is as thick and as soft as it will be.
/// </summary>
internal static class StiffnessPlanner
{
    internal const string Subject = "stiffness";

    public static StiffnessWork? Work(PlanContext context, ImmutableArray<LineWork> stack, PlyContents contents, bool withLines = true)
    {
        if (context.MissesForAPly(Subject))
        {
            return null;
        }

        var plies = ImmutableArray.CreateBuilder<PlyWork>();
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

            plies.Add(ply);
            rests |= ply.On;
        }

        if (plies.Count == 0)
        {
            return null;
        }

        try
        {
            var laminate = new Laminate([.. plies.Select(ply => ply.Ply)]);
            return new StiffnessWork(laminate, withLines ? Contributions.Of(laminate) : [], plies.ToImmutable(), rests)
            {
                CoreShear = CoreShear(plies.ToImmutable(), rests),
                LeftOut = [.. stack.Where(line => !line.CoversAll && line.Item is PlyItem or CoreItem).Select(line => line.Item.Name)],
            };
        }
        catch (ArgumentOutOfRangeException)
        {
            context.Miss(Subject, "its lines are too unlike to be worked out together");
            return null;
        }
    }

    public static StiffnessPlan Publish(PlanLedger ledger, StiffnessWork work, ImmutableArray<LoadWork> loads, CurlWork? curl)
    {
        var (laminate, on) = (work.Laminate, work.On);
        var constants = laminate.StretchingConstants();
        return new StiffnessPlan
        {
            Along = ledger.Publish(constants.X, on),
            Across = ledger.Publish(constants.Y, on),
            Shear = ledger.Publish(constants.Shear, on),
            StripAlong = ledger.Publish(laminate.StripStiffness(), on),
            StripAcross = ledger.Publish(laminate.StripStiffness(Angle.FromDegrees(90)), on),
            CoreShear = work.CoreShear is { } shear ? ledger.Publish(ForcePerLength.FromNewtonsPerMeter(shear.Si), shear.On) : null,
            Lines = [.. work.Lines.Select((share, i) => Share(work.Plies[i].Line, share))],
            LeftOut = work.LeftOut,
            Loads = [.. loads.Select(load => LoadPlanner.Publish(ledger, work, load))],
            Curl = curl is null ? null : CurlPlanner.Publish(ledger, curl),
        };
    }

    private static Num? CoreShear(ImmutableArray<PlyWork> plies, Rests on)
    {
        if (plies.Where(static ply => ply.IsCore).ToList() is not [{ CoreShear: { } shear } core])
        {
            return null;
        }

        var at = plies.IndexOf(core);
        if (at == 0 || at == plies.Length - 1)
        {
            return null;
        }

        var (mouldSkin, bagSkin) = (Length.FromMeters(plies[..at].Sum(Metres)), Length.FromMeters(plies[(at + 1)..].Sum(Metres)));
        var stiffness = StripBending.SandwichShear(Pressure.FromPascals(shear.Si), core.Ply.Thickness, mouldSkin, bagSkin);
        return new Num(stiffness.NewtonsPerMeter, on | shear.On);

        static double Metres(PlyWork ply) => ply.Ply.Thickness.Meters;
    }

    private static PlyShare Share(string name, PlyContribution share) => new(
        name,
        share.MassShare.DecimalFractions,
        share.ThicknessShare.DecimalFractions,
        share.StretchingShare.DecimalFractions,
        share.BendingShare.DecimalFractions,
        share.BendingShare.DecimalFractions * (share.BendingAsSpacer / share.Bending));

    private static PlyWork? Ply(PlanContext context, LineWork line, PlyContents contents)
    {
        try
        {
            return line.Item switch
            {
                PlyItem ply => ClothPlies.Ply(context, ply, line, contents),
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

    private static PlyWork? Core(PlanContext context, CoreItem core, LineWork line)
    {
        var (figures, owner) = (context.Figures, Owner.Of(core.Material));
        if (line.Thickness is not { } thickness || figures.Density(core.Material.Density, owner, "density") is not { } density)
        {
            context.Miss(Subject, $"core {core.Material.Name} gives no thickness or density");
            return null;
        }

        if (figures.Modulus(core.Material.Modulus, owner, "modulus") is not { } modulus)
        {
            context.Miss(Subject, $"core {core.Material.Name} gives no modulus");
            return null;
        }

        var poisson = context.Take(Defaults.CorePoisson);
        var uptake = line is { NetResin: { } resin, NetArea: { Si: > 0 } area } ? resin / area : Num.Zero;
        var expansion = figures.Expansion(core.Material.Expansion, owner, "expansion");
        var limits = LimitReader.Read(figures, core.Material.StrainLimits, owner, hasDirection: false);
        var ply = Plies.Core(
            Lamina.Isotropic(Pressure.FromPascals(modulus.Si), poisson.Si, LimitReader.Expansion(expansion)),
            Length.FromMeters(thickness.Si),
            Density.FromKilogramsPerCubicMeter(density.Si),
            resinTaken: AreaDensity.FromKilogramsPerSquareMeter(uptake.Si),
            limits: limits.Value);
        return new PlyWork(
            core.Name, core.Material.Name, ply, ply, 1, thickness.On | density.On | modulus.On | poisson.On | uptake.On, limits.On,
            expansion?.On ?? Rests.None, expansion is null ? $"core {core.Material.Name} gives no expansion" : null)
        {
            IsCore = true,
            CoreShear = figures.Modulus(core.Material.ShearModulus, owner, "shear-modulus"),
        };
    }
}
