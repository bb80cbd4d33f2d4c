using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>The laminate while the plan is made; masses in kg, inside the trim line.</summary>
internal sealed record LaminateWork(
    Num Fibre, Num PlyResin, Num CoreResin, Num Core, Num Coats, Num Inserts, Num? Join, MassRange Mass, Rests MassOn, Num Thickness, Num ResinFraction, Num? FibreVolumeFraction, Num? LaidFraction);

/// <summary>
/// Sums of the stack and the band of the trimmed part. Contents are those of the plies: what a core's faces drink is in the
/// part's mass, not in its resin content.
/// </summary>
/// <remarks>
/// Band: half width of the laminate by process and practice (Recipe.Engineering MassBand: 7 % or 15 % bagged, from memory; 9 % for a
/// practice panel of six plies, common practice), coats 20 %, cores 10 % (from memory), inserts and join as weighed; combined as
/// independent (JCGM 100).
/// </remarks>
internal static class LaminatePlanner
{
    private const int BuildsToBePractised = 3;
    private static readonly Ratio CoreTolerance = Ratio.FromPercent(10);

    public static LaminateWork? Work(PlanContext context, Ground? ground, ImmutableArray<LineWork> stack, PlyContents contents, BagWork? bag, JoinWork? join)
    {
        if (context.MissesForAPly("mass of the part"))
        {
            return null;
        }

        if (context.Part.IsAssembly)
        {
            return null;
        }

        if (stack.IsEmpty)
        {
            context.Miss("mass of the part", "it has no plies");
            return null;
        }

        var coats = Coats(context, ground);
        if (!IsWeighed(stack) || coats is null)
        {
            context.Miss("mass of the part", "the mass of one of its lines is not known");
            return null;
        }

        var sums = Sum(stack);
        var (core, coreResin, inserts) = Others(stack);
        Num? joined = join is { Join.Parts.IsEmpty: true } ? join.Mass : null;
        var weighed = inserts + (joined ?? Num.Zero);
        var (range, band) = Band(context, sums.Fibre + sums.Resin + coreResin, coats.Value, core, weighed);
        var all = sums.Fibre + sums.Resin + coreResin + coats.Value + core + weighed;
        var plies = sums.Fibre + sums.Resin;
        return new LaminateWork(
            sums.Fibre,
            sums.Resin,
            coreResin,
            core,
            coats.Value,
            inserts,
            joined,
            range,
            all.On | band,
            sums.Thickness,
            plies.Si > 0 ? sums.Resin / plies : plies,
            VolumeFraction(sums, contents),
            LaidFraction(context, sums, bag));
    }

    public static LaminatePlan Publish(PlanLedger ledger, LaminateWork work) => new()
    {
        Fibre = ledger.PublishMass(work.Fibre),
        Resin = ledger.PublishMass(work.PlyResin + work.CoreResin),
        Core = ledger.PublishMass(work.Core),
        Coats = ledger.PublishMass(work.Coats),
        Inserts = ledger.PublishMass(work.Inserts),
        Join = ledger.PublishMass(work.Join),
        TrimmedMass = ledger.Publish(new Banded<Mass>(work.Mass.Expected, work.Mass.Low, work.Mass.High), work.MassOn),
        Thickness = ledger.PublishLength(work.Thickness),
        ResinFraction = ledger.PublishNumber(work.ResinFraction),
        FibreVolumeFraction = ledger.PublishNumber(work.FibreVolumeFraction),
        LaidResinFraction = ledger.PublishNumber(work.LaidFraction),
    };

    /// <summary>Wet coats on the mould, all sides, kg; taken as they are laid, since what evaporates is not known.</summary>
    public static Num? Coats(PlanContext context, Ground? ground)
    {
        Num? sum = Num.Zero;
        foreach (var coat in context.Part.Coats)
        {
            sum += ground is null ? null : ground.Area * CoatFilm(context, coat) * ground.Sides;
        }

        return sum;
    }

