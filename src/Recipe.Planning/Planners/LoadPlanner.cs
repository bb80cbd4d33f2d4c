using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>A load while the plan is made.</summary>
/// <param name="Load">The load.</param>
/// <param name="First">The governing limit, and whether the bag side is stretched; null when there is none.</param>
/// <param name="Answer">What could not be judged.</param>
/// <param name="Sag">Sag of the strip, m; null for a pull.</param>
/// <param name="Stresses">Largest stresses of each ply, Pa.</param>
/// <param name="On">What the load itself rests on.</param>
internal sealed record LoadWork(
    StatedLoad Load, (FirstPlyMargin Margin, bool? BagSideStretched)? First, FirstPlyAnswer Answer, double? Sag, ImmutableArray<PlaneVector> Stresses, Rests On);

/// <summary>
/// The stated loads on the laminate. A strip on two supports bends by M/b = F L/(4 b) in its middle; it is narrow, so that nothing holds it
/// from bowing across. It is judged bent either way.
/// </summary>
internal static class LoadPlanner
{
    private const string Margin = "strain margin";

    public static ImmutableArray<LoadWork> Work(PlanContext context, StiffnessWork stiffness)
    {
        var loads = ImmutableArray.CreateBuilder<LoadWork>(context.Part.Loads.Length);
        foreach (var load in context.Part.Loads)
        {
            try
            {
                if (Work(context, stiffness, load) is { } work)
                {
                    loads.Add(work);
                }
            }
            catch (ArgumentOutOfRangeException)
            {
                context.Miss($"load {load.Name}", "its figures are too large or too small to be worked with");
            }
        }

        if (loads.Count > 0)
        {
            NameWhatIsNotKnown(context, stiffness, loads[0].Answer);
        }

        return loads.ToImmutable();
    }

    public static LoadPlan Publish(PlanLedger ledger, StiffnessWork stiffness, LoadWork work)
    {
        var on = stiffness.On | work.On;
        return new LoadPlan
        {
            Load = work.Load,
            First = work.First is not var (margin, bagSide)
                ? null
                : new FirstLimit(ledger.Publish(margin.LoadFactor, on | stiffness.LimitsOn), stiffness.Plies[margin.Ply].Line, margin.Mode, bagSide),
            WithoutLimits = [.. work.Answer.PliesWithoutLimits.Select(ply => stiffness.Plies[ply].Line)],
            PartlyJudged = [.. work.Answer.PliesPartlyJudged.Select(ply => stiffness.Plies[ply].Line)],
            Sag = work.Sag is { } sag ? ledger.Publish(Length.FromMeters(sag), on) : null,
            Lines =
            [
                .. work.Stresses.Select((stress, ply) => new LineStress(
                    stiffness.Plies[ply].Line,
                    ledger.Publish(Pressure.FromPascals(stress.X), on),
                    ledger.Publish(Pressure.FromPascals(stress.Y), on),
                    ledger.Publish(Pressure.FromPascals(stress.XY), on))),
            ],
        };
    }

    private static LoadWork? Work(PlanContext context, StiffnessWork stiffness, StatedLoad load) => load switch
    {
        PullLoad pull => Pull(context, stiffness.Laminate, pull),
        StripLoad strip => Strip(context, stiffness.Laminate, strip),
        _ => null,
    };

    private static LoadWork? Pull(PlanContext context, Laminate laminate, PullLoad load)
    {
        if (context.Figures.Pull(load.Pull, context.PartOwner, $"load {load.Name}") is not { } pull)
        {
            return null;
        }

        var perWidth = ForcePerLength.FromNewtonsPerMeter(pull.Si);
        var edge = load.Direction == LoadDirection.Along ? new LaminateLoad(Nx: perWidth) : new LaminateLoad(Ny: perWidth);
        var answer = FirstPly.Margin(laminate, edge);
        return new LoadWork(load, answer.Governing is { } margin ? (margin, null) : null, answer, null, Stresses(laminate, edge), pull.On);
    }

    private static LoadWork? Strip(PlanContext context, Laminate laminate, StripLoad load)
    {
        var (figures, word) = (context.Figures, $"load {load.Name}");
        if (figures.Length(load.Width, context.PartOwner, word) is not { } width
            || figures.Length(load.Span, context.PartOwner, word) is not { } span
            || figures.Force(load.Load, context.PartOwner, word) is not { } force)
        {
            return null;
        }

        var isAlong = load.Direction == LoadDirection.Along;
        var moment = force.Si * span.Si / (4 * width.Si);
        var bagSide = FirstPly.Margin(laminate, Bent(moment, isAlong));
        var mouldSide = FirstPly.Margin(laminate, Bent(-moment, isAlong));
        var sag = StripBending.ThreePointDeflection(
            laminate.StripStiffness(Angle.FromDegrees(isAlong ? 0 : 90)), Force.FromNewtons(force.Si), Length.FromMeters(span.Si), Length.FromMeters(width.Si));
        return new LoadWork(
            load, Sooner(bagSide.Governing, mouldSide.Governing), Both(bagSide, mouldSide), sag.Meters, Stresses(laminate, Bent(moment, isAlong)),
            width.On | span.On | force.On);
    }

    private static LaminateLoad Bent(double moment, bool along)
    {
        var perWidth = TorquePerLength.FromNewtonMetersPerMeter(moment);
        return along ? new LaminateLoad(Mx: perWidth) : new LaminateLoad(My: perWidth);
    }

    private static (FirstPlyMargin, bool?)? Sooner(FirstPlyMargin? bagSide, FirstPlyMargin? mouldSide) => (bagSide, mouldSide) switch
    {
        (null, null) => null,
        ({ } bag, null) => (bag, true),
        ({ } bag, { } mould) when bag.LoadFactor <= mould.LoadFactor => (bag, true),
        (_, { } mould) => (mould, false),
    };

    private static FirstPlyAnswer Both(FirstPlyAnswer one, FirstPlyAnswer other) =>
        one with { PliesPartlyJudged = [.. one.PliesPartlyJudged.Union(other.PliesPartlyJudged).Order()] };

    // Of either sign: a strip may be bent either way.
    private static ImmutableArray<PlaneVector> Stresses(Laminate laminate, LaminateLoad load)
    {
        var largest = new PlaneVector[laminate.Plies.Count];
        foreach (var state in LaminateResponse.States(laminate, LaminateResponse.UnderLoad(laminate, load))!)
        {
            var (sofar, stress) = (largest[state.Ply], state.OwnStress);
            largest[state.Ply] = new PlaneVector(
                Math.Max(sofar.X, Math.Abs(stress.X)), Math.Max(sofar.Y, Math.Abs(stress.Y)), Math.Max(sofar.XY, Math.Abs(stress.XY)));
        }

        return ImmutableArray.Create(largest);
    }

    // The same for every load; each material once.
    private static void NameWhatIsNotKnown(PlanContext context, StiffnessWork stiffness, FirstPlyAnswer answer)
    {
        foreach (var ply in answer.PliesWithoutLimits)
        {
            context.Miss(Margin, $"no strain limit is known for {stiffness.Plies[ply].Material}");
        }
    }
}
