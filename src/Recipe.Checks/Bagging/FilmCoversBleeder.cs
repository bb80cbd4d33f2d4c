using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The solid film over the bleeder is as large as the bleeder.</summary>
public sealed class FilmCoversBleeder : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5110",
        Name = "film-covers-bleeder",
        Severity = Severity.Warning,
        Title = "Solid film as large as the bleeder",
        Reason = "Film and bag shut the bleeder off all round, and the air in it finds no way to the breather.",
        Remedy = "Cut the solid film 25 mm smaller than the bleeder all round, so that bleeder and breather touch at the edge.",
        Source = "FAA AC 43.13-1B (1998) paragraph 3-4, p. 3-7: parting film cut 1 inch smaller than the bleeder",
        Exceptions = """
            Speaks of a film without holes that lies straight on a bleeder and under a breather, and only where its size is written (`beyond`
            or `smaller`).
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film perforated
                bleeder beyond 40 mm
                release-film solid beyond 40 mm
                breather beyond 40 mm
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
              bag {
                peel-ply
                release-film perforated
                bleeder beyond 40 mm
                release-film solid smaller 25 mm
                breather beyond 40 mm
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
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where, AllOfTheLine: true) : null;

    private const double Rounding = 1e-6;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Bag is not { } bag || BagOrder.IsUpsideDown(context.Part))
        {
            return;
        }

        for (var i = 1; i < bag.Layers.Length - 1; i++)
        {
            var (under, film) = (bag.Layers[i - 1], bag.Layers[i]);
            if (film.Layer is not { Class: LayerClass.ReleaseFilm, Perforation: { Value: Perforation.None } holes }
                || under.Layer.Class != LayerClass.Bleeder
                || (film.Layer.Smaller is null && film.Layer.Beyond is null)
                || film.Length.Value.Meters < under.Length.Value.Meters - Rounding
                || film.Width.Value.Meters < under.Width.Value.Meters - Rounding
                || !bag.Layers.Skip(i + 1).Any(l => l.Layer.Class == LayerClass.Breather))
            {
                continue;
            }

            context.Report(
                film.Layer.Where,
                $"{film.Layer.Material.Name} has no holes and is {Say.Of(film.Length.Value)} long; the bleeder under it is {Say.Of(under.Length.Value)} long, and 25 mm less all round leave the air a way out",
                Grounds.Sure.And($"perforation of {film.Layer.Material.Name}", holes),
                [new FindingLabel(under.Layer.Where, "bleeder here")],
                [new Fix(
                    "Cut it 25 mm smaller",
                    FixSafety.NeedsALook,
                    LayerLines.End(film.Layer, "smaller 25 mm"))]);
            return;
        }
    }
}
