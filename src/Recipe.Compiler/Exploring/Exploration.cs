using System.Collections.Immutable;
using Recipe.Checks;
using Recipe.Documents;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Planning.Exploring;
using Recipe.Text.Findings;

namespace Recipe.Compiler.Exploring;

/// <summary>Runs a study of a compiled file: looks at its candidates on all cores and gathers the front. The same study gives the same result on any machine.</summary>
public sealed class Exploration
{
    // Enough for every core, few enough that a batch is over soon and nothing is lost when the run is broken off.
    private const int Batch = 2048;

    private readonly CompiledFile _file;
    private readonly CandidatePlanner _planner;
    private readonly Examiner _examiner;
    private readonly int? _threads;

    internal Exploration(CompiledFile file, Study study, DateOnly? today, int? threads)
    {
        (_file, _threads, Today) = (file, threads, today);
        _planner = new CandidatePlanner(study, file.Bound.Model);
        _examiner = new Examiner(file.Bound.Model, today, file.Checks, earlier: [.. file.Tree.Findings, .. file.Bound.Findings], settings: file.Settings);
        Tally = new StudyTally(_planner);
    }

    /// <summary>The day for which candidates are checked.</summary>
    public DateOnly? Today { get; }

    /// <summary>What came of the candidates so far.</summary>
    internal StudyTally Tally { get; }

    private Study Study => _planner.Study;

    /// <summary>Names of the formats that its result comes in.</summary>
    public static ImmutableArray<string> Formats { get; } = ["text", "md", "html", "csv", "json", "svg"];

    /// <summary>Looks at the candidates of a stretch, in order.</summary>
    /// <param name="from">The first.</param>
    /// <param name="until">Just behind the last.</param>
    /// <param name="done">Called after each batch with the number of the next candidate, and with what writes the candidates just looked at as records.</param>
    /// <param name="cancel">Breaks the run off after the batch that is under way.</param>
    /// <returns>The number of the next candidate: <paramref name="until"/> unless it was broken off.</returns>
    public long Run(long from, long until, Action<long, Func<string>> done, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(done);
        var options = new ParallelOptions { MaxDegreeOfParallelism = _threads ?? -1 };
        var next = from;
        while (next < until)
        {
            var first = next;
            var looked = new Candidate[(int)Math.Min(Batch, until - first)];
            Parallel.For(0, looked.Length, options, i => looked[i] = _planner.Look(first + i));
            Tally.Take(looked, indices => AreSound(indices, options));
            next += looked.Length;
            done(next, () => StudyReport.CsvRows(Study, looked));
            if (cancel.IsCancellationRequested)
            {
                break;
            }
        }

        return next;
    }

    /// <summary>The header of the records of candidates.</summary>
    public string Head() => StudyReport.CsvHead(Study, _planner.Figures);

    /// <summary>Takes over what came of other candidates.</summary>
    /// <exception cref="ArgumentException">It does not fit this study.</exception>
    public void Add(ShardFile shard)
    {
        ArgumentNullException.ThrowIfNull(shard);
        Tally.Add(shard.Shard.Tally);
    }

    /// <summary>What came of a stretch so far, as the text of a file to be kept.</summary>
    public string Shard(ShardSet set, ShardPlan plan, long next)
    {
        ArgumentNullException.ThrowIfNull(set);
        var (from, until) = plan.Range(Study.Candidates);
        return new StudyShard(StudyShard.CurrentSchema, set.Program, set.Recipe, Study.Name, Today, plan.Number, plan.Of, from, until, next, Tally.ToRecord()).Write();
    }

    /// <summary>Writes what came of it in one of the <see cref="Formats"/>; null for a picture of a study that has none.</summary>
    /// <exception cref="ArgumentException">There is no such format.</exception>
    public string? Write(string format) => format switch
    {
        "text" => StudyReport.AsText(Result()),
        "md" => StudyReport.AsMarkdown(Result()),
        "html" => StudyReport.AsHtml(Result()),
        "csv" => StudyReport.AsCsv(Result()),
        "json" => StudyReport.AsJson(Result()),
        "svg" => StudyReport.AsSvg(Result()),
        _ => throw new ArgumentException($"There is no format {format}.", nameof(format)),
    };

    /// <summary>What came of it.</summary>
    internal StudyResult Result()
    {
        var front = Tally.Front.Select(point => point.Index).ToHashSet();
        return new StudyResult(
            Study,
            _file.Bound.Model.Shop,
            _file.Source.Name,
            _file.Revision,
            _planner.Figures,
            _planner.AsWritten,
            Tally.ToRecord(),
            [.. Tally.Front.OrderBy(point => point, ByValues).Select(point => _planner.Look(point.Index))],
            [.. Tally.FrontOfAll.Where(point => !front.Contains(point.Index)).OrderBy(point => point, ByValues).Select(point => new RefusedCandidate(_planner.Look(point.Index), ErrorsOf(point.Index)))])
        {
            ErrorsAsWritten = ErrorsOf(Study.Part!),
            LeftOutOfStiffness = Planner.Plan(Study.Part!, _file.Bound.Model, PlanPieces.Stiffness).Stiffness?.LeftOut ?? [],
        };
    }

    private static Comparer<Engineering.ParetoPoint> ByValues { get; } = Comparer<Engineering.ParetoPoint>.Create((a, b) =>
        a.Values.AsSpan().SequenceCompareTo(b.Values.AsSpan()) is not 0 and var order ? order : a.Index.CompareTo(b.Index));

    private bool[] AreSound(IReadOnlyList<long> indices, ParallelOptions options)
    {
        var sound = new bool[indices.Count];
        Parallel.For(0, sound.Length, options, i => sound[i] = ErrorsOf(indices[i]).IsEmpty);
        return sound;
    }

    private ImmutableArray<string> ErrorsOf(long index) => ErrorsOf(Study.PartOf(Study.OptionsOf(index)));

    // Heard with the reasons written in the recipe, as the part itself would be.
    private ImmutableArray<string> ErrorsOf(Part part)
    {
        var report = _examiner.Conclude([_examiner.Examine(Planner.Plan(part, _file.Bound.Model))]);
        return [.. report.Findings.Where(finding => finding.Severity == Severity.Error).Select(finding => finding.Descriptor.Code).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }
}
