using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>An infusion lists its fittings and no vent.</summary>
public sealed class NoWayOut : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6205",
        Name = "no-way-out",
        Severity = Severity.Advice,
        Title = "No vent named for an infusion",
        Reason = "Where the air leaves decides where the resin goes; a vent in the wrong place shuts air in.",
        Remedy = "Say where the vent is: where the resin comes last.",
        Source = "common practice",
        Exceptions = """
            Speaks of an infusion whose bag lists a port and whose `infuse` block names no `vent`, unless the place of a port says that it is
            the vent.
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
                bag-film
                port at "on the flange"
                catch-pot
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
                port at "on the flange"
                catch-pot
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
                vent "along the far edge, past the plies"
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

    private static readonly string[] Words = ["vent", "vacuum", "outlet", "far", "opposite", "pump"];

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Infusion is { } infusion ? new LinesRead(infusion.Where) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { Vent: null } infusion, Bag.Ports: [var port, ..] ports }
            || ports.Any(p => Words.Any(w => p.At?.Contains(w, StringComparison.OrdinalIgnoreCase) == true)))
        {
            return;
        }

        context.Report(
            infusion.Where,
            $"the bag of {part.Name} lists a port, and nothing says where the vent of the infusion is",
            labels: [new FindingLabel(port.Where, "port here")],
            fixes: [Edits.Fix("Vent it where the resin comes last", FixSafety.NeedsALook, Edits.Last(infusion.Where, "vent \"where the resin comes last, past the plies\""))]);
    }
}
