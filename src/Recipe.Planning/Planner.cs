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
    public static Plan Plan(Part part, RecipeModel model)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(model);

        // First everything is worked out, then what goes into the plan is published: only what is published lists assumptions.
        var context = new PlanContext(part, model);
        var conditions = ConditionsPlanner.Work(context);
        var ground = GeometryPlanner.Work(context);
        var contents = new PlyContents(context);
        var stack = StackPlanner.Work(context, ground, conditions, contents);
        var bag = BagPlanner.Work(context, ground);
        (stack, bag) = Bleeding.Work(context, stack, bag);
        var join = JoinPlanner.Work(context, ground, conditions);
        var laminate = LaminatePlanner.Work(context, ground, stack, contents, bag, join);
        var stiffness = StiffnessPlanner.Work(context, stack, contents);
        var loads = stiffness is null ? [] : LoadPlanner.Work(context, stiffness);
        var resin = ResinPlanner.Work(context, ground, stack, bag, join, conditions, contents);
        var lives = resin is null ? null : new PotLives(context, resin.System, conditions, ofWetOut: true);
        var vacuum = VacuumPlanner.Work(context, conditions, bag);
        var flow = InfusionPlanner.Work(context, conditions, stack, bag, vacuum, contents, lives);
        var pots = PotPlanner.Work(context, resin, lives, new LayingOrder(stack, join), ground?.Sides ?? 1, flow);
        var mixes = OwnMixPlanner.Work(context, ground, join, conditions);
        var clock = ClockPlanner.Work(context, ground, stack, bag, vacuum, pots, lives, conditions);
        var cure = CurePlanner.Work(context, conditions);
        var progress = CureProgressPlanner.Work(context, cure);
        var heating = SelfHeating.Work(context, cure, laminate, stack);
        var curl = stiffness is null ? null : CurlPlanner.Work(context, stiffness, ground, cure, conditions);
        var nests = NestPlanner.Work(context, stack, bag);
        var takeoff = TakeoffPlanner.Publish(context, TakeoffPlanner.Work(context, ground, stack, bag, join, resin, mixes));

        var ledger = context.Ledger;
        var plan = new Plan
        {
            Part = part,
            Shop = model.Shop,
            Conditions = ConditionsPlanner.Publish(ledger, conditions),
            Geometry = ground is null ? null : GeometryPlanner.Publish(ground),
            Stack = [.. stack.Select(line => line.Publish(ledger))],
            Laminate = laminate is null ? null : LaminatePlanner.Publish(ledger, laminate),
            Resin = resin is null ? null : ResinPlanner.Publish(ledger, resin),
            Pots = resin is null ? [] : PotPlanner.Publish(context, pots, resin.System),
            OwnMixes = OwnMixPlanner.Publish(context, mixes),
            Clock = clock is null ? null : ClockPlanner.Publish(ledger, clock),
            Bag = bag is null ? null : BagPlanner.Publish(ledger, bag),
            Vacuum = vacuum is null ? null : VacuumPlanner.Publish(ledger, vacuum),
            Cure = cure is null ? null : CurePlanner.Publish(ledger, cure, heating),
            Join = join is null ? null : JoinPlanner.Publish(ledger, join),
            Takeoff = takeoff,
            Nests = nests,
            Cost = CostPlanner.Work(model.Shop, takeoff),
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