    /// <summary>Wet mass of a coat per area, kg/m2.</summary>
    public static Num CoatFilm(PlanContext context, Coat coat) =>
        context.Figures.ArealWeight(coat.ArealWeight, Owner.Of(coat.Material), "film")
        ?? context.Take(coat.Material.Role == ResinRole.GelCoat ? Defaults.GelCoatFilm : Defaults.SurfaceCoatFilm);

    private static bool IsWeighed(ImmutableArray<LineWork> stack)
    {
        foreach (var line in stack)
        {
            if (line.NetMass is null || (line.NetResin is null && line.Item is not InsertItem))
            {
                return false;
            }
        }

        return true;
    }

    private static Sums Sum(ImmutableArray<LineWork> stack)
    {
        var sums = new Sums(Num.Zero, Num.Zero, Num.Zero, Num.Zero, Num.Zero, Num.Zero);
        foreach (var line in stack)
        {
            var thickness = line.CoversAll && line.Thickness is { } t ? sums.Thickness + t : sums.Thickness;
            sums = line.Item is PlyItem
                ? new Sums(
                    sums.Fibre + (line.NetMass ?? Num.Zero),
                    sums.Resin + (line.NetResin ?? Num.Zero),
                    sums.CutFibre + (line.CutMass ?? Num.Zero),
                    sums.CutResin + (line.CutResin ?? Num.Zero),
                    thickness,
                    sums.FibreVolume + line.FibreVolume)
                : sums with { Thickness = thickness };
        }

        return sums;
    }

    private static (Num Core, Num CoreResin, Num Inserts) Others(ImmutableArray<LineWork> stack)
    {
        var (core, resin, inserts) = (Num.Zero, Num.Zero, Num.Zero);
        foreach (var line in stack)
        {
            var mass = line.NetMass ?? Num.Zero;
            core = line.Item is CoreItem ? core + mass : core;
            resin = line.Item is CoreItem ? resin + (line.NetResin ?? Num.Zero) : resin;
            inserts = line.Item is InsertItem ? inserts + mass : inserts;
        }

        return (core, resin, inserts);
    }

    private static (MassRange Range, Rests On) Band(PlanContext context, Num laminate, Num coats, Num core, Num weighed)
    {
        var built = 0;
        foreach (var build in context.Model.Builds)
        {
            built += build.Part == context.Part.Name ? 1 : 0;
        }

        var practised = built >= BuildsToBePractised;
        var width = MassBand.HalfWidth((LayUpProcess)context.Process, practised ? Experience.Experienced : Experience.Novice);
        var range = MassBand.Combine(
        [
            new MassShare(Mass.FromKilograms(laminate.Si), width),
            new MassShare(Mass.FromKilograms(coats.Si), MassBand.GelCoatTolerance),
            new MassShare(Mass.FromKilograms(core.Si), CoreTolerance),
            new MassShare(Mass.FromKilograms(weighed.Si), Ratio.Zero),
        ]);
        return (range, context.Ledger.Assume(practised ? Defaults.PractisedBand : Defaults.FirstOffBand));
    }

    private static Num? VolumeFraction(Sums sums, PlyContents contents)
    {
        if (sums.FibreVolume is not { Si: > 0 } fibre)
        {
            return null;
        }

        return fibre / (fibre + (sums.Resin / contents.CuredDensity));
    }

    // What was on the cloth before the bag took its share; not a notion of infusion or prepreg.
    private static Num? LaidFraction(PlanContext context, Sums sums, BagWork? bag)
    {
        if (context.Process is not (Process.Bagged or Process.Hand) || sums.CutFibre.Si <= 0 || (context.Part.Bag is not null && bag is null))
        {
            return null;
        }

        var laid = sums.CutResin;
        foreach (var layer in bag?.Layers ?? [])
        {
            laid += layer.Pickup;
        }

        return laid / (laid + sums.CutFibre);
    }

    private readonly record struct Sums(Num Fibre, Num Resin, Num CutFibre, Num CutResin, Num Thickness, Num? FibreVolume);
}
