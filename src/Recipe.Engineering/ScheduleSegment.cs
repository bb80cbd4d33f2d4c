using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One straight piece of a cure schedule.</summary>
/// <param name="Step">The step it comes from.</param>
/// <param name="Start">Its start, counted from the start of the schedule.</param>
/// <param name="Lasts">How long it lasts.</param>
/// <param name="From">Temperature at its start.</param>
/// <param name="To">Temperature at its end.</param>
public sealed record ScheduleSegment(
    ScheduleStep Step, Duration Start, Duration Lasts, Temperature From, Temperature To)
{
    /// <summary>Its end, counted from the start of the schedule.</summary>
    public Duration End => Start + Lasts;
}
