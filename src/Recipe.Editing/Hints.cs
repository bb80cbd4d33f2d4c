using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Editing;

/// <summary>Computed figures beside the lines that cause them.</summary>
public static class Hints
{
    /// <summary>The figures for the lines that a span touches, in the order of the text.</summary>
    /// <param name="file">The file.</param>
    /// <param name="range">The span; lines outside it are left out.</param>
    /// <param name="wanted">What is switched on.</param>
    public static ImmutableArray<Hint> Of(CompiledFile file, TextSpan range, IReadOnlySet<HintTopic> wanted)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(wanted);
        var hints = new List<Hint>();
        foreach (var plan in file.Parts.Where(part => part.MayStandIn(range)).Select(part => part.Plan))
        {
            foreach (var hint in Plies(plan).Concat(Clock(plan)).Concat(Pots(plan)).Concat(Vacuum(plan)).Concat(Cure(plan)))
            {
                // A variant shares lines with the part it comes from; the figure beside them is that part's.
                if (hint is var (where, made) && ReferenceEquals(where.Source, file.Source) && wanted.Contains(made.Topic)
                    && made.Offset >= range.Start && made.Offset <= range.End && hints.TrueForAll(h => h.Offset != made.Offset || h.Topic != made.Topic))
                {
                    hints.Add(made);
                }
            }
        }

        return [.. hints.OrderBy(hint => hint.Offset).ThenBy(hint => hint.Topic)];
    }

    private static IEnumerable<(SourceSpan Where, Hint Hint)> Plies(Plan plan)
    {
        var total = Length.Zero;
        var known = true;
        foreach (var line in plan.Stack)
        {
            if (line.Thickness is { } thickness && line.Item is not InsertItem)
            {
                var isPiece = line.Item is { SizeLength: not null } or { CoversShare: not null } or { CoversArea: not null } or PlyItem { Step: not null };
                total += isPiece ? Length.Zero : thickness.Value;
                var text = isPiece || !known ? Say.Of(thickness.Value) : $"{Say.Of(thickness.Value)}, {Say.Of(total)} so far";
                yield return Beside(line.Item.Where, text, "Cured thickness of this line, and of the stack from the mould to here." + Assumed(thickness.IsAssumed), HintTopic.Thickness);
            }
            else if (line.Item is PlyItem)
            {
                known = false;
            }

            // Nothing is laid by hand in an infusion or with prepreg; the pieces hold their resin all the same.
            if ((line.LaidResin ?? line.CutResin) is { } resin)
            {
                var what = line.LaidResin is not null ? "Resin to lay on the cut pieces, all sides and repeats."
                    : plan.Part.Process.Value == Process.Prepreg ? "Resin that the cut pieces bring with them, all sides and repeats."
                    : "Resin that the cut pieces draw in, all sides and repeats; mesh, hoses and reserve take more.";
                yield return Beside(line.Item.Where, $"{Say.Of(resin.Value)} resin", what + Assumed(resin.IsAssumed), HintTopic.Resin);
            }
        }
    }

    private static IEnumerable<(SourceSpan Where, Hint Hint)> Clock(Plan plan)
    {
        if (plan.Part.WetOut is not { } wetOut || plan.Clock is not { } clock)
        {
            yield break;
        }

        var life = clock.FilmLife is { } film ? $" of {Say.Of(WholeMinutes.OfLimit(film.Value))}" : "";
        yield return Beside(
            wetOut.Where,
            $"first mix to full vacuum {Say.Of(WholeMinutes.OfNeed(clock.Need.Value))}{life}",
            $"Laying {Say.Of(clock.WetOut.Value)}, bagging {Say.Of(clock.Bagging.Value)}, drawing down {Say.Of(clock.DrawDown.Value)}; the life is that of the resin on the part."
            + Assumed(clock.Need.IsAssumed),
            HintTopic.Clock);
    }

    private static IEnumerable<(SourceSpan Where, Hint Hint)> Pots(Plan plan)
    {
        var stated = plan.Part.WetOut?.PotMasses ?? [];
        for (var i = 0; i < stated.Length && i < plan.Pots.Length; i++)
        {
            var pot = plan.Pots[i];
            if (stated[i].Where is not { } where)
            {
                continue;
            }

            var dead = pot.DeadAt is { } at ? $", dead at {Say.Of(WholeMinutes.OfLimit(at.Value))}" : "";
            var parts = pot is { Resin: { } resin, Hardener: { } hardener } ? $"{Say.Of(resin.Value)} + {Say.Of(hardener.Value)}, " : "";
            yield return Beside(
                where,
                $"{parts}mixed at {Say.Of(pot.MixedAt.Value)}, used up by {Say.Of(WholeMinutes.OfNeed(pot.UsedUpAt.Value))}{dead}",
                "Resin and hardener by weight; times count from the first mix." + Assumed(pot.UsedUpAt.IsAssumed),
                HintTopic.Clock);
        }
    }

    private static IEnumerable<(SourceSpan Where, Hint Hint)> Vacuum(Plan plan)
    {
        if (plan.Part.Vacuum?.Draw?.Where is { } draw && plan.Vacuum is { } levels)
        {
            yield return Beside(
                draw,
                $"{Say.Of(levels.Absolute.Value)} absolute",
                $"Pressure left in the bag; the air outside is {Say.Of(plan.Conditions.Ambient.Value)} at {Say.Of(plan.Conditions.Altitude.Value)} above the sea." + Assumed(levels.Absolute.IsAssumed),
                HintTopic.Pressure);
        }
    }

    private static IEnumerable<(SourceSpan Where, Hint Hint)> Cure(Plan plan)
    {
        if (plan.Cure is not { } cure)
        {
            yield break;
        }

        var degrees = cure.Progress?.StepDegrees ?? [];
        for (var i = 0; i < cure.Steps.Length; i++)
        {
            var step = cure.Steps[i];
            if (step.End.Value <= step.Start.Value)
            {
                continue;
            }

            var gel = cure.Progress?.Gel is { } at && at.Value > step.Start.Value && at.Value <= step.End.Value ? $", gels at {Say.Of(at.Value)}" : "";
            var degree = i < degrees.Length ? $", cured {Say.Percent(Math.Round(degrees[i].Value, 2))}" : "";
            yield return Beside(
                step.Step.Where,
                $"to {Say.Of(step.End.Value)}{gel}{degree}",
                "Hours from the start of the cure, and what a cure model makes of it; the data sheet and the witness cup win." + Assumed(step.End.IsAssumed || cure.Progress?.Degree.IsAssumed == true),
                HintTopic.Cure);
        }
    }

    private static (SourceSpan Where, Hint Hint) Beside(SourceSpan where, string text, string tooltip, HintTopic topic) =>
        (where, new Hint(where.Span.End, text, tooltip, topic));

    private static string Assumed(bool assumed) => assumed ? " Rests on an assumed figure: `explain` and the papers list it." : "";
}
