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
        return Conclude([.. plans.Select(plan => Examine(plan, model, today, checks, earlier, settings))], model, today, checks);
    }

    /// <summary>Examines one part without hearing any reason: see <see cref="Conclude"/>. Parts may be examined side by side.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="model">As above; so are the rest.</param>
    /// <param name="today">As above.</param>
    /// <param name="checks">As above.</param>
    /// <param name="earlier">As above.</param>
    /// <param name="settings">As above.</param>
    public static PartExamination Examine(
        Plan plan,
        RecipeModel model,
        DateOnly? today,
        IReadOnlyList<Check>? checks = null,
        IReadOnlyList<Finding>? earlier = null,
        IReadOnlyList<SeveritySetting>? settings = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(model);
        var held = new HeldSeverities([.. model.Settings, .. settings ?? []]);
        var misread = new Misread(earlier ?? []);
        var raised = ImmutableArray.CreateBuilder<Raised>();
        var unspoken = ImmutableArray.CreateBuilder<NotChecked>();
        foreach (var check in (checks ?? CheckCatalogue.All).Where(c => c is not (WaiverCheck or SettingCheck)))
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
    /// <param name="model">What the file means.</param>
    /// <param name="today">As above.</param>
    /// <param name="checks">As above.</param>
    public static CheckReport Conclude(IReadOnlyList<PartExamination> parts, RecipeModel model, DateOnly? today, IReadOnlyList<Check>? checks = null)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(model);
        IReadOnlyList<Check> all = checks ?? CheckCatalogue.All;
        var waivers = new WaiverBook([.. parts.Select(p => p.Part)], model, today, all);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var accepted = ImmutableArray.CreateBuilder<Finding>();
        foreach (var part in parts)
        {
            foreach (var (check, finding) in part.Raised)
            {
                var because = waivers.ReasonToAccept(part.Part, check, finding.Descriptor);
                (because is null ? findings : accepted).Add(because is null ? finding : finding with { AcceptedBecause = because });
            }

            foreach (var note in part.Unspoken)
            {
                waivers.CouldNotCheck(note.Descriptor);
            }
        }

        if (parts.Count > 0)
        {
            findings.AddRange(ExamineWaivers(model, today, all, waivers));
        }

        findings.AddRange(ExamineSettings(model, today, all));
        return new CheckReport(
            [.. Once(findings)],
            [.. Once(accepted)],
            [
                .. parts.SelectMany(p => p.Unspoken)
                    .Distinct()
                    .OrderBy(n => n.Descriptor.Code, StringComparer.Ordinal)
                    .ThenBy(n => n.Missing, StringComparer.Ordinal),
            ]);
    }

    private static IEnumerable<Finding> ExamineWaivers(RecipeModel model, DateOnly? today, IReadOnlyList<Check> all, WaiverBook waivers)
    {
        var uses = waivers.Uses();
        foreach (var check in all.OfType<WaiverCheck>())
        {
            var context = new CheckContext(check, null, model, today) { Waivers = uses };
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
