using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A film without holes lies under the flow medium.</summary>
public sealed class FilmUnderMesh : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6216",
        Name = "film-under-mesh",
        Severity = Severity.Error,
        Title = "Solid film under the flow medium",
        Reason = "The resin runs through the mesh above the film, and none of it reaches the cloth.",
        Remedy = "Take a perforated film there, or none: the peel ply parts mesh and laminate.",
        Source = "common practice",
        Exceptions = """
            Silent for a film with `smaller`, such as a strip that holds the front back, and where no flow medium lies over it.
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
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                release-film solid
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
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
              resin infusion-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              bag {
                peel-ply
                flow-medium smaller 40 mm
                bag-film
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
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
        if (context.Part is not { Process.Value: Process.Infused, Bag: { } bag })
        {
            return;
        }

        var under = bag.Layers.TakeWhile(layer => layer.Class != LayerClass.FlowMedium).ToList();
        if (under.Count == bag.Layers.Length || under.Find(layer => layer is { Class: LayerClass.ReleaseFilm, Smaller: null } && layer.Perforation?.Value is null or Perforation.None) is not { } film)
        {
            return;
        }

        if (film.Perforation is null)
        {
            context.NotChecked($"nobody says whether {film.Material.Name} is perforated", film.Where);
            return;
        }

        var mesh = bag.Layers[under.Count];

        context.Report(
            film.Where,
            $"{film.Material.Name} has no holes and lies under {mesh.Material.Name}: no resin gets through it",
            labels: [new FindingLabel(mesh.Where, "flow medium here")],
            fixes: [new Fix("Leave it out", FixSafety.NeedsALook, Edits.Remove(film.Where))]);
    }
}
