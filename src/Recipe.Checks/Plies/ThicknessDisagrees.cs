using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The thickness stated for a cloth does not go with its weight.</summary>
public sealed class ThicknessDisagrees : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3117",
        Name = "thickness-disagrees",
        Severity = Severity.Warning,
        Title = "Ply thickness that the weight cannot have",
        Reason = "Weight, density and thickness of a cured ply hang together, so one of them is wrong, and so are the masses that follow from it.",
        Remedy = "Weigh a square of the cloth, and measure a cured ply.",
        Source = "common practice; thickness from weight and density as in lamination handbooks",
        Exceptions = """
            Speaks of cloth and unidirectional cloth. The stated thickness has to lie within 35 % of what the weight gives between 36 and 55 %
            resin by weight.
            """,
        BadExample = """
            fabric shop-twill {
              fibre e-glass
              weave twill
              areal-weight 200 g/m2
              thickness 0.6 mm
              warp-share 50 %
              width 120 cm
              resin-content hand 50 % by weight
              resin-content bagged 42 % by weight
              pace 6 min/m2
              source "weighed"
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer shop-twill 0/90
                inner shop-twill 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            fabric shop-twill {
              fibre e-glass
              weave twill
              areal-weight 200 g/m2
              thickness 0.22 mm
              warp-share 50 %
              width 120 cm
              resin-content hand 50 % by weight
              resin-content bagged 42 % by weight
              pace 6 min/m2
              source "weighed"
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer shop-twill 0/90
                inner shop-twill 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double Scatter = 0.35;
    private const double Driest = 0.36;
    private const double Wettest = 0.55;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        foreach (var ply in part.Plies().Where(p => p.Material.Form is ReinforcementForm.Fabric or ReinforcementForm.Unidirectional).DistinctBy(p => p.Material.Name))
        {
            if (ply.Material is not { Thickness: { } stated, ArealWeight: { Value.KilogramsPerSquareMeter: > 0 } weight } cloth)
            {
                continue;
            }

            if (cloth.Fibre?.Density is not { Value.KilogramsPerCubicMeter: > 0 } density)
            {
                context.NotChecked($"no density of the fibre is known for {cloth.Name}", ply.MaterialWhere);
                continue;
            }

            var resin = part.Resin?.CuredDensity is { Value: { KilogramsPerCubicMeter: > 0 } own } ? own : Defaults.CuredDensity(part.Resin?.Chemistry ?? Chemistry.Unknown).Value;
            var thin = At(Driest);
            var thick = At(Wettest);
            if (stated.Value.Meters >= thin * (1 - Scatter) && stated.Value.Meters <= thick * (1 + Scatter))
            {
                continue;
            }

            var usual = Say.About(Length.FromMeters(At(0.45)), stated.Written);
            context.Report(
                part.Here(stated, ply.MaterialWhere),
                $"{cloth.Name} of {Say.Of(weight)} is said to cure to {Say.Of(stated)}; its weight gives {Say.About(Length.FromMeters(thin), stated.Written)} to {Say.About(Length.FromMeters(thick), stated.Written)}",
                Grounds.Sure.And("thickness", stated).And("weight", weight),
                [new FindingLabel(part.Here(weight, ply.Where), "weight")],
                [Edits.Fix($"Write {usual}", FixSafety.NeedsALook, part.Rewrite(stated, usual))]);
            return;

            double At(double share) => FibreContent.PlyThickness(
                weight.Value, density.Value, FibreContent.VolumeFraction(Ratio.FromDecimalFractions(1 - share), density.Value, resin)).Meters;
        }
    }
}
