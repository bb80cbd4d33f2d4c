using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Examines the parts of one file one by one, and says what all of it comes to. Parts may be examined side by side.</summary>
public sealed class Examiner
{
    private readonly RecipeModel _model;
    private readonly DateOnly? _today;
    private readonly IReadOnlyList<Check> _checks;
    private readonly HeldSeverities _held;
    private readonly Misread _misread;

    /// <summary>Prepares to examine the parts of a file. The parameters are those of <see cref="CheckRunner"/>.</summary>
    public Examiner(
        RecipeModel model, DateOnly? today, IReadOnlyList<Check>? checks = null, IReadOnlyList<Finding>? earlier = null, IReadOnlyList<SeveritySetting>? settings = null)
    {
        ArgumentNullException.ThrowIfNull(model);
        _model = model;
        _today = today;
        _checks = checks ?? CheckCatalogue.All;
        _held = new HeldSeverities([.. model.Settings, .. settings ?? []]);
        _misread = new Misread(earlier ?? []);
    }

    /// <summary>What the checks say of one part, before any reason is heard.</summary>
    public PartExamination Examine(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var raised = ImmutableArray.CreateBuilder<Raised>();
        var unspoken = ImmutableArray.CreateBuilder<NotChecked>();
        foreach (var check in _checks.Where(c => c is not (WaiverCheck or ElsewhereCheck)))
        {
            var context = new CheckContext(check, plan, _model, _today) { Held = _held.Of(check) };
            if (check.Reads(plan.Part) is { } lines && _misread.HasOne(lines))
            {
                context.NotChecked($"a line of {lines.Head.Text} is not understood", lines.Head);
            }
            else
            {
                check.Examine(context);
            }

            foreach (var finding in context.Findings)
            {
                raised.Add(new(check, finding));
            }

            if (context.NotCheckedNote is { } note)
            {
                unspoken.Add(note);
            }
        }

        return new PartExamination(plan.Part, raised.ToImmutable(), unspoken.ToImmutable());
    }

    /// <summary>What the examinations of the parts of a file come to when the reasons written in it are heard.</summary>
    /// <param name="parts">The examinations, in the order of the file.</param>
    /// <param name="builds">The build records of the file; when not given, those of its model.</param>
    /// <param name="logs">All records of those parts, in this file and beside it; when not given, those of the file.</param>
    /// <param name="rules">The rules of the house that the file declares.</param>
    /// <param name="coded">What keeps rules in C# that the file names from being run.</param>
    public CheckReport Conclude(
        IReadOnlyList<PartExamination> parts,
        IReadOnlyList<LoggedBuild>? builds = null,
        IReadOnlyList<BuildLog>? logs = null,
        IReadOnlyList<JudgedRule>? rules = null,
        IReadOnlyList<CodedRuleNote>? coded = null)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var waivers = new WaiverBook([.. parts.Select(p => p.Part)], _model, _today, _checks);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var accepted = ImmutableArray.CreateBuilder<Finding>();
        var waiting = ImmutableArray.CreateBuilder<NotChecked>();
        foreach (var part in parts)
        {
            var open = new List<Raised>();
            foreach (var (check, finding) in part.Raised)
            {
                var because = waivers.ReasonToAccept(part.Part, check, finding.Descriptor);
                if (because is null)
                {
                    open.Add(new(check, finding));
                }
                else
                {
                    accepted.Add(finding with { AcceptedBecause = because });
                }
            }

            // A slip from which all else follows is the one thing to say; what follows is only counted.
            // Where a shop holds the slip to be milder than an error, nothing stops the papers, and so nothing may wait.
            var said = open.FindIndex(raised => raised.Check.SettlesFirst && raised.Finding.Severity == Severity.Error) is var slip && slip < 0
                ? open
                : open.FindAll(raised => raised.Check.SettlesFirst || raised.Check.IsSafety);
            findings.AddRange(said.Select(raised => raised.Finding));
            if (said.Count < open.Count)
            {
                waiting.Add(new NotChecked(open[slip].Finding.Descriptor, open[slip].Finding.Where, $"what else is found of {part.Part.Name}, {Say.Number(open.Count - said.Count)} in all, waits until this is settled"));
            }

            foreach (var note in part.Unspoken)
            {
                waivers.CouldNotCheck(note.Descriptor);
            }
        }

