using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A liquid film lies under an infusion or a prepreg.</summary>
public sealed class FilmUnderInfusion : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2104",
        Name = "film-under-infusion",
        Severity = Severity.Warning,
        Title = "Release film under an infusion or a prepreg",
        Reason = "Resin that flows for long, or heat, lifts a water-soluble film and carries it into the laminate; it also leaks under the sealant tape.",
        Remedy = "Take a semi-permanent release or wax, and keep the flange bare.",
        Source = "common practice",
        Exceptions = """
            Silent on a `new` or `repaired` face, where the film is kept on purpose for the first pulls.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
                pva-film coats 1 dry 60 min
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
                vent "at the far edge"
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
                vent "at the far edge"
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
        var part = context.Part;
        if (part.Process.Value is not (Process.Infused or Process.Prepreg)
            || part.Mould is not { } mould
            || mould.State is { Value: MouldState.New or MouldState.Repaired }
            || mould.Release.FirstOrDefault(r => r.Agent.Kind == ReleaseKind.LiquidFilm) is not { } film)
        {
            return;
        }

        context.Report(
            film.Where,
            $"{film.Agent.Name} lies under {Say.APart(part.Process.Value)}; it lifts where resin flows along it or heat dries it out",
            Grounds.Sure.And("process", part.Process),
            fixes: [mould.Release.Length > 1 ? Edits.Fix("Leave the film out", FixSafety.NeedsALook, Edits.Remove(film.Where)) : null]);
    }
}
