using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A liquid film lies on a porous face with no wax under it.</summary>
public sealed class FilmWithoutWax : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2102",
        Name = "film-without-wax",
        Severity = Severity.Warning,
        Title = "Release film on a porous face without wax",
        Reason = "The film soaks into the pores and keys there: it tears on the pull and takes paint with it.",
        Remedy = "Wax the face three times first, then lay the film.",
        Source = "common practice (three coats of wax under a film on a porous or painted face)",
        Exceptions = """
            Silent on a face that is sealed (`seal-coats`) or whose material is not porous.
            """,
        BadExample = """
            mould-material own-board {
              heat-limit 60 degC
              porous yes
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of own-board
              release {
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
        GoodExample = """
            mould-material own-board {
              heat-limit 60 degC
              porous yes
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of own-board
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
    public override LinesRead? Reads(Part part) => part.ReleaseLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mould is not { MadeOf: { Porous: true } stuff } mould || mould.SealCoats is { Value: > 0 } || !context.Part.IsWetted())
        {
            return;
        }

        foreach (var face in mould.Faces())
        {
            if (face.Release.FirstOrDefault(r => r.Agent.Kind == ReleaseKind.LiquidFilm) is not { } film
                || face.Release.Any(r => r.Agent.Kind is ReleaseKind.Wax or ReleaseKind.SemiPermanent or ReleaseKind.Sheet))
            {
                continue;
            }

            var wax = ReleaseAgents.First(context.Model, ReleaseKind.Wax);
            context.Report(
                film.Where,
                $"{film.Agent.Name} lies straight on {stuff.Name}, which is porous; 3 coats of wax belong under it",
                labels: mould.MadeOfWhere is { } named ? [new FindingLabel(named, "porous")] : [],
                fixes: [wax is null ? null : Edits.Fix($"Lay 3 coats of {wax.Name} first", FixSafety.NeedsALook, Edits.Before(film.Where, $"{wax.Name} coats 3 wait 30 min{film.OnTheSame()}"))]);
            return;
        }
    }
}
