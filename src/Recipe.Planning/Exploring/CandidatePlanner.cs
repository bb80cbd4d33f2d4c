using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Planning.Exploring;

/// <summary>
/// Works out the figures of the candidates of a study: each is planned as a variant would be, with no more of the plan than the figures
/// need. The same candidate gives the same figures, on any thread.
/// </summary>
public sealed class CandidatePlanner
{
    private readonly RecipeModel _model;
    private readonly PlanPieces _pieces;
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
        _pieces = FigurePieces.Of(Figures);
        _placeOfLimit = [.. study.Limits.Select(limit => Figures.IndexOf(limit.Figure))];
        var plan = Planner.Plan(study.Part!, model, _pieces);
        _gapsAsWritten = [.. plan.Gaps];
        AsWritten = Judge(-1, plan);
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
        return Study.IsRepeated(options)
            ? new Candidate(index, CandidateFate.Repeated, [], [], null)
            : Judge(index, Planner.Plan(Study.PartOf(options), _model, _pieces));
    }

    /// <summary>The whole plan of a candidate.</summary>
    public Plan PlanOf(long index) => Planner.Plan(Study.PartOf(Study.OptionsOf(index)), _model);

    private Candidate Judge(long index, Plan plan)
    {
        var values = new double?[Figures.Length];
        string? missing = null;
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = PlanFigures.Of(Figures[i], plan) is { } value && double.IsFinite(value) ? value : null;
            if (values[i] is null)
            {
                missing ??= Why(Figures[i], plan);
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
