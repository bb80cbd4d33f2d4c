using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Cures;

/// <summary>A moment of the cure that has a mark on the chart.</summary>
/// <param name="At">From the start of the cure.</param>
/// <param name="What">In words, as the list under the chart says it.</param>
internal sealed record CureMark(Duration At, string What);

/// <summary>The moments that somebody waits for, in their order.</summary>
internal static class CureMoments
{
    public static ImmutableArray<CureMark> Of(BenchContext context, CurePlan cure)
    {
        var marks = new List<CureMark>();
        if (VacuumEnds(context, cure) is { } end)
        {
            marks.Add(new(Duration.Zero, context.Say("vacuum on, H5 signed")));
            marks.Add(new(end, context.Say("vacuum off")));
        }

        if (cure.Progress?.Gel is { } gel)
        {
            marks.Add(new(gel.Value, context.Say("gel, by the model")));
        }

        var heats = false;
        foreach (var step in cure.Steps)
        {
            var (from, to) = (context.Text.Temperature(step.From).Main, context.Text.Temperature(step.To).Main);
            switch (step.Step.Action)
            {
                case CureAction.Ramp when step.To > step.From:
                    marks.Add(new(step.Start.Value, heats ? context.Say($"heat on to {to}") : context.Say($"heat on, from {from} to {to}")));
                    heats = true;
                    break;
                case CureAction.Hold when step.End.Value > step.Start.Value:
                    marks.Add(new(step.Start.Value, context.Say($"hold {to} starts")));
                    marks.Add(new(step.End.Value, context.Say($"hold {to} ends")));
                    break;
                case CureAction.Cool or CureAction.Ramp:
                    marks.Add(new(step.Start.Value, context.Say($"cool to {to}")));
                    break;
                case CureAction.Demould:
                    marks.Add(new(step.Start.Value, context.Say("demould, after H7")));
                    break;
                case CureAction.Debag:
                    marks.Add(new(step.Start.Value, context.Say("bag off")));
                    break;
                default:
                    break;
            }
        }

        // What happens at once shares a mark.
        return
        [
            .. marks.Where(mark => mark.At <= cure.Total.Value && mark.At >= Duration.Zero)
                .GroupBy(mark => Math.Round(mark.At.Minutes)).OrderBy(group => group.Key)
                .Select(group => new CureMark(group.First().At, string.Join("; ", group.Select(mark => mark.What).Distinct(StringComparer.Ordinal)))),
        ];
    }

    /// <summary>When the vacuum comes off; null where there is none. It is on from the start: no cure before H5.</summary>
    public static Duration? VacuumEnds(BenchContext context, CurePlan cure) => context.IsBagged ? cure.VacuumOff?.Value : null;
}
