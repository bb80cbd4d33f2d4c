using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>How long resin on the part still flows: its film life, or 0.7 of its gel time when that is over sooner.</summary>
/// <param name="Allows">The time.</param>
/// <param name="Words">What ends then, in words that a time can follow: "the film lives".</param>
/// <param name="Grounds">What it rests on.</param>
internal sealed record FilmClock(Duration Allows, string Words, Grounds Grounds)
{
    private const double ShareOfGel = 0.7;

    /// <summary>The clock of a resin in a room; null when neither figure is known.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="filmLife">Its film life in that room, when the plan knows it.</param>
    /// <param name="room">The room.</param>
    public static FilmClock? Of(ResinSystem resin, Computed<Duration>? filmLife, Temperature room)
    {
        var film = filmLife is { } life
            ? new FilmClock(life.Value, "the film lives", Grounds.Sure.And(filmLife))
            : resin.FilmLife is { } sheet
                ? new FilmClock(Carried(sheet.Value, room), "the film lives", On("film life", resin, sheet, room))
                : null;
        var gel = resin.GelTime is { } time
            ? new FilmClock(Carried(time.Value, room) * ShareOfGel, "0.7 of the gel time is", On("gel time", resin, time, room))
            : null;
        return film is null || (gel is not null && gel.Allows < film.Allows) ? gel ?? film : film;
    }

    // As the plan carries a film life, with what is said of heat; beyond the range of that rule the doubling alone.
    private static Duration Carried(TimeAt time, Temperature room) =>
        time.Time > Duration.Zero && IsInRange(time.At) && IsInRange(room) ? PotLife.InFilm(time.Time, time.At, room).Life : time.AtTemperature(room);

    private static bool IsInRange(Temperature temperature) => temperature >= PotLife.LowestTemperature && temperature <= PotLife.HighestTemperature;

    private static Grounds On(string what, ResinSystem resin, Figure<TimeAt> time, Temperature room)
    {
        const double sameTemperature = 0.5;
        var grounds = Grounds.Sure.And($"{what} of {resin.Name}", time);
        return Math.Abs(time.Value.At.Kelvins - room.Kelvins) <= sameTemperature
            ? grounds
            : grounds.AndThat($"{what} halves for each 10 degC warmer");
    }
}
