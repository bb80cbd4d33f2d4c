using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.LayUps;

/// <summary>When each line of the stack lies, from the first mix.</summary>
internal static class PlyMinutes
{
    /// <summary>
    /// When a line is wetted out: the end of the last pot it takes, less what that pot still wets out after it. A later line that goes on into the next pot
    /// counts as none of it, so that the time is late rather than early. Null where no pot or no pace is known.
    /// </summary>
    public static Duration? Of(Plan plan, StackPlan line)
    {
        if (plan.Pots.LastOrDefault(pot => pot.For.Contains(line.Item.Name)) is not { } last)
        {
            return null;
        }

        var after = Duration.Zero;
        foreach (var later in plan.Stack.SkipWhile(other => !ReferenceEquals(other, line)).Skip(1).Where(other => last.For.Contains(other.Item.Name)))
        {
            if (plan.Pots.Last(pot => pot.For.Contains(later.Item.Name)) != last)
            {
                continue;
            }

            if (later.WetOut is not { } time)
            {
                return null;
            }

            after += time.Value;
        }

        var end = last.UsedUpAt.Value - after;
        return end > last.MixedAt.Value ? end : null;
    }
}
