using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A felt lies open over a part that is infused.</summary>
public sealed class FeltInInfusion : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6215",
        Name = "felt-in-infusion",
        Severity = Severity.Warning,
        Title = "Felt that drinks the infusion",
        Reason = "The resin fills the felt as fast as the mesh: it is weighed, paid for and torn off, and what was mixed does not reach the far end.",
        Remedy = "Leave bleeder and breather out of an infusion; between two bags a breather is right.",
        Source = "common practice",
        Exceptions = """
            Silent over a solid film or over the first bag film, and for a felt with `smaller`, such as a strip before the vent.
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
                flow-medium smaller 40 mm
                breather
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

        var open = bag.Layers.TakeWhile(layer => layer.Class != LayerClass.BagFilm && !(layer is { Class: LayerClass.ReleaseFilm, Perforation.Value: Perforation.None }));
        if (open.FirstOrDefault(layer => layer is { Class: LayerClass.Bleeder or LayerClass.Breather, Smaller: null }) is not { } felt)
        {
            return;
        }

        context.Report(
            felt.Where,
            $"{felt.Material.Name} lies open over a part that is infused, and fills with its resin",
            fixes: [new Fix("Leave it out", FixSafety.NeedsALook, Edits.Remove(felt.Where))]);
    }
}
