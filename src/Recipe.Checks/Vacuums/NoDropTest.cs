using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The feed of an infusion is opened on a bag that nobody tested.</summary>
public sealed class NoDropTest : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6005",
        Name = "no-drop-test",
        Severity = Severity.Error,
        Title = "Infusion without a drop test",
        Reason = "Once the feed is open a leak draws air through the whole part, and nothing brings it out again.",
        Remedy = "Shut the bag off before the feed is opened, wait five minutes, and accept no more than 34 mbar.",
        Source = "common practice (at most 1 inHg in 5 min)",
        Exceptions = """
            A `leak-check` in the vacuum block serves as well.
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
              vacuum {
                draw 28 inHg below ambient within 10 min
              }
              infuse {
                path 300 mm
                feed-line length 300 mm diameter 8 mm
                resin-temperature 22 degC
                clamp-feed "at full wet"
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
    public override LinesRead? Reads(Part part) => new LinesRead(part.Infusion?.Where ?? part.Where);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var isTested = part.Infusion?.DropTest is not null || part.Vacuum?.LeakCheck is not null;
        if (part.Process.Value != Process.Infused || isTested || !part.HasPlies())
        {
            return;
        }

        const string line = "drop-test 5 min rise at-most 34 mbar isolated";
        var edit = part.Infusion is { } infusion
            ? Edits.Last(infusion.Where, line)
            : Edits.Last(part.Where, "infuse {", "  " + line, "}");
        context.Report(
            part.Infusion?.Where ?? part.Where,
            $"{part.Name} is infused and the bag is not tested before the feed opens",
            fixes: [Edits.Fix("Add a drop test: 34 mbar at most in 5 min", FixSafety.NeedsALook, edit)]);
    }
}
