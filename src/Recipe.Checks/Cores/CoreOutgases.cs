using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A foam is warmed for the first time under its skins.</summary>
public sealed class CoreOutgases : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3205",
        Name = "core-outgases",
        Severity = Severity.Advice,
        Title = "Foam gives off gas under the skin",
        Reason = "At its first heating such foam gives off the gas it was blown with, and that lifts the skin in blisters.",
        Remedy = "Warm the bare sheet once before lay-up, or take a heat-stabilised grade.",
        Source = "common practice (PVC foam above 60 degC)",
        Exceptions = """
            Speaks of PVC foam in a cure above 60 degC. Say `heat-stabilised yes` for a stabilised grade, and for a sheet that was warmed.
            """,
        BadExample = """
            core shop-foam like pvc-foam-75 {
              cut perforated
              heat-stabilised no
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-foam thickness 5 mm
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
                hold 20 degC for 24 h under vacuum
                ramp 10 degC/h to 65 degC under vacuum
                hold 65 degC for 6 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
        GoodExample = """
            core shop-foam like pvc-foam-75 {
              cut perforated
              heat-stabilised yes
              source "data sheet"
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                heart core shop-foam thickness 5 mm
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
                hold 20 degC for 24 h under vacuum
                ramp 10 degC/h to 65 degC under vacuum
                hold 65 degC for 6 h under vacuum
                cool to 30 degC
                demould
              }
            }
            """,
    };

    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(60);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (context.Plan.Cure?.Peak is not { } peak || peak.Value <= Warm
            || part.Cores().Where(c => c.Material.Family == "pvc-foam" && c.Material.HeatStabilised is not { Value: true })
                .OrderBy(c => c.Material.HeatStabilised is null).FirstOrDefault() is not { } core)
        {
            return;
        }

        if (core.Material.HeatStabilised is not { } stabilised)
        {
            context.NotChecked($"nothing says whether {core.Material.Name} is heat-stabilised or was warmed before", core.MaterialWhere);
            return;
        }

        var written = part.CureWritten();
        context.Report(
            core.MaterialWhere,
            $"{core.Name} is cured at up to {Say.Of(peak.Value, written)}; above {Say.Of(Warm, written)} {core.Material.Name} gives off gas the first time",
            Grounds.Sure.And<Temperature>(peak).And("heat-stabilised", stabilised),
            [new FindingLabel(part.Here(stabilised, core.Where), "not stabilised")],
            [Edits.Fix("Warm the bare sheet first", FixSafety.NeedsALook, part.Rewrite(stabilised, "yes"))]);
    }
}
