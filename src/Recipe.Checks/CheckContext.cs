using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>What a check sees, and where it says what it found.</summary>
public sealed class CheckContext
{
    private readonly Check _check;
    private readonly ImmutableArray<Finding>.Builder _findings = ImmutableArray.CreateBuilder<Finding>();
    private readonly Plan? _plan;
    private NotChecked? _notChecked;

    internal CheckContext(Check check, Plan? plan, RecipeModel model, DateOnly? today)
    {
        _check = check;
        _plan = plan;
        Model = model;
        Today = today;
    }

    /// <summary>The part looked at.</summary>
    public Part Part => Plan.Part;

    /// <summary>Everything that follows from it.</summary>
    public Plan Plan => _plan ?? throw new InvalidOperationException("A check of settings looks at no part.");

    /// <summary>Everything in scope.</summary>
    public RecipeModel Model { get; }

    /// <summary>The day of the run, or null when it was not given.</summary>
    public DateOnly? Today { get; }

    /// <summary>What became of each waiver; empty until all other checks have spoken.</summary>
    internal ImmutableArray<WaiverUse> Waivers { get; init; } = [];

    /// <summary>How bad the shop holds what this check finds; null when it says nothing.</summary>
    internal Severity? Held { get; init; }

    internal IEnumerable<Finding> Findings => _findings;

    internal NotChecked? NotCheckedNote => _findings.Count == 0 ? _notChecked : null;

    /// <summary>Reports something wrong.</summary>
    /// <param name="where">The place the caret points at.</param>
    /// <param name="message">The facts in one sentence as it would be read aloud: the number compared, then what it is compared with; no full stop.</param>
    /// <param name="restsOn">
    /// The figures it rests on. When one of them is assumed, the finding is at most a warning and its message names what is assumed.
    /// </param>
    /// <param name="labels">Other places of the story.</param>
    /// <param name="fixes">What could be changed, best first; nulls are dropped. Figures in metric units come out in those of the author.</param>
    /// <param name="severity">Another severity than the descriptor's, where the check knows a milder or a worse case.</param>
    public void Report(
        SourceSpan where,
        string message,
        Grounds? restsOn = null,
        IEnumerable<FindingLabel>? labels = null,
        IEnumerable<Fix?>? fixes = null,
        Severity? severity = null)
    {
        var grounds = restsOn ?? Grounds.Sure;
        var wanted = Held ?? severity ?? _check.Descriptor.Severity;
        var assumed = grounds.Describe(_plan?.Assumptions ?? []);
        _findings.Add(new Finding(
            _check.Descriptor,
            grounds.IsAssumed && wanted == Severity.Error ? Severity.Warning : wanted,
            where,
            assumed.Length == 0 ? message : $"{message} (assumed: {assumed})")
        {
            Labels = labels is null ? [] : [.. labels],
            Fixes = fixes is null ? [] : [.. fixes.OfType<Fix>()],
        });
    }

    /// <summary>
    /// Whether a ply of the part could not be understood, which is noted: for a check that judges what all plies together are, and would judge
    /// another part without that one.
    /// </summary>
    public bool MissesAPly()
    {
        if (Part.UnreadPlies.IsEmpty)
        {
            return false;
        }

        NotChecked($"ply {Part.UnreadPlies[0]} could not be read", Part.StackWhere);
        return true;
    }

    /// <summary>
    /// Says that the check cannot speak, and what it misses. Counted once for the part, and not at all when the check does find something.
    /// </summary>
    /// <param name="missing">What is missing, in words: "no pot life given for my-epoxy".</param>
    /// <param name="where">The place it would have looked at; the part's name when not given.</param>
    public void NotChecked(string missing, SourceSpan? where = null) =>
        _notChecked ??= new NotChecked(_check.Descriptor, where ?? Part.Where, missing);
}
