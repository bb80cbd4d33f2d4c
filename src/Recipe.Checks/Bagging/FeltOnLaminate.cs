using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A felt is the layer next to the wet laminate.</summary>
public sealed class FeltOnLaminate : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5003",
        Name = "felt-on-laminate",
        Severity = Severity.Error,
        Title = "Felt on the wet laminate",
        Reason = "Resin wets the felt and cures it into the part for good.",
        Remedy = "Put a peel ply or a perforated release film between.",
        Source =
            "US Army TM 1-1500-204-23-11 (page file 0046); FAA AC 43.13-1B (1998) p. 3-7: a porous release layer lies over "
            + "the patch, the bleeder over it",
        Exceptions = """
            A felt that is meant to stay is a ply: list it among the plies.
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
                breather
                release-film perforated
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
        if (context.Part.Bag is not { Layers: [{ Class: LayerClass.Bleeder or LayerClass.Breather } felt, ..] } bag
            || BagOrder.IsUpsideDown(context.Part))
        {
            return;
        }

        var later = bag.Layers.FirstOrDefault(l => l.Class is LayerClass.PeelPly or LayerClass.ReleaseFilm);
        context.Report(
            felt.Where,
            $"{felt.Material.Name} lies on the wet laminate, "
            + (later is null ? "with no peel ply or film in the bag" : $"and the {Say.Of(later.Class)} only over it"),
            labels: later is null ? [] : [new FindingLabel(later.Where, $"{Say.Of(later.Class)} here")],
            fixes: [Edits.Fix("Put a peel ply under it", FixSafety.NeedsALook, Edits.Before(felt.Where, "peel-ply"))]);
    }
}
