using System.Collections.Concurrent;
using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Planning.Exploring;

/// <summary>
/// Works out the figures of the candidates of a study: each is planned as a variant would be, with no more of the plan than the figures
/// need. The same candidate gives the same figures, on any thread.
/// </summary>
public sealed class CandidatePlanner
{
    private const PlanPieces CurePieces = PlanPieces.Cure | PlanPieces.Progress;

    // More cures than these are worked out each for its candidate.
    private const long MostCures = 4096;

    private readonly RecipeModel _model;
    private readonly PlanPieces _pieces;
    private readonly PlanPieces _cure;
    private readonly ImmutableArray<int> _curedBy;
    private readonly ConcurrentDictionary<long, Plan> _cures = new();
    private readonly ImmutableArray<int> _placeOfLimit;
    private readonly ImmutableHashSet<Gap> _gapsAsWritten;

    /// <summary>Prepares a study.</summary>
    /// <param name="study">The study; it must be whole.</param>
    /// <param name="model">What is around it: shop, shelf, prices.</param>
    public CandidatePlanner(Study study, RecipeModel model)
    {
        ArgumentNullException.ThrowIfNull(study);
        ArgumentNullException.ThrowIfNull(model);
        if (!study.IsWhole)
        {
            throw new ArgumentException("Only a study that was understood whole can be run.", nameof(study));
        }

        (Study, _model) = (study, model);
        Figures = study.Figures;

        // The cure goes by the part's cure block, its resin and the room: candidates that share them share its figures, and it is dear to work out.
        var pieces = FigurePieces.Of(Figures);
        _curedBy = [.. Enumerable.Range(0, study.Choices.Length).Where(i => study.Choices[i].What is "resin" or "hardener" or "room" or "part")];
        var cures = _curedBy.Aggregate(1L, (all, i) => all * study.Choices[i].Options.Length);
        _cure = cures <= MostCures ? pieces & CurePieces : 0;
        _pieces = pieces & ~_cure;
        _placeOfLimit = [.. study.Limits.Select(limit => Figures.IndexOf(limit.Figure))];
        var plan = Planner.Plan(study.Part!, model, pieces);
        _gapsAsWritten = [.. plan.Gaps];
        AsWritten = Judge(-1, plan, plan);
    }

    /// <summary>The study.</summary>
    public Study Study { get; }

    /// <summary>The figures that candidates have, the wanted ones first.</summary>
    public ImmutableArray<PartFigure> Figures { get; }

    /// <summary>The part as it is written, with the number -1.</summary>
    public Candidate AsWritten { get; }

    /// <summary>Looks at a candidate.</summary>
    /// <param name="index">From 0 to the number of candidates, that one excluded.</param>
    public Candidate Look(long index)
    {
        var options = Study.OptionsOf(index);
        if (Study.IsRepeated(options))
        {
            return new Candidate(index, CandidateFate.Repeated, [], [], null);
        }

        var part = Study.PartOf(options);
        var plan = Planner.Plan(part, _model, _pieces);
        return Judge(index, plan, _cure == 0 ? plan : CureOf(part, options));
    }

    /// <summary>The whole plan of a candidate.</summary>
    public Plan PlanOf(long index) => Planner.Plan(Study.PartOf(Study.OptionsOf(index)), _model);

    private Plan CureOf(Part part, ImmutableArray<int> options)
    {
        var key = _curedBy.Aggregate(0L, (number, i) => (number * Study.Choices[i].Options.Length) + options[i]);
        return _cures.TryGetValue(key, out var known) ? known : _cures.GetOrAdd(key, Planner.Plan(part, _model, _cure));
    }

    private Candidate Judge(long index, Plan plan, Plan cure)
    {
        var values = new double?[Figures.Length];
        string? missing = null;
        for (var i = 0; i < values.Length; i++)
        {
            var from = (FigurePieces.Of(Figures[i]) & CurePieces) != 0 ? cure : plan;
            values[i] = PlanFigures.Of(Figures[i], from) is { } value && double.IsFinite(value) ? value : null;
            if (values[i] is null)
            {
                missing ??= Why(Figures[i], from);
            }
        }

        missing ??= OtherMoney(plan);
        var known = ImmutableArray.Create(values);
        if (missing is not null)
        {
            return new(index, CandidateFate.Unknown, known, [], missing);
        }

        ImmutableArray<int> breaks = [];
        for (var i = 0; i < _placeOfLimit.Length; i++)
        {
            if (!Study.Limits[i].Holds(values[_placeOfLimit[i]]!.Value))
            {
                breaks = breaks.Add(i);
            }
        }

        return new(index, breaks.IsEmpty ? CandidateFate.Feasible : CandidateFate.Broken, known, breaks, null);
    }

    // What this candidate lacks and the part as it is written does not; where both lack it, the first thing that is missing.
    private string Why(PartFigure figure, Plan plan)
    {
        var word = figure.Word();
        if (figure == PartFigure.Cost && plan.Cost is { WithoutPrice: > 0 })
        {
            var line = plan.Takeoff.FirstOrDefault(line => line.Cost is null);
            return $"{word}: {(line is null ? "a price" : line.Material.Name)} has no price in {plan.Cost.Currency}";
        }

        var gap = plan.Gaps.FirstOrDefault(gap => _gapsAsWritten?.Contains(gap) == false) ?? plan.Gaps.FirstOrDefault();
        return gap is null ? $"{word}: the part has none" : $"{word}: {gap.Missing}";
    }

    private string? OtherMoney(Plan plan)
    {
        foreach (var limit in Study.Limits)
        {
            if (limit.Currency is { } currency && plan.Cost is { } cost && cost.Currency != currency)
            {
                return $"{limit.Figure.Word()}: the limit is in {currency}, the prices in {cost.Currency}";
            }
        }

        return null;
    }
}
