using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Styrene is pulled out of the resin before it is used.</summary>
public sealed class StyreneDegassed : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6208",
        Name = "styrene-degassed",
        Severity = Severity.Warning,
        Title = "Styrenated resin degassed",
        Reason = "Under vacuum the styrene itself boils off: the resin foams, no longer cures as it should, and the vapour goes through the pump into the room.",
        Remedy = "Let the resin stand until its bubbles have risen, and do not degas it.",
        Source = "common practice; styrene boils at about 31 degC at 13 mbar (from memory); NIOSH recommends no more than 50 ppm of its vapour",
        Exceptions = """
            Silent for epoxy, which is another check.
            """,
        BadExample = """
            resin shop-vinylester {
              chemistry vinylester
              mix 100:2 by weight
              density cured 1.14 g/cm3
              viscosity 250 mPa.s at 22 degC
              pot-life 60 min at 20 degC in 100 g
              film-life 90 min at 20 degC
              gel-time 150 min at 20 degC
              minimum-temperature 15 degC
              demould 12 h at 20 degC
              largest-pot 1 kg
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin shop-vinylester
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
                draw 20 inHg below ambient within 10 min
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            resin shop-vinylester {
              chemistry vinylester
              mix 100:2 by weight
              density cured 1.14 g/cm3
              viscosity 250 mPa.s at 22 degC
              pot-life 60 min at 20 degC in 100 g
              film-life 90 min at 20 degC
              gel-time 150 min at 20 degC
              minimum-temperature 15 degC
              demould 12 h at 20 degC
              largest-pot 1 kg
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin shop-vinylester
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
                draw 20 inHg below ambient within 10 min
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
        var part = context.Part;
        if (part is not { Process.Value: Process.Infused, Infusion: { Degas: { Value.Seconds: > 0 } degas } infusion, Resin: { } resin } || !resin.IsStyrenated())
        {
            return;
        }

        context.Report(
            degas.Where ?? infusion.Where,
            $"{resin.Name} stands under vacuum for {Say.Of(degas)} before it is used, and holds styrene, which boils off",
            labels: part.ResinNamed(),
            fixes: [Without(degas)]);
    }

    // The line is the word and the time.
    private static Fix? Without(Figure<UnitsNet.Duration> degas)
    {
        if (degas.Where is not { } where)
        {
            return null;
        }

        var at = where.Source.Text.LastIndexOf("degas", where.Span.Start, StringComparison.Ordinal);
        return at < 0 || where.Source.Text[at..where.Span.Start].Trim() != "degas"
            ? null
            : new Fix("Do not degas it", FixSafety.NeedsALook, Edits.Remove(new SourceSpan(where.Source, TextSpan.FromBounds(at, where.Span.End))));
    }
}
