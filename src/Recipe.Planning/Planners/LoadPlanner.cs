using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>A load while the plan is made. Lines are counted from the mould.</summary>
/// <param name="Load">The load.</param>
/// <param name="First">The governing limit; null when there is none.</param>
/// <param name="WithoutLimits">Lines of which no limit is known.</param>
/// <param name="PartlyJudged">Lines of which not every limit is known that the load asks for.</param>
/// <param name="Sag">Sag of the strip, m; null for a pull.</param>
/// <param name="Stresses">Largest stresses of each line, Pa.</param>
/// <param name="On">What the load itself rests on.</param>
internal sealed record LoadWork(
    StatedLoad Load, LimitWork? First, ImmutableArray<int> WithoutLimits, ImmutableArray<int> PartlyJudged, Num? Sag, ImmutableArray<PlaneVector> Stresses, Rests On);

/// <summary>The limit that a load reaches first.</summary>
internal sealed record LimitWork(double Factor, int Line, StrainMode Mode, bool? BagSideStretched);

/// <summary>
/// The stated loads on the laminate. A strip on two supports bends by M/b = F L/(4 b) in its middle; it is narrow, so that nothing holds it
/// from bowing across. It is judged bent either way. The slide of a core is counted into the sag, not into the strains of the skins.
/// </summary>
internal static class LoadPlanner
{
    private const string Margin = "strain margin";

    public static ImmutableArray<LoadWork> Work(PlanContext context, StiffnessWork stiffness)
    {
        if (context.Part.Loads.IsEmpty)
        {
            return [];
        }

        var stack = Stack.Of(stiffness);
        var loads = ImmutableArray.CreateBuilder<LoadWork>(context.Part.Loads.Length);
        foreach (var load in context.Part.Loads)
        {
            try
            {
                if (Work(context, stack, stiffness.CoreShear, load) is { } work)
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
            NameWhatIsNotKnown(context, stiffness, loads[0].WithoutLimits);
        }

        return loads.ToImmutable();
    }

    public static LoadPlan Publish(PlanLedger ledger, StiffnessWork stiffness, LoadWork work)
    {
        var on = stiffness.On | work.On;
        return new LoadPlan
        {
            Load = work.Load,
            First = work.First is { } first
                ? new FirstLimit(ledger.Publish(first.Factor, on | stiffness.LimitsOn), stiffness.Plies[first.Line].Line, first.Mode, first.BagSideStretched)
                : null,
            WithoutLimits = [.. work.WithoutLimits.Select(line => stiffness.Plies[line].Line)],
            PartlyJudged = [.. work.PartlyJudged.Select(line => stiffness.Plies[line].Line)],
            Sag = work.Sag is { } sag ? ledger.Publish(Length.FromMeters(sag.Si), on | sag.On) : null,
            Lines =
            [
                .. work.Stresses.Select((stress, line) => new LineStress(
                    stiffness.Plies[line].Line,
                    ledger.Publish(Pressure.FromPascals(stress.X), on),
                    ledger.Publish(Pressure.FromPascals(stress.Y), on),
                    ledger.Publish(Pressure.FromPascals(stress.XY), on))),
            ],
        };
    }

    private static LoadWork? Work(PlanContext context, Stack stack, Num? coreShear, StatedLoad load) => load switch
    {
        PullLoad pull => Pull(context, stack, pull),
        StripLoad strip => Strip(context, stack, coreShear, strip),
        _ => null,
    };

    private static LoadWork? Pull(PlanContext context, Stack stack, PullLoad load)
    {
        if (context.Figures.Pull(load.Pull, context.PartOwner, $"load {load.Name}") is not { } pull)
        {
            return null;
        }

        var perWidth = ForcePerLength.FromNewtonsPerMeter(pull.Si);
        var edge = load.Direction == LoadDirection.Along ? new LaminateLoad(Nx: perWidth) : new LaminateLoad(Ny: perWidth);
        var answer = FirstPly.Margin(stack.Laminate, edge);
        return new LoadWork(
            load, stack.Limit(answer.Governing, null), stack.LinesOf(answer.PliesWithoutLimits), stack.LinesOf(answer.PliesPartlyJudged), null, stack.Stresses(edge), pull.On);
    }

    private static LoadWork? Strip(PlanContext context, Stack stack, Num? coreShear, StripLoad load)
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
        var bagSide = FirstPly.Margin(stack.Laminate, Bent(moment, isAlong));
        var mouldSide = FirstPly.Margin(stack.Laminate, Bent(-moment, isAlong));
        var first = (mouldSide.Governing?.LoadFactor ?? double.PositiveInfinity) < (bagSide.Governing?.LoadFactor ?? double.PositiveInfinity)
            ? stack.Limit(mouldSide.Governing, false)
            : stack.Limit(bagSide.Governing, true);
        var sag = StripBending.ThreePointDeflection(
            stack.Laminate.StripStiffness(Angle.FromDegrees(isAlong ? 0 : 90)),
            Force.FromNewtons(force.Si),
            Length.FromMeters(span.Si),
            Length.FromMeters(width.Si),
            coreShear is { } slides ? ForcePerLength.FromNewtonsPerMeter(slides.Si) : null);
        return new LoadWork(
            load,
            first,
            stack.LinesOf(bagSide.PliesWithoutLimits),
            stack.LinesOf(bagSide.PliesPartlyJudged.Concat(mouldSide.PliesPartlyJudged)),
            new Num(sag.Meters, coreShear?.On ?? Rests.None),
            stack.Stresses(Bent(moment, isAlong)),
            width.On | span.On | force.On);
    }