        builds ??= LoggedBuild.Of(_model, _ => null);
        foreach (var (check, finding) in ExamineRecords(builds, logs ?? BuildLog.Of(builds)))
        {
            var because = waivers.ReasonToAccept(null, check, finding.Descriptor);
            (because is null ? findings : accepted).Add(because is null ? finding : finding with { AcceptedBecause = because });
        }

        if (parts.Count > 0)
        {
            findings.AddRange(ExamineWaivers(waivers));
        }

        findings.AddRange(ExamineSettings());
        findings.AddRange(ExamineRules(rules ?? [], coded ?? []));
        return new CheckReport(
            [.. Once(findings).Select(InAuthorUnits)],
            [.. Once(accepted).Select(InAuthorUnits)],
            [
                .. parts.SelectMany(p => p.Unspoken)
                    .Concat(waiting)
                    .Distinct()
                    .OrderBy(n => n.Descriptor.Code, StringComparer.Ordinal)
                    .ThenBy(n => n.Missing, StringComparer.Ordinal),
            ]);
    }

    private IEnumerable<Raised> ExamineRecords(IReadOnlyList<LoggedBuild> builds, IReadOnlyList<BuildLog> logs)
    {
        foreach (var build in builds)
        {
            var log = logs.First(log => log.Part == build.Record.Part);
            foreach (var check in _checks.OfType<RecordCheck>())
            {
                var context = new CheckContext(check, null, _model, _today) { Held = _held.Of(check) };
                check.Examine(context, build, log);
                foreach (var finding in context.Findings)
                {
                    yield return new Raised(check, finding);
                }
            }
        }
    }

    private IEnumerable<Finding> ExamineWaivers(WaiverBook waivers)
    {
        var uses = waivers.Uses();
        foreach (var check in _checks.OfType<WaiverCheck>())
        {
            var context = new CheckContext(check, null, _model, _today) { Waivers = uses };
            check.Examine(context);
            foreach (var finding in context.Findings)
            {
                yield return finding;
            }
        }
    }

    private IEnumerable<Finding> ExamineSettings()
    {
        foreach (var check in _checks.OfType<SettingCheck>())
        {
            var context = new CheckContext(check, null, _model, _today);
            foreach (var setting in _model.Settings)
            {
                check.Examine(context, setting, _checks.FirstOrDefault(c => HeldSeverities.Names(setting, c.Descriptor)));
            }

            foreach (var finding in context.Findings)
            {
                yield return finding;
            }
        }
    }

    private IEnumerable<Finding> ExamineRules(IReadOnlyList<JudgedRule> rules, IReadOnlyList<CodedRuleNote> coded)
    {
        foreach (var check in coded.Count == 0 ? [] : _checks.OfType<CodedRuleFileCheck>())
        {
            var context = new CheckContext(check, null, _model, _today) { Held = _held.Of(check) };
            foreach (var note in coded)
            {
                check.Examine(context, note);
            }

            foreach (var finding in context.Findings)
            {
                yield return finding;
            }
        }

        foreach (var rule in rules)
        {
            foreach (var check in _checks.OfType<RuleFileCheck>())
            {
                var context = new CheckContext(check, null, _model, _today) { Held = _held.Of(check) };
                check.Examine(context, rule);
                foreach (var finding in context.Findings)
                {
                    yield return finding;
                }
            }
        }
    }

    // Last, since what the rest of the file measures in may change while the examination of a part is kept.
    private Finding InAuthorUnits(Finding finding) =>
        finding.Fixes.IsEmpty ? finding : finding with { Fixes = [.. finding.Fixes.Select(fix => AuthorUnits.Apply(fix, _model.Shop))] };

    private static IEnumerable<Finding> Once(IEnumerable<Finding> findings) => findings
        .DistinctBy(f => (f.Descriptor.Code, f.Where, f.Message))
        .Order(Comparer<Finding>.Create(Finding.Compare));
}
