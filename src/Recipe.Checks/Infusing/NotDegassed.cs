using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A flying part is infused with resin as it was stirred.</summary>
public sealed class NotDegassed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6207",
        Name = "not-degassed",
        Severity = Severity.Advice,
        Title = "Resin not degassed for a part that flies",
        Reason = "Air stirred into the resin comes out in the part as fine bubbles once the vacuum works on it.",
        Remedy = "Stand the mixed resin under vacuum for 8 to 10 minutes first.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0307): at 25 to 30 inHg, 10 minutes at most; common practice",
        Exceptions = """
            Speaks of epoxy and `use flying` only. Never degas a styrenated resin.
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
              use flying
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
              use flying
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
                degas 8 min
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
    public override LinesRead? Reads(Part part) => part.Infusion is { } infusion ? new LinesRead(infusion.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Use: { Value: PartUse.Flying } use, Infusion: { Degas: null } infusion, Resin: { Chemistry: Chemistry.Epoxy } resin })
        {
            return;
        }

        context.Report(
            infusion.Where,
            $"{resin.Name} is infused as stirred, and {part.Name} flies",
            labels: use.Where is { } where ? [new FindingLabel(where, "flies")] : [],
            fixes: [Edits.Fix("Degas it for 8 minutes", FixSafety.NeedsALook, Edits.Last(infusion.Where, "degas 8 min"))]);
    }
}
