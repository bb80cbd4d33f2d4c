using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;

namespace Recipe.Planning.Exploring;

/// <summary>
/// What came of the candidates of a study so far: how many kept the limits, which limits the others broke, the front, a sketch of all that are
/// feasible. Of bounded size. Tallies of different candidates may be added up; the order in which candidates come does not count.
/// Not for several threads at once.
/// </summary>
public sealed class StudyTally
{
    private readonly Study _study;
    private readonly long[] _broken;
    private readonly SortedDictionary<string, long> _unknown = new(StringComparer.Ordinal);
    private readonly ParetoArchive _sound = new();
    private readonly ParetoArchive _all = new();

    /// <summary>An empty tally.</summary>
    /// <param name="planner">The study with the figures of the part as it is written.</param>
    public StudyTally(CandidatePlanner planner)
    {
        ArgumentNullException.ThrowIfNull(planner);
        _study = planner.Study;
        _broken = new long[_study.Limits.Length];
        Sketch = planner.Figures.Length > 1 ? new PointSketch(planner.AsWritten.Values[0] ?? 0, planner.AsWritten.Values[1] ?? 0) : null;
    }

    /// <summary>How many candidates were looked at.</summary>
    public long Tried { get; private set; }

    /// <summary>How many of them are the same part as another.</summary>
    public long Repeated { get; private set; }

    /// <summary>How many keep every limit.</summary>
    public long Feasible { get; private set; }

    /// <summary>How many break at least one limit.</summary>
    public long Broken { get; private set; }

    /// <summary>How many break each limit, in the order of the study; one that breaks two counts for both.</summary>
    public ImmutableArray<long> BrokenEach => ImmutableArray.Create(_broken);

    /// <summary>How many could not be computed, by the reason.</summary>
    public IReadOnlyDictionary<string, long> Unknown => _unknown;

    /// <summary>The first two figures of all feasible candidates, thinned; null when the study has only one figure.</summary>
    public PointSketch? Sketch { get; }

    /// <summary>The feasible candidates without an open error that no other such candidate beats.</summary>
    public ImmutableArray<ParetoPoint> Front => _sound.Front();

    /// <summary>The front as it would be if errors did not count.</summary>
    public ImmutableArray<ParetoPoint> FrontOfAll => _all.Front();

    /// <summary>
    /// Counts candidates. Those that no sound candidate so far dominates are asked about, the best of them first, until each is dominated by a
    /// sound one or has been asked about: so the front is that of all sound candidates, though few are ever asked about.
    /// </summary>
    /// <param name="candidates">The candidates, each once.</param>
    /// <param name="isSound">Answers for many at a time whether each is without an open error.</param>
    public void Take(IReadOnlyCollection<Candidate> candidates, Func<IReadOnlyList<long>, IReadOnlyList<bool>> isSound)
    {
        ArgumentNullException.ThrowIfNull(candidates);
        ArgumentNullException.ThrowIfNull(isSound);
        var open = new List<ParetoPoint>();
        foreach (var candidate in candidates)
        {
            Count(candidate);
            if (candidate.Fate == CandidateFate.Feasible)
            {
                var point = PointOf(candidate);
                Sketch?.Add(new SketchPoint(candidate.Index, candidate.Values[0]!.Value, candidate.Values[1]!.Value));
                if (!_all.Dominates(point.Values.AsSpan()))
                {
                    _all.Add(point);
                }

                open.Add(point);
            }
        }

        open.RemoveAll(point => _sound.Dominates(point.Values.AsSpan()));
        while (open.Count > 0)
        {
            var best = ParetoFront.Of(open);
            var sound = isSound([.. best.Select(point => point.Index)]);
            for (var i = 0; i < best.Length; i++)
            {
                if (sound[i])
                {
                    _sound.Add(best[i]);
                }
            }

            var asked = best.Select(point => point.Index).ToHashSet();
            open.RemoveAll(point => asked.Contains(point.Index) || _sound.Dominates(point.Values.AsSpan()));
        }
    }

    /// <summary>The tally as plain values, to be kept.</summary>
    public TallyRecord ToRecord() => new(
        Tried, Repeated, Feasible, Broken, BrokenEach, [.. _unknown.Select(pair => new CountedReason(pair.Key, pair.Value))],
        Front, FrontOfAll, Sketch?.Level ?? 0, Sketch?.Points ?? []);

    /// <summary>Adds what was kept of other candidates of the same study.</summary>
    /// <exception cref="ArgumentException">It does not fit this study.</exception>
    public void Add(TallyRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        if (record.BrokenEach.Length != _broken.Length || record.Front.Concat(record.FrontOfAll).Any(point => point.Values.Length != _study.Wants.Length))
        {
            throw new ArgumentException("The tally is of another study.", nameof(record));
        }

        (Tried, Repeated, Feasible, Broken) = (Tried + record.Tried, Repeated + record.Repeated, Feasible + record.Feasible, Broken + record.Broken);
        for (var i = 0; i < _broken.Length; i++)
        {
            _broken[i] += record.BrokenEach[i];
        }

        foreach (var (reason, count) in record.Unknown)
        {
            _unknown[reason] = _unknown.GetValueOrDefault(reason) + count;
        }

        foreach (var point in record.Front)
        {
            _sound.Add(point);
        }

        foreach (var point in record.FrontOfAll)
        {
            _all.Add(point);
        }

        Sketch?.Add(record.SketchLevel, record.Sketch);
    }

    private void Count(Candidate candidate)
    {
        Tried++;
        switch (candidate.Fate)
        {
            case CandidateFate.Feasible:
                Feasible++;
                break;
            case CandidateFate.Repeated:
                Repeated++;
                break;
            case CandidateFate.Unknown:
                _unknown[candidate.Missing!] = _unknown.GetValueOrDefault(candidate.Missing!) + 1;
                break;
            default:
                Broken++;
                foreach (var limit in candidate.Breaks)
                {
                    _broken[limit]++;
                }

                break;
        }
    }

    private ParetoPoint PointOf(Candidate candidate) =>
        new(candidate.Index, [.. _study.Wants.Select((want, i) => Dominance.Snap(want.Cost(candidate.Values[i]!.Value)))]);
}

/// <summary>A <see cref="StudyTally"/> as plain values.</summary>
public sealed record TallyRecord(
    long Tried, long Repeated, long Feasible, long Broken, ImmutableArray<long> BrokenEach, ImmutableArray<CountedReason> Unknown,
    ImmutableArray<ParetoPoint> Front, ImmutableArray<ParetoPoint> FrontOfAll, int SketchLevel, ImmutableArray<SketchPoint> Sketch);

/// <summary>How many candidates could not be computed for a reason.</summary>
public readonly record struct CountedReason(string Reason, long Count);
