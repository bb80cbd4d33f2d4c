using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The lay-up starts on a release film that is still wet.</summary>
public sealed class FilmNotDry : Check
{
    private const double DampAir = 0.70;
    private static readonly Duration Usual = Duration.FromMinutes(30);
    private static readonly Duration NeverLess = Duration.FromMinutes(10);
    private static readonly Temperature Cool = Temperature.FromDegreesCelsius(15);

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2004",
        Name = "film-not-dry",
        Severity = Severity.Error,
        Title = "Release film not dry before the lay-up",
        Reason = "A wet film dissolves or tears under the first brush stroke, and where it tears the part bonds.",
        Remedy = "Leave the film 30 to 60 minutes, twice that in cold or damp air, until it is dry to the touch in every hollow.",
        Source = "common practice (30 min a film); limits of 10 and 30 min from memory of the trade",
        Exceptions = """
            An error below 10 minutes, a warning up to 30 (60 in a room below 15 degC or damper than 70 %). A film declared with a shorter
            `dry` sets its own limit; dry it with warm air and say so with `accept`.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 3 wait 30 min
                pva-film coats 1 dry 5 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 3 wait 30 min
                pva-film coats 1 dry 60 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { } mould || !context.Part.IsWetted())
        {
            return;
        }

        foreach (var film in mould.Faces().Select(face => face.Release.LastOrDefault(r => r.Agent.Kind == ReleaseKind.LiquidFilm)).OfType<ReleaseCoat>())
        {
            if ((film.Dry ?? film.Wait) is not { } dry)
            {
                context.NotChecked($"no drying time is known for {film.Agent.Name}", film.Where);
            }
            else if (Examine(context, film, dry))
            {
                return;
            }
        }
    }

    // Whether it is still wet. The wait after a single coat is its drying time: nothing else follows but the lay-up.
    private static bool Examine(CheckContext context, ReleaseCoat film, Figure<Duration> dry)
    {
        var room = context.Plan.Conditions.Room;
        var humidity = context.Part.WetOut?.Humidity ?? context.Plan.Shop?.Humidity;
        var slow = room.Value < Cool || humidity is { Value: > DampAir };
        var usual = slow ? Usual * 2 : Usual;
        var makers = film.Agent.Dry is { IsAssumed: false } own ? own.Value : usual;
        var limit = makers < usual ? makers : usual;
        if (dry.Value >= limit)
        {
            return false;
        }

        var why = !slow ? "" : room.Value < Cool ? $" at {Say.Of(room.Value)}" : $" in air of {Say.Percent(humidity!.Value)} humidity";
        context.Report(
            film.Where,
            $"{film.Agent.Name} is given {Say.Of(dry)} to dry before the lay-up and wants {Say.Of(limit)}{why}",
            Grounds.Sure.And($"drying time of {film.Agent.Name}", dry).And<Temperature>(slow ? room : null),
            fixes: [Edits.Fix($"Let it dry {Say.Of(Usual * 2)}", FixSafety.Safe, FigureEdits.Rewrite(dry, Say.Of(Usual * 2)))],
            severity: dry.Value < NeverLess ? Severity.Error : Severity.Warning);
        return true;
    }
}
