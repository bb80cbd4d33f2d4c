using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Runs the checks and lets written reasons have their say.</summary>
public static class CheckRunner
{
    /// <summary>Examines one part. See <see cref="Run(IReadOnlyList{Plan}, RecipeModel, DateOnly?, IReadOnlyList{Check}?, IReadOnlyList{Finding}?, IReadOnlyList{SeveritySetting}?)"/>.</summary>
    public static CheckReport Run(Plan plan, RecipeModel model, DateOnly? today) => Run([plan], model, today);

    /// <summary>
    /// Examines the parts of a file together, so that a waiver at the top of the file is called unused only when no part needs it,
    /// and what two parts share (a mould) is reported once.
    /// </summary>
    /// <param name="plans">The plans, in the order of the file.</param>
    /// <param name="model">What the file means.</param>
    /// <param name="today">The day, for waivers and shelf life; null leaves both out.</param>
    /// <param name="checks">The checks to run; all of the catalogue when not given. Checks of a house join the list here.</param>
    /// <param name="earlier">
    /// What the stages before found, so that a misspelt line is not reported as a missing one too. See <see cref="Check.Reads"/>.
    /// </param>
    /// <param name="settings">
    /// How bad the shop holds findings to be, the first word on each counting; those of the file itself go before them.
    /// </param>
    public static CheckReport Run(
        IReadOnlyList<Plan> plans,
        RecipeModel model,
        DateOnly? today,
        IReadOnlyList<Check>? checks = null,
        IReadOnlyList<Finding>? earlier = null,
        IReadOnlyList<SeveritySetting>? settings = null)
    {
        ArgumentNullException.ThrowIfNull(plans);
        ArgumentNullException.ThrowIfNull(model);
        IReadOnlyList<Check> all = checks ?? CheckCatalogue.All;
        var waivers = new WaiverBook(plans, model, today, all);
        var held = new HeldSeverities([.. model.Settings, .. settings ?? []]);
        var misread = new Misread(earlier ?? []);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var accepted = ImmutableArray.CreateBuilder<Finding>();
        var notChecked = ImmutableArray.CreateBuilder<NotChecked>();
        foreach (var plan in plans)
        {
            foreach (var check in all.Where(c => c is not (WaiverCheck or SettingCheck)))
            {
                var context = new CheckContext(check, plan, model, today) { Held = held.Of(check) };
                if (check.Reads(plan.Part) is { } lines && misread.HasOne(lines))
                {
                    context.NotChecked($"a line of {lines.Head.Text} is not understood", lines.Head);
                }
                else
                {
                    check.Examine(context);
                }

                foreach (var finding in context.Findings)
                {
                    var because = waivers.ReasonToAccept(plan.Part, check, finding.Descriptor);
                    (because is null ? findings : accepted).Add(finding with { AcceptedBecause = because });
                }

                if (context.NotCheckedNote is { } note)
                {
                    waivers.CouldNotCheck(check.Descriptor);
                    notChecked.Add(note);
                }
            }
        }

        findings.AddRange(ExamineWaivers(plans, model, today, all, waivers));
        findings.AddRange(ExamineSettings(model, today, all));
        return new CheckReport(
            [.. Once(findings)],
            [.. Once(accepted)],
            [
                .. notChecked
                    .Distinct()
                    .OrderBy(n => n.Descriptor.Code, StringComparer.Ordinal)
                    .ThenBy(n => n.Missing, StringComparer.Ordinal),
            ]);
    }

    private static IEnumerable<Finding> ExamineWaivers(
        IReadOnlyList<Plan> plans, RecipeModel model, DateOnly? today, IReadOnlyList<Check> all, WaiverBook waivers)
    {
        if (plans.Count == 0)
        {
            yield break;
        }

        var uses = waivers.Uses();
        foreach (var check in all.OfType<WaiverCheck>())
        {
            var context = new CheckContext(check, plans[0], model, today) { Waivers = uses };
            check.Examine(context);
            foreach (var finding in context.Findings)
            {
                yield return finding;
            }
        }
    }

    private static IEnumerable<Finding> ExamineSettings(RecipeModel model, DateOnly? today, IReadOnlyList<Check> all)
    {
        foreach (var check in all.OfType<SettingCheck>())
        {
            var context = new CheckContext(check, null, model, today);
            foreach (var setting in model.Settings)
            {
                check.Examine(context, setting, all.FirstOrDefault(c => HeldSeverities.Names(setting, c.Descriptor)));
            }

            foreach (var finding in context.Findings)
            {
                yield return finding;
            }
        }
    }

    private static IEnumerable<Finding> Once(IEnumerable<Finding> findings) => findings
        .DistinctBy(f => (f.Descriptor.Code, f.Where, f.Message))
        .Order(Comparer<Finding>.Create(Finding.Compare));
}
