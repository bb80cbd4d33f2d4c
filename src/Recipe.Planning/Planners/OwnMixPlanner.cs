using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>A liquid of its own while the plan is made; masses in kg.</summary>
internal sealed record OwnMixWork(OwnMixUse Use, ResinSystem System, Num Laid, Num Loss, Num Spare, ImmutableArray<PotWork> Pots)
{
    /// <summary>What is to be mixed.</summary>
    public Num ToMix => Laid + Loss + Spare;
}

/// <summary>
/// Coats, the resin of a later seam and the adhesive of a join: each is mixed in pots of its own, in a cup, with the part's share of
/// spare, and held against its own pot life.
/// </summary>
/// <remarks>
/// To mix = (laid + brush) (1 + spare) / (1 - pot loss), as for the plies (<see cref="ResinPlanner"/>). What `wet-out` says of
/// pots, tray and loss is said of the plies' resin and does not hold here. The `pot` of a join is the least that is mixed for it: what it holds
/// over the need is spare.
/// </remarks>
internal sealed class OwnMixPlanner
{
    private readonly PlanContext _context;
    private readonly Conditions _conditions;
    private readonly ImmutableArray<OwnMixWork>.Builder _mixes = ImmutableArray.CreateBuilder<OwnMixWork>();

    private OwnMixPlanner(PlanContext context, Conditions conditions)
    {
        _context = context;
        _conditions = conditions;
    }

    public static ImmutableArray<OwnMixWork> Work(PlanContext context, Ground? ground, JoinWork? join, Conditions conditions)
    {
        var planner = new OwnMixPlanner(context, conditions);
        planner.AddCoats(ground);
        planner.AddJoin(join);
        return planner._mixes.ToImmutable();
    }

    public static ImmutableArray<OwnMixPlan> Publish(PlanContext context, ImmutableArray<OwnMixWork> mixes)
    {
        var ledger = context.Ledger;
        var plans = ImmutableArray.CreateBuilder<OwnMixPlan>(mixes.Length);
        foreach (var mix in mixes)
        {
            plans.Add(new OwnMixPlan
            {
                Use = mix.Use,
                System = mix.System,
                Laid = ledger.PublishMass(mix.Laid),
                Loss = ledger.PublishMass(mix.Loss),
                Spare = ledger.PublishMass(mix.Spare),
                ToMix = ledger.PublishMass(mix.ToMix),
                Pots = PotPlanner.Publish(context, mix.Pots, mix.System),
            });
        }

        return plans.MoveToImmutable();
    }

    // A coat is laid as far as the plies run, one side after the other.
    private void AddCoats(Ground? ground)
    {
        if (_context.Part.Coats.IsEmpty || ground is null)
        {
            return;
        }

        var trim = _context.Figures.Length(_context.Part.Trim, _context.PartOwner, "trim", zero: true) ?? _context.Take(Defaults.Trim);
        var area = ground.AreaWithBorder(trim) * ground.Sides;
        var time = area * _context.Take(Defaults.CoatPace);
        time = ground.IsHardToReach ? time * _context.Take(Defaults.CurvatureFactor) : time;
        time += _context.Take(Defaults.PieceHandling) * ground.Sides;
        foreach (var coat in _context.Part.Coats)
        {
            Add(OwnMixUse.Coat, coat.Material, area * LaminatePlanner.CoatFilm(_context, coat), time / _conditions.Laminators.Value);
        }
    }

    private void AddJoin(JoinWork? join)
    {
        if (join?.Time is not { } time)
        {
            return;
        }

        // Glued first, taped when it is closed.
        if (join.Join.Adhesive is { } adhesive)
        {
            Add(OwnMixUse.Adhesive, adhesive, (join.Adhesive ?? Num.Zero) + (join.Fillet ?? Num.Zero), time);
        }

        if (!join.SameSession && _context.Part.Resin is { } resin)
        {
            Add(OwnMixUse.SeamResin, resin, join.LaminatingResin, time);
        }
    }

    private void Add(OwnMixUse use, ResinSystem system, Num laid, Num time)
    {
        if (laid.Si <= 0)
        {
            return;
        }

        var one = new Num(1, Rests.None);
        var brush = Num.Min(laid, _context.Take(Defaults.BrushLoss));
        var share = _context.Figures.Number(_context.Part.WetOut?.Spare, _context.PartOwner, "spare") ?? _context.Take(Defaults.Spare);
        var spare = (laid + brush) * share;
        var toMix = (laid + brush + spare) / (one - _context.Take(Defaults.PotLoss));
        var loss = toMix - laid - spare;
        if (use != OwnMixUse.Coat && _context.Figures.Mass(_context.Part.Join?.Pot, _context.PartOwner, "pot") is { } least && least.Si > toMix.Si)
        {
            // A pot that the scale can weigh holds more than the seam takes.
            (spare, toMix) = (spare + (least - toMix), least.And(toMix.On));
        }

        var largest = PotPlanner.LargestPot(_context, system) ?? _context.Take(Defaults.LargestPot);
        var lives = new PotLives(_context, system, _conditions, ofWetOut: false);
        var laying = time.And(_conditions.Laminators.On);
        var job = new PotJob(system, toMix, laying, PotPlanner.Mixing(_context), largest, ByMassOnly: false);
        _mixes.Add(new OwnMixWork(use, system, laid, loss, spare, PotPlanner.Work(_context, job, lives)));
    }
}
