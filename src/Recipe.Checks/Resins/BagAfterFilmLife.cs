using System.Globalization;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The bag is at full vacuum when the first resin no longer flows.</summary>
public sealed class BagAfterFilmLife : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4003",
        Name = "bag-after-film-life",
        Severity = Severity.Error,
        Title = "Bag closed after the resin stopped flowing",
        Reason = "Resin that no longer flows does not bleed and does not fill: the bag only prints itself into it.",
        Remedy = "Take a slower hardener, more hands, or lay the plies in two goes with a peel ply between.",
        Source =
            "US Army TM 1-1500-204-23-11 (page file 0169): pressure within the working life; 0.7 of the gel time is common "
            + "practice",
        Exceptions = """
            Speaks of a wet lay-up under a bag: a hand lay-up has no bag to close, an infusion and prepreg have other clocks.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin fast-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 25 degC
                laminators 1
                pace 90 min/m2
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 20 degC
                laminators 2
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value != Process.Bagged || part.Resin is not { } resin || context.Plan.Clock is not { } clock)
        {
            return;
        }

        var room = context.Plan.Conditions.Film ?? context.Plan.Conditions.Room;
        if (FilmClock.Of(resin, clock.FilmLife, room.Value) is not { } film)
        {
            context.NotChecked($"no film life and no gel time is given for {resin.Name}", part.ResinWhere);
            return;
        }

        if (clock.Need.Value <= film.Allows)
        {
            return;
        }

        context.Report(
            part.WetOut?.Where ?? part.Bag?.Where ?? part.Where,
            $"first mix to full vacuum takes {Say.Of(clock.Need.Value)}; {film.Words} {Say.Of(film.Allows)} at {Say.Of(room.Value, context.Plan.RoomWritten())}",
            film.Grounds.And<Duration>(clock.Need).And<Temperature>(room),
            Story(part),
            [MoreHands(part, clock, context.Plan.Conditions.Laminators.Value, film.Allows)]);
    }

    private static IEnumerable<FindingLabel> Story(Part part)
    {
        if (part.ResinWhere is { } mixed)
        {
            yield return new FindingLabel(mixed, "resin mixed for this");
        }

        if (part.Bag is { } bag && part.WetOut is not null)
        {
            yield return new FindingLabel(bag.Where, "bag closed over it");
        }
    }

    private static Fix? MoreHands(Part part, ClockPlan clock, int now, Duration allowed)
    {
        for (var hands = now + 1; hands <= WetOutWords.MostHands; hands++)
        {
            var need = (clock.WetOut.Value * now / hands) + clock.Bagging.Value + clock.DrawDown.Value;
            if (need <= allowed)
            {
                return Edits.Fix(
                    $"Take {hands} pairs of hands",
                    FixSafety.NeedsALook,
                    WetOutWords.Set(part, "laminators", part.WetOut?.Laminators, hands.ToString(CultureInfo.InvariantCulture)));
            }
        }

        return null;
    }
}
