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
            Speaks of a film without holes that lies straight on a bleeder and under a breather.
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
                bleeder
                release-film solid
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
              bag {
                peel-ply
                release-film perforated
                bleeder
                release-film solid smaller 25 mm
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
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { } bag || BagOrder.IsUpsideDown(context.Part))
        {
            return;
        }

        for (var i = 1; i < bag.Layers.Length - 1; i++)
        {
            var (under, film) = (bag.Layers[i - 1], bag.Layers[i]);
            if (film is { Class: LayerClass.ReleaseFilm, Perforation: { Value: Perforation.None } holes }
                && under.Class == LayerClass.Bleeder
                && film.Smaller is not { Value.Meters: > 0 }
                && !(under.Beyond is { } wide && film.Beyond is { } narrow && narrow.Value < wide.Value)
                && bag.Layers.Skip(i + 1).Any(l => l.Class == LayerClass.Breather))
            {
                context.Report(
                    film.Where,
                    $"{film.Material.Name} has no holes and is as large as the bleeder under it; 25 mm smaller leaves the air a way out",
                    Grounds.Sure.And($"perforation of {film.Material.Name}", holes),
                    [new FindingLabel(under.Where, "bleeder here")],
                    [new Fix("Cut it 25 mm smaller", FixSafety.NeedsALook,
                        Edits.Rewrite(film.Smaller, "25 mm") ?? Edits.Append(film.Where, "smaller 25 mm"))]);
                return;
            }
        }
    }
}
