using System.Collections.Immutable;
using Recipe.RuleApi;
using Recipe.RulesProcess.Protocol;

namespace Recipe.RulesHost.Running;

/// <summary>Runs rules on parts, each with a new instance and a new count of steps.</summary>
internal static class RuleRunner
{
    /// <summary>The most findings of one answer.</summary>
    public const int MostFindings = 5_000;

    /// <summary>Runs every rule on every part.</summary>
    public static RuleRunAnswer Run(HostRequest request, ImmutableArray<LoadedRules> files, Action<HostProgress> report)
    {
        RuleRunAnswer? answer = null;
        Guarded.OnSmallStack(() => answer = RunAll(request, files, report));
        return answer!;
    }

    private static RuleRunAnswer RunAll(HostRequest request, ImmutableArray<LoadedRules> files, Action<HostProgress> report)
    {
        var findings = ImmutableArray.CreateBuilder<RuleRunFinding>();
        var missing = ImmutableArray.CreateBuilder<RuleNotChecked>();
        var problems = ImmutableArray.CreateBuilder<RuleProblem>();
        var parts = (request.Parts ?? []).Select(sheet => new PartFacts(sheet)).ToList();
        foreach (var rules in files)
        {
            var file = rules.File;
            for (var i = 0; i < rules.Types.Length; i++)
            {
                var rule = rules.Descriptions[i];
                for (var part = 0; part < parts.Count && !request.Skip.Contains(new SkippedRule(file, rule.Name)); part++)
                {
                    report(new HostProgress(request.Id, file, rule.Name, part));
                    var (found, problem) = RunOne(rules.Types[i], parts[part]);
                    if (problem is { } failed)
                    {
                        problems.Add(new RuleProblem(failed.Kind, file, rule.Name, part, $"rule {rule.Name} {failed.What}."));
                        continue;
                    }

                    var (room, unsaid) = (MostFindings - findings.Count, MostFindings - missing.Count);
                    findings.AddRange(found.Findings.Take(room).Select(one => new RuleRunFinding(file, rule.Name, part, one.Group, one.Index, Severity(one.Severity, rule), one.Message)));
                    missing.AddRange(found.Missing.Take(unsaid).Select(one => new RuleNotChecked(file, rule.Name, part, one)));
                    if (found.Dropped > 0 || found.Findings.Count > room || found.Missing.Count > unsaid)
                    {
                        problems.Add(new RuleProblem(RuleProblemKind.TooMuch, file, rule.Name, part, $"rule {rule.Name} reported more than is kept; only the first are shown."));
                    }
                }
            }
        }

        return new RuleRunAnswer([.. files.SelectMany(one => one.Descriptions)], [], findings.ToImmutable(), missing.ToImmutable(), problems.ToImmutable());
    }

    private static (RuleReport Report, (RuleProblemKind Kind, string What)? Problem) RunOne(Type type, PartFacts part)
    {
        var report = new RuleReport();
        var problem = Guarded.Run(() =>
        {
            var rule = LoadedRules.Make(type);
            if (rule.AppliesTo(part))
            {
                rule.Examine(part, report);
            }
        });
        return (report, problem);
    }

    private static RuleSeverity Severity(RuleSeverity? severity, RuleDescription rule) => severity is { } own && Enum.IsDefined(own) ? own : rule.Severity;
}
