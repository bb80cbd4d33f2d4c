using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Wet halves are closed when their resin no longer flows.</summary>
public sealed class SeamClosedLate : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8002",
        Name = "seam-closed-late",
        Severity = Severity.Error,
        Title = "Seam closed too late for its resin",
        Reason = "The two faces of the seam no longer wet each other, and it parts with a light pull.",
        Remedy = "Take a slower hardener or more hands; wet halves may also be cured and taped.",
        Source = "common practice (closed within 0.7 of the gel time)",
        Exceptions = """
            A wet seam and a taped one are closed with the resin of the part, a bonded one with its `adhesive`. Silent where the `join` says no manner.
            """,
        BadExample = """
            mould tray-mould {
              halves left right
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
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
              wet-out {
                room 20 degC
              }
              join {
                manner wet-in-wet
                overlap 20 mm
                within 8 h
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              halves left right
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
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
              wet-out {
                room 20 degC
              }
              join {
                manner wet-in-wet
                overlap 20 mm
                within 45 min
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    // Times are told to a tenth of a minute.
    private static readonly Duration Rounding = Duration.FromSeconds(6);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Join is not { Manner: { } manner } join)
        {
            return;
        }

        var wet = manner.Value == JoinManner.WetInWet;
        if (!wet && join.Within is null)
        {
            return;
        }

        // Cured halves are bonded with what the join names, and taped with the resin of the part.
        var bonded = manner.Value == JoinManner.CuredThenBonded;
        var (resin, mixedAt) = bonded ? (join.Adhesive, join.AdhesiveWhere) : (context.Part.Resin, context.Part.ResinWhere);
        if (resin is null)
        {
            return;
        }

        if (join.Within is not { } within)
        {
            context.NotChecked("no longest time to the closed mould is given (within)", join.Where);
            return;
        }

        var room = (wet ? context.Plan.Conditions.Film : null) ?? context.Plan.Conditions.Room;
        if (FilmClock.Of(resin, wet ? context.Plan.Clock?.FilmLife : null, room.Value) is not { } film)
        {
            context.NotChecked($"no film life and no gel time is given for {resin.Name}", mixedAt);
            return;
        }

        if (within.Value <= film.Allows + Rounding)
        {
            return;
        }

        context.Report(
            within.Where ?? join.Where,
            $"{(wet ? "the mould may stay open" : "the seam may be closed")} {Say.Of(within)} after the first mix; {film.Words} {Say.Of(film.Allows)} at {Say.Of(room.Value)}",
            film.Grounds.And("longest time to the closed mould", within).And<Temperature>(room),
            mixedAt is { } mixed ? [new FindingLabel(mixed, "resin mixed for this")] : [],
            [Sooner(within, film.Allows)]);
    }

    private static Fix? Sooner(Figure<Duration> within, Duration allowed)
    {
        var minutes = Math.Floor(allowed.Minutes);
        var text = FormattableString.Invariant($"{minutes} min");
        return minutes < 1 ? null : Edits.Fix($"Close it within {text}", FixSafety.NeedsALook, FigureEdits.Rewrite(within, text));
    }
}
