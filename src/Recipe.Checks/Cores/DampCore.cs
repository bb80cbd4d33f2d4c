using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A core of wood or paper is too damp to be shut in.</summary>
public sealed class DampCore : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3206",
        Name = "damp-core",
        Severity = Severity.Warning,
        Title = "Damp core",
        Reason = "The water stays between the skins: the bond is weak, the wood rots, and in a warm cure it turns to steam.",
        Remedy = "Dry the sheet below 12 %, keep it wrapped, and store it in dry air.",
        Source = "common practice (12 % moisture, or stored below 65 % humidity)",
        Exceptions = """
            Speaks of balsa, wood, cork and paper cores whose `moisture` is given, or that stand in a store whose humidity is given.
            """,
        BadExample = """
            core shop-balsa {
              family balsa
              density 150 kg/m3
              thickness 5 mm
              sheet 1200 mm x 800 mm
              heat-limit 150 degC
              compressive-strength 10 MPa
              resin-uptake 400 g/m2
              cut perforated
              moisture 16 %
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
                heart core shop-balsa thickness 5 mm
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
            core shop-balsa {
              family balsa
              density 150 kg/m3
              thickness 5 mm
              sheet 1200 mm x 800 mm
              heat-limit 150 degC
              compressive-strength 10 MPa
              resin-uptake 400 g/m2
              cut perforated
              moisture 9 %
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
                heart core shop-balsa thickness 5 mm
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

    private const double Wettest = 0.12;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, store) = (context.Part, context.Plan.Shop?.StoreHumidity);
        foreach (var core in part.Cores().Where(c => c.Material.IsThirsty()).DistinctBy(c => c.Material.Name))
        {
            if (core.Material.Moisture is { } moisture)
            {
                if (moisture.Value > Wettest)
                {
                    context.Report(
                        core.MaterialWhere,
                        $"{core.Material.Name} holds {Say.Percent(moisture.Value)} water; {Say.Percent(Wettest)} is the most that may be shut in",
                        Grounds.Sure.And("moisture", moisture),
                        [new FindingLabel(part.Here(moisture, core.Where), "moisture")],
                        [Edits.Fix("Dry it to 10 % first", FixSafety.NeedsALook, part.Rewrite(moisture, "10 %"))]);
                }
            }
            else if (store is null)
            {
                context.NotChecked($"no moisture is given for {core.Material.Name}", core.MaterialWhere);
            }
            else if (store.Value > CoreFacts.DampestStore)
            {
                context.Report(
                    core.MaterialWhere,
                    $"{core.Material.Name} stands in a store at {Say.Percent(store.Value)} humidity; {Say.Percent(CoreFacts.DampestStore)} is the most for it",
                    Grounds.Sure.And("humidity of the store", store),
                    [new FindingLabel(part.Here(store, core.Where), "store")]);
            }
        }
    }
}
