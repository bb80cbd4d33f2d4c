using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A film without holes keeps the resin from the felt that should take it.</summary>
public sealed class SolidFilmBlocksBleed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5004",
        Name = "solid-film-blocks-bleed",
        Severity = Severity.Warning,
        Title = "Solid film blocks the bleed",
        Reason = "Spare resin and air have no way out upwards: a heavy part with pools and voids.",
        Remedy = "Take a perforated film, or no bleeder and a resin content that is right as laid.",
        Source = "US Army TM 1-1500-204-23-11 (page files 0046, 0170): porous film under the bleeder, solid film over it",
        Exceptions = """
            Silent over a bleeder (that is where a solid film belongs), when the film is cut `smaller` so that the edges breathe, without
            a bleeder (then no bleed is wanted), for prepreg, and for an infusion.
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
                release-film solid
                bleeder
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
        var part = context.Part;
        if (part.Bag is not { } bag || part.Process.Value != Process.Bagged || BagOrder.IsUpsideDown(part))
        {
            return;
        }

        var index = bag.Layers.IndexOf(l => l.Class == LayerClass.ReleaseFilm);
        if (index < 0 || bag.Layers.Take(index).Any(l => l.Class is LayerClass.Bleeder or LayerClass.Breather))
        {
            return;
        }

        var film = bag.Layers[index];
        if (film.Perforation is not { } holes)
        {
            context.NotChecked($"nobody says whether {film.Material.Name} is perforated", film.Where);
            return;
        }

        if (holes.Value != Perforation.None || film.Smaller is { Value.Meters: > 0 })
        {
            return;
        }

        if (bag.Layers.Skip(index).FirstOrDefault(l => l.Class == LayerClass.Bleeder) is not { } bleeder)
        {
            return;
        }

        context.Report(
            film.Where,
            $"{film.Material.Name} has no holes and lies under the bleeder, which can take nothing through it",
            Grounds.Sure.And($"perforation of {film.Material.Name}", holes),
            [new FindingLabel(bleeder.Where, "bleeder here")],
            [Perforated(film)]);
    }

    private static Fix Perforated(BagLayer film) => new(
        "Take a perforated film",
        FixSafety.NeedsALook,
        LayerLines.Word(film.Where, "solid") is { } solid
            ? Edits.Replace(solid, "perforated")
            : LayerLines.Take(film.Where, film.Material.Name, "release-film perforated"));
}
