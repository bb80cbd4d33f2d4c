using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The flow medium of an infusion lies on the laminate.</summary>
public sealed class BareFlowMedium : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5007",
        Name = "bare-flow-medium",
        Severity = Severity.Warning,
        Title = "Flow medium without peel ply under it",
        Reason = "The mesh cures onto the part and comes off only with the outer ply.",
        Remedy = "Put a peel ply between the laminate and the flow medium.",
        Source = "common practice",
        Exceptions = """
            A perforated film between does as well. A mesh that is meant to stay is accepted with a written reason.
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
                flow-medium smaller 40 mm
                bag-film
              }
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
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
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
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
        if (part.Bag is not { } bag || BagOrder.IsUpsideDown(part))
        {
            return;
        }

        var index = bag.Layers.IndexOf(l => l.Class == LayerClass.FlowMedium);
        if (index < 0 || bag.Layers.Take(index).Any(l => l.Class is not LayerClass.FlowMedium))
        {
            return;
        }

        var medium = bag.Layers[index];
        var later = bag.Layers.FirstOrDefault(l => l.Class == LayerClass.PeelPly);
        context.Report(
            medium.Where,
            $"{medium.Material.Name} lies on the laminate, {(later is null ? "with no peel ply in the bag" : "and the peel ply only over it")}",
            labels: later is null ? [] : [new FindingLabel(later.Where, "peel ply here")],
            fixes: [Edits.Fix("Put a peel ply under it", FixSafety.NeedsALook, Edits.Before(medium.Where, "peel-ply"))]);
    }
}
