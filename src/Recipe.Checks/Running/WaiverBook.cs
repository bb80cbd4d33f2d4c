using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The waivers of one run: which of them count, and which were needed.</summary>
internal sealed class WaiverBook
{
    private readonly IReadOnlyList<Part> _parts;
    private readonly RecipeModel _model;
    private readonly DateOnly? _today;
    private readonly Lazy<Dictionary<string, Check>> _checks;
    private readonly HashSet<SourceSpan> _needed = [];
    private readonly HashSet<string> _unseen = new(StringComparer.Ordinal);

    public WaiverBook(IReadOnlyList<Part> parts, RecipeModel model, DateOnly? today, IReadOnlyList<Check> checks)
    {
        _parts = parts;
        _model = model;
        _today = today;
        _checks = new(() => ByCodeAndName(checks));
    }

    // Most files waive nothing and never ask.
    private static Dictionary<string, Check> ByCodeAndName(IReadOnlyList<Check> checks)
    {
        var known = new Dictionary<string, Check>(2 * checks.Count, StringComparer.Ordinal);
        foreach (var check in checks)
        {
            known[check.Descriptor.Code] = check;
            known[check.Descriptor.Name] = check;
        }

        return known;
    }

    /// <summary>The reason why a finding is accepted in this part, the part's own waiver before one of the whole file; or null. What is found in no part, only the file's.</summary>
    public string? ReasonToAccept(Part? part, Check check, FindingDescriptor finding)
    {
        string? because = null;
        foreach (var waiver in (part?.Waivers ?? []).Concat(_model.Waivers).Where(w => Names(w, finding) && Counts(w)))
        {
            _needed.Add(waiver.Where);
            because ??= waiver.Because;
        }

        return check.CanBeAccepted ? because : null;
    }

    /// <summary>Remembers that a check could not look: a waiver for it is then not called unused.</summary>
    public void CouldNotCheck(FindingDescriptor check) => _unseen.Add(check.Code);

    /// <summary>What became of each waiver, in the order of their places.</summary>
    public ImmutableArray<WaiverUse> Uses() =>
    [
        .. _parts.SelectMany(p => p.Waivers)
            .Concat(_model.Waivers)
            .DistinctBy(w => w.Where)
            .OrderBy(w => w.Where.Source.Name, StringComparer.Ordinal)
            .ThenBy(w => w.Where.Span.Start)
            .Select(Judge),
    ];

    private static bool Names(Waiver waiver, FindingDescriptor finding) => waiver.Code == finding.Code || waiver.Code == finding.Name;

    private bool Counts(Waiver waiver) => !string.IsNullOrWhiteSpace(waiver.Because) && !HasLapsed(waiver);

    private bool HasLapsed(Waiver waiver) => _today is { } today && waiver.Until is { } until && today > until;

    private WaiverUse Judge(Waiver waiver)
    {
        if (!_checks.Value.TryGetValue(waiver.Code, out var check))
        {
            return BeyondTheChecks(waiver);
        }

        var fate = !check.CanBeAccepted ? WaiverFate.Refused
            : string.IsNullOrWhiteSpace(waiver.Because) ? WaiverFate.WithoutReason
            : HasLapsed(waiver) ? WaiverFate.Lapsed
            : _needed.Contains(waiver.Where) ? WaiverFate.Used
            : _unseen.Contains(check.Descriptor.Code) || !EveryCarrierWasExamined(waiver) ? WaiverFate.Unknown
            : WaiverFate.Unused;
        return new WaiverUse(waiver, fate, check.Descriptor, []);
    }

    private WaiverUse BeyondTheChecks(Waiver waiver)
    {
        var other = FindingCatalogue.BeforeTheChecks.FirstOrDefault(d => Names(waiver, d));
        return other is not null
            ? new WaiverUse(waiver, WaiverFate.Refused, other, [])
            : new WaiverUse(waiver, WaiverFate.NamesNothing, null, [.. _checks.Value.Where(c => c.Value.CanBeAccepted).Select(c => c.Key)]);
    }

    private bool EveryCarrierWasExamined(Waiver waiver)
    {
        var examined = _parts.Select(p => p.Name).ToHashSet(StringComparer.Ordinal);
        var everyPart = _model.Waivers.Any(w => w.Where == waiver.Where);
        return _model.Parts
            .Where(p => everyPart || p.Waivers.Any(w => w.Where == waiver.Where))
            .All(p => examined.Contains(p.Name));
    }
}
