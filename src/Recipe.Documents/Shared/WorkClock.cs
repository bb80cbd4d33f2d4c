using System.Globalization;
using Recipe.Documents.Languages;
using Recipe.Documents.Quantities;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Shared;

/// <summary>
/// The clock of the bench, in minutes after the first mix. The film on the part must still be workable when the bag is at full
/// vacuum, and each pot must be used up within its own pot life.
/// </summary>
internal sealed class WorkClock
{
    private readonly ClockPlan? _clock;
    private readonly TimeOnly? _start;
    private readonly Wording _say;

    public WorkClock(Plan plan, Wording say)
    {
        _say = say;
        _clock = plan.Clock;
        _start = plan.Part.WetOut?.Start?.Value;
        Tightest = plan.Pots.Where(pot => pot.PotLife is not null).OrderBy(pot => MarginOf(pot)!.Value.Seconds).ThenBy(pot => pot.Number).FirstOrDefault();
    }

    /// <summary>First mix to full vacuum.</summary>
    public Duration? Need => _clock?.Need.Value;

    /// <summary>Film life: full vacuum by then.</summary>
    public Duration? FullVacuumBy => _clock?.FilmLife?.Value;

    /// <summary>The pump must run by then to reach full vacuum in time.</summary>
    public Duration? PumpOnBy => FullVacuumBy is { } by ? by - _clock!.DrawDown.Value : null;

    /// <summary>What is left over; negative when the job does not fit.</summary>
    public Duration? Margin => FullVacuumBy is { } by ? by - _clock!.Need.Value : null;

    /// <summary>What is left over in whole minutes, as the difference of the minutes that papers show: of the limit rounded down and the need rounded up.</summary>
    public Duration? MarginInMinutes => FullVacuumBy is { } by ? WholeMinutes.Left(by, _clock!.Need.Value) : null;

    /// <summary>The pot with the least time to spare; null when no pot life is known.</summary>
    public PotPlan? Tightest { get; }

    /// <summary>Whether a planned start is known, so that times of day can be printed.</summary>
    public bool HasStart => _start is not null;

    /// <summary>Time from mixing a pot to its end that its use leaves over; null when no pot life is known.</summary>
    public static Duration? MarginOf(PotPlan pot) => pot.PotLife is { } life ? life.Value - (pot.UsedUpAt.Value - pot.MixedAt.Value) : null;

    /// <summary>What a pot's use leaves over of its life in whole minutes, as the difference of the minutes that papers show.</summary>
    public static Duration? MarginInMinutesOf(PotPlan pot) => pot.PotLife is { } life
        ? WholeMinutes.Left(life.Value, pot.UsedUpAt.Value - pot.MixedAt.Value)
        : null;

    /// <summary>
    /// The time of day at so long after the first mix, when a start is planned; with the days when it is not the same day. It is the
    /// start and the whole minutes that <see cref="Minute"/> shows for the same rounding.
    /// </summary>
    public string? TimeOfDay(Duration afterFirstMix, Rounding rounding = Rounding.Down)
    {
        if (_start is not { } start || !double.IsFinite(afterFirstMix.Minutes) || Math.Abs(afterFirstMix.Days) > 1000)
        {
            return null;
        }

        var at = start.Add(TimeSpan.FromMinutes(Numbers.Snap(afterFirstMix.Minutes, 1, rounding)), out var days);
        var time = at.ToString("HH:mm", CultureInfo.InvariantCulture);
        return days == 0 ? time : $"{time} ({(days > 0 ? "+" : "-")}{Counts.Days(Math.Abs(days), _say)})";
    }

    /// <summary>"minute 104", rounded down: a limit.</summary>
    public static string Minute(Wording say, Duration afterFirstMix, Rounding rounding = Rounding.Down) => say.Say($"minute\u00A0{Numbers.ToStep(afterFirstMix.Minutes, 1, rounding)}");

}
