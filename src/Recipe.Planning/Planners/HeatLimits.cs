using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Ledger;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Something in the heat while the plan is made.</summary>
internal sealed record HeatLimitWork(string Item, string Material, Known<Temperature>? Limit, Temperature Hottest, int HottestStep, SourceSpan Where);

/// <summary>
/// What is in the heat, what it can stand and the hottest step it is there for, weakest first, what is not known last: the mould and
/// its release until demoulding; cores and inserts throughout; layers, tape, ports and hose while the bag is on.
/// </summary>
internal sealed class HeatLimits
{
    private readonly PlanContext _context;
    private readonly ImmutableArray<CureStepWork> _steps;
    private readonly List<HeatLimitWork> _limits = [];
    private readonly HashSet<string> _seen = new(StringComparer.Ordinal);

    private HeatLimits(PlanContext context, ImmutableArray<CureStepWork> steps)
    {
        _context = context;
        _steps = steps;
    }

    public static ImmutableArray<HeatLimitWork> Work(PlanContext context, ImmutableArray<CureStepWork> steps)
    {
        var limits = new HeatLimits(context, steps);
        limits.AddMould();
        limits.AddStack();
        limits.AddBag();

        // A stable sort: things of the same limit stay in the order of the recipe.
        return [.. limits._limits.OrderBy(static l => l.Limit?.Value.DegreesCelsius ?? double.PositiveInfinity)];
    }

    private void AddMould()
    {
        if (_context.Part.Mould is not { } mould)
        {
            return;
        }

        // The mould's figure may be its own line or that of what it is made of.
        var owner = mould.MadeOf is { } stuff && mould.HeatLimit == stuff.HeatLimit ? Owner.Of(stuff) : Owner.Of(mould);
        var (step, hottest) = Hottest(static s => s.InMould);
        Add($"mould {mould.Name}", mould.Name, _context.Figures.Temperature(mould.HeatLimit, owner, "heat-limit"), step, hottest, mould.Where);
        foreach (var coat in mould.Release)
        {
            Add($"release agent {coat.Agent.Name}", coat.Agent, Rests.None, step, hottest, coat.Where);
        }
    }

    private void AddStack()
    {
        var (step, hottest) = Hottest(static _ => true);
        foreach (var item in _context.Part.Stack)
        {
            if (item is CoreItem core)
            {
                Add($"core {core.Material.Name}", core.Material, Rests.None, step, hottest, core.MaterialWhere);
            }
            else if (item is InsertItem insert)
            {
                Add($"insert {insert.Material.Name}", insert.Material, Rests.None, step, hottest, insert.MaterialWhere);
            }
        }
    }

    private void AddBag()
    {
        if (_context.Part.Bag is not { } bag)
        {
            return;
        }

        var (step, hottest) = Hottest(static s => s.Bagged);
        foreach (var layer in bag.Layers)
        {
            Add($"{layer.Material.Keyword} {layer.Material.Name}", layer.Material, Chosen(layer.ChosenByDefault, layer.Material), step, hottest, layer.Where);
        }

        AddPlaced(bag.SealantTape, step, hottest);
        foreach (var port in bag.Ports)
        {
            AddPlaced(port, step, hottest);
        }

        AddPlaced(bag.Hose, step, hottest);
    }

    private void AddPlaced<T>(Placed<T>? placed, int step, Temperature hottest)
        where T : Material
    {
        if (placed is not null)
        {
            var material = placed.Material;
            Add($"{material.Keyword} {material.Name}", material, Chosen(placed.ChosenByDefault, material), step, hottest, placed.Where);
        }
    }

    private Rests Chosen(bool byDefault, Material material) => byDefault ? _context.ChosenByDefault(material) : Rests.None;

    private void Add(string item, Material material, Rests chosen, int step, Temperature hottest, SourceSpan where)
    {
        var limit = _context.Figures.Temperature(material.HeatLimit, Owner.Of(material), "heat-limit");
        Add(item, material.Name, limit is { } l ? l with { On = l.On | chosen } : null, step, hottest, where);
    }

    private void Add(string item, string material, Known<Temperature>? limit, int step, Temperature hottest, SourceSpan where)
    {
        if (_seen.Add(item))
        {
            _limits.Add(new HeatLimitWork(item, material, limit, hottest, step, where));
        }
    }

    // The first step is always shared: bag and mould are there as the cure begins.
    private (int Step, Temperature Hottest) Hottest(Func<CureStepWork, bool> present)
    {
        var (index, hottest) = (0, _steps[0].Hottest);
        for (var i = 1; i < _steps.Length; i++)
        {
            if (present(_steps[i]) && _steps[i].Hottest > hottest)
            {
                (index, hottest) = (i, _steps[i].Hottest);
            }
        }

        return (index, hottest);
    }
}
