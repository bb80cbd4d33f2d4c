using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>An infusion does not say when the feed is closed.</summary>
public sealed class NoClampOrder : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6204",
        Name = "no-clamp-order",
        Severity = Severity.Warning,
        Title = "Nothing says when the feed is clamped",
        Reason = "A feed left open draws air when the pot is empty, and vacuum taken off before gel lets the stack swell with resin.",
        Remedy = "Clamp the feed when all cloth is wet, and leave the vacuum on until gel.",
        Source = "common practice",
        Exceptions = """
            Speaks of an `infuse` block that says where the vent is or what is held in reserve, and leaves this out.
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
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                vent "along the far edge"
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
                vent "along the far edge"
                clamp-feed "at full wet; the vacuum stays on until gel"
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
    public override LinesRead? Reads(Part part) => part.Infusion is { } infusion ? new LinesRead(infusion.Where) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { ClampFeed: null } infusion } || (infusion.Vent is null && infusion.Reserve is null))
        {
            return;
        }

        context.Report(
            infusion.Where,
            $"the infusion of {part.Name} says {(infusion.Vent is null ? "what is held in reserve" : "where its vent is")}, and not when the feed is clamped",
            fixes: [Edits.Fix("Clamp the feed when all is wet", FixSafety.NeedsALook, Edits.Last(infusion.Where, "clamp-feed \"at full wet; the vacuum stays on until gel\""))]);
    }
}
