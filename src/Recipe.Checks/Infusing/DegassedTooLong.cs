using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Mixed resin stands under vacuum too long.</summary>
public sealed class DegassedTooLong : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6209",
        Name = "degassed-too-long",
        Severity = Severity.Warning,
        Title = "Degassed for too long",
        Reason = "The clock runs while it stands, the mass warms itself, and a long vacuum takes light parts out of the resin.",
        Remedy = "Degas for 10 minutes at most, in a pot four times as large as the resin.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0307): 10 minutes at most at 25 to 30 inHg",
        Exceptions = """
            Silent for styrenated resins, which are not degassed at all.
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
                clamp-feed "at full wet"
                drop-test 5 min rise at-most 30 mbar isolated
                degas 30 min
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

    private static readonly Duration Longest = Duration.FromMinutes(10);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { Degas: { } degas } infusion } || part.Resin.IsStyrenated()
            || degas.Value.Seconds <= Longest.Seconds + 1)
        {
            return;
        }

        context.Report(
            degas.Where ?? infusion.Where,
            $"the mixed resin is degassed for {Say.Of(degas)}; {Say.Of(Longest)} is the most",
            Grounds.Sure.And("degassing time", degas),
            part.ResinNamed(),
            [Edits.Fix("Degas it for 8 minutes", FixSafety.NeedsALook, part.Rewrite(degas, "8 min"))]);
    }
}