    private static LaminateLoad Bent(double moment, bool along)
    {
        var perWidth = TorquePerLength.FromNewtonMetersPerMeter(moment);
        return along ? new LaminateLoad(Mx: perWidth) : new LaminateLoad(My: perWidth);
    }

    // The same for every load; each material once.
    private static void NameWhatIsNotKnown(PlanContext context, StiffnessWork stiffness, ImmutableArray<int> withoutLimits)
    {
        foreach (var line in withoutLimits)
        {
            context.Miss(Margin, $"no strain limit is known for {stiffness.Plies[line].Material}");
        }
    }

    /// <summary>The laminate with a ply for each repeat of a line: the yarns of a woven cloth come to the surface of their own repeat only.</summary>
    /// <param name="Laminate">The laminate.</param>
    /// <param name="Lines">For each of its plies, the line that it belongs to.</param>
    /// <param name="Count">How many lines there are.</param>
    private sealed record Stack(Laminate Laminate, ImmutableArray<int> Lines, int Count)
    {
        public static Stack Of(StiffnessWork stiffness)
        {
            var plies = stiffness.Plies;
            var lines = ImmutableArray.CreateBuilder<int>();
            for (var line = 0; line < plies.Length; line++)
            {
                lines.AddRange(Enumerable.Repeat(line, plies[line].Count));
            }

            var laminate = lines.Count == plies.Length ? stiffness.Laminate : new Laminate([.. lines.Select(line => plies[line].One)]);
            return new Stack(laminate, lines.ToImmutable(), plies.Length);
        }

        public ImmutableArray<int> LinesOf(IEnumerable<int> plies) => [.. plies.Select(ply => Lines[ply]).Distinct().Order()];

        public LimitWork? Limit(FirstPlyMargin? margin, bool? bagSideStretched) =>
            margin is null ? null : new LimitWork(margin.LoadFactor, Lines[margin.Ply], margin.Mode, bagSideStretched);

        // Of either sign: a strip may be bent either way.
        public ImmutableArray<PlaneVector> Stresses(LaminateLoad load)
        {
            var largest = new PlaneVector[Count];
            foreach (var state in LaminateResponse.States(Laminate, LaminateResponse.UnderLoad(Laminate, load))!)
            {
                var line = Lines[state.Ply];
                var (sofar, stress) = (largest[line], state.OwnStress);
                largest[line] = new PlaneVector(
                    Math.Max(sofar.X, Math.Abs(stress.X)), Math.Max(sofar.Y, Math.Abs(stress.Y)), Math.Max(sofar.XY, Math.Abs(stress.XY)));
            }

            return [.. largest];
        }
    }
}
