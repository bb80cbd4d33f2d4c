using Recipe.Model;
using Recipe.Planning.Ledger;
using Recipe.Planning.Planners;

namespace Recipe.Planning;

/// <summary>Works out everything that follows from a part.</summary>
public static class Planner
{
    /// <summary>
    /// Makes the plan of a part. Never fails for what a recipe leaves out or says badly: what could not be computed is null and named
    /// among the gaps; every default used is among the assumptions. The same part and model give the same plan, on any thread.
    /// </summary>
    /// <param name="part">The part; a variant with its changes made.</param>
    /// <param name="model">What is around it: shop, shelf, prices, builds.</param>
    public static Plan Plan(Part part, RecipeModel model) => Plan(part, model, PlanPieces.All);

    /// <summary>
    /// The plan with only some of its pieces, for those who look at thousands of parts. What is there is as in the whole plan to the last
    /// digit; what was not asked for is null or empty, and what only that would have assumed or missed is not listed.
    /// </summary>
    /// <param name="part">The part; a variant with its changes made.</param>
    /// <param name="model">What is around it: shop, shelf, prices, builds.</param>
    /// <param name="pieces">The pieces; see <see cref="FigurePieces"/>.</param>
    public static Plan Plan(Part part, RecipeModel model, PlanPieces pieces) => Plan(part, model, pieces, AssemblyParts.None);

    /// <summary>The plan of a part that assemblies are joined of.</summary>
    /// <param name="part">The part; a variant with its changes made.</param>
    /// <param name="model">What is around it: shop, shelf, prices, builds.</param>
    /// <param name="pieces">The pieces; see <see cref="FigurePieces"/>.</param>
    /// <param name="above">The assemblies that it is planned for.</param>
    internal static Plan Plan(Part part, RecipeModel model, PlanPieces pieces, AssemblyParts above)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(model);

        // First everything is worked out, then what goes into the plan is published: only what is published lists assumptions.
        bool Wants(PlanPieces some) => (pieces & some) != 0;
        var context = new PlanContext(part, model);
        var conditions = ConditionsPlanner.Work(context);
        var begun = ShapePlanner.Begin(part);
        var ground = GeometryPlanner.Work(context, begun);
        var contents = new PlyContents(context);
        var stack = StackPlanner.Work(context, ground, conditions, contents);
        var bag = BagPlanner.Work(context, ground);
        (stack, bag) = Bleeding.Work(context, stack, bag);
        var join = JoinPlanner.Work(context, ground, conditions);
        var laminate = LaminatePlanner.Work(context, ground, stack, contents, bag, join);
        var assembly = AssemblyPlanner.Work(context, join, above);
        var stiffness = Wants(PlanPieces.Stiffness) ? StiffnessPlanner.Work(context, stack, contents, withLines: Wants(PlanPieces.Rest)) : null;
        var loads = stiffness is null ? [] : LoadPlanner.Work(context, stiffness);
        var feed = Wants(PlanPieces.Resin) ? FeedPlanner.Work(context, ground) : null;
        var resin = Wants(PlanPieces.Resin) ? ResinPlanner.Work(context, stack, bag, join, conditions, contents, feed) : null;
        var lives = resin is null ? null : new PotLives(context, resin.System, conditions, ofWetOut: true);
        var vacuum = Wants(PlanPieces.Resin) ? VacuumPlanner.Work(context, conditions, bag) : null;
        var flow = Wants(PlanPieces.Resin) ? InfusionPlanner.Work(context, conditions, stack, bag, vacuum, contents, lives) : null;
        var pots = PotPlanner.Work(context, resin, lives, new LayingOrder(stack, join), ground?.Sides ?? 1, flow, withLives: Wants(PlanPieces.Rest));
        var mixes = Wants(PlanPieces.Takeoff) ? OwnMixPlanner.Work(context, ground, join, conditions) : [];
        var clock = Wants(PlanPieces.Resin) ? ClockPlanner.Work(context, ground, stack, bag, vacuum, pots, lives, conditions) : null;
        var cure = Wants(PlanPieces.Cure) ? CurePlanner.Work(context, conditions) : null;
        var progress = Wants(PlanPieces.Progress) ? CureProgressPlanner.Work(context, cure) : null;
        var heating = Wants(PlanPieces.Rest) ? SelfHeating.Work(context, cure, laminate, stack) : null;
        var curl = stiffness is null || !Wants(PlanPieces.Rest) ? null : CurlPlanner.Work(context, stiffness, ground, cure, conditions);
        var shape = Wants(PlanPieces.Rest) ? ShapePlanner.Work(context, begun, ground, stack) : null;
        var nests = Wants(PlanPieces.Rest) ? NestPlanner.Work(context, ground, stack, bag) : [];
        var takeoff = Wants(PlanPieces.Takeoff) ? TakeoffPlanner.Publish(context, TakeoffPlanner.Work(context, ground, stack, bag, join, resin, feed, mixes)) : [];

        var ledger = context.Ledger;
        var plan = new Plan
        {
            Part = part,
            Shop = model.Shop,
            Conditions = ConditionsPlanner.Publish(ledger, conditions),
            Geometry = ground is null ? null : GeometryPlanner.Publish(ground),
            Stack = Wants(PlanPieces.Rest) ? [.. stack.Select(line => line.Publish(ledger))] : [],
            Laminate = laminate is null ? null : LaminatePlanner.Publish(ledger, laminate),
            Resin = resin is null ? null : ResinPlanner.Publish(ledger, resin),
            Pots = resin is null ? [] : PotPlanner.Publish(context, pots, resin.System),
            OwnMixes = OwnMixPlanner.Publish(context, mixes),
            Clock = clock is null ? null : ClockPlanner.Publish(ledger, clock),
            Bag = bag is null ? null : BagPlanner.Publish(ledger, bag),
            Vacuum = vacuum is null ? null : VacuumPlanner.Publish(ledger, vacuum),
            Feed = feed is null ? null : FeedPlanner.Publish(ledger, feed),
            Cure = cure is null ? null : CurePlanner.Publish(ledger, cure, heating),
            Join = join is null ? null : JoinPlanner.Publish(ledger, join, assembly),
            Takeoff = takeoff,
            Shape = shape,
            Nests = nests,
            Cost = Wants(PlanPieces.Takeoff) ? CostPlanner.Work(model.Shop, takeoff) : null,
        };

        // The models after the others, to tell what nothing but them rests on; assumptions and gaps last, since all publish into them.
        var before = ledger.PublishedAssumptions();
        plan = plan with
        {
            Stiffness = stiffness is null ? null : StiffnessPlanner.Publish(ledger, stiffness, loads, curl),
            Pots = PotPlanner.WithPeaks(ledger, plan.Pots, pots),
            Flow = flow is null ? null : InfusionPlanner.Publish(ledger, flow),
            Cure = progress is null ? plan.Cure : plan.Cure! with { Progress = CureProgressPlanner.Publish(ledger, progress) },
        };
        var all = ledger.PublishedAssumptions();
        return plan with
        {
            ModelAssumptions = [.. all.Except(before).Select(assumption => assumption.Key)],
            Assumptions = all,
            Gaps = ledger.Gaps,
        };
    }
}
