using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Flowing resin on open cells.</summary>
public sealed class WetHoneycomb : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3202",
        Name = "wet-honeycomb",
        Severity = Severity.Warning,
        Title = "Liquid resin on open honeycomb",
        Reason = "The cells have no floor: infused resin fills them, and wet skins run dry over them or leave pools in them.",
        Remedy = "Bond cured skins with film adhesive or a stiff paste, or take a foam core.",
        Source = "common practice",
        Exceptions = """
            An error in an infusion. In a wet lay-up it is silent where the core states its own `resin-uptake`, which is what the fillets
            along the cell walls take. Silent for foam-filled honeycomb and prepreg.
            """,
        BadExample = """
            core shop-honeycomb {
              family honeycomb
              density 48 kg/m3
              thickness 5 mm
              sheet 1200 mm x 800 mm
              heat-limit 150 degC
              compressive-strength 2 MPa
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-honeycomb thickness 5 mm
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
        GoodExample = """
            core shop-honeycomb {
              family honeycomb
              density 48 kg/m3
              thickness 5 mm
              sheet 1200 mm x 800 mm
              heat-limit 150 degC
              compressive-strength 2 MPa
              resin-uptake 150 g/m2
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-honeycomb thickness 5 mm
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
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var isInfused = part.Process.Value == Process.Infused;
        if (!(isInfused || part.IsLaidWet())
            || part.Cores().FirstOrDefault(c => c.Material.IsHoneycomb() && (isInfused || c.Material.ResinUptake is not { Basis: Basis.Stated })) is not { } core)
        {
            return;
        }

        context.Report(
            core.MaterialWhere,
            isInfused
                ? $"{core.Name} is open honeycomb in an infusion, whose resin fills its cells"
                : $"{core.Name} is open honeycomb under wet skins, and nothing says what resin its fillets take",
            labels: [new FindingLabel(part.Process.Where ?? part.Where, Say.Of(part.Process.Value))],
            fixes: [Foam(context, core)],
            severity: isInfused ? Severity.Error : Severity.Warning);
    }

    private static Fix? Foam(CheckContext context, CoreItem core) =>
        context.Model.NearestFoam(core.Thickness?.Value) is { } foam && ReferenceEquals(core.MaterialWhere.Source, context.Part.Where.Source)
            ? new Fix($"Take {foam.Name} instead", FixSafety.NeedsALook, Edits.Replace(core.MaterialWhere, foam.Name))
            : null;
}
