using Recipe.Model;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Checks;

/// <summary>A cloth is lighter or heavier than cloth comes.</summary>
public sealed class OddClothWeight : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3118",
        Name = "odd-cloth-weight",
        Severity = Severity.Warning,
        Title = "Weight that no cloth has",
        Reason = "Ounces and grams, or a slip of the point: resin, mass and thickness are then wrong many times over.",
        Remedy = "Read the weight off the roll with its unit, or weigh a square of 10 cm.",
        Source = "common practice (woven cloth 15 to 1200 g/m2, stitched cloth to 2400, mat 75 to 1500, veil to 150; US mat is sold by the square foot: 1.5 oz/ft2 is 458 g/m2)",
        BadExample = """
            fabric shop-twill {
              fibre e-glass
              weave twill
              areal-weight 5.8 g/m2
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
                outer glass-twill-163 0/90
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
              areal-weight 5.8 oz/yd2
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
                outer glass-twill-163 0/90
                inner shop-twill 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        foreach (var ply in part.Plies().DistinctBy(p => p.Material.Name))
        {
            var (cloth, grams) = (ply.Material, ply.Material.Grams());
            var (least, most) = Range(cloth);
            if (grams <= 0 || cloth.FromBook || (grams >= least && grams <= most) || cloth.ArealWeight is not { } weight)
            {
                continue;
            }

            context.Report(
                part.Here(weight, ply.MaterialWhere),
                $"{cloth.Name} weighs {Say.Of(weight)}; such cloth comes at {PlyFacts.Weight(least, weight.Written)} to {PlyFacts.Weight(most, weight.Written)}",
                Grounds.Sure.And("weight", weight),
                [new FindingLabel(ply.Where, "laid here")],
                [Meant(part, cloth, weight, least, most)]);
            return;
        }
    }

    private static (double Least, double Most) Range(Reinforcement cloth) => cloth.Form switch
    {
        ReinforcementForm.Mat => (75, 1500),
        ReinforcementForm.Veil => (3, 150),
        _ => cloth.IsWoven() ? (15, 1200) : (30, 2400),
    };

    // The same number in the ounces that such cloth is sold by, or in grams; else a point in the wrong place.
    private static Fix? Meant(Part part, Reinforcement cloth, Figure<UnitsNet.AreaDensity> weight, double least, double most)
    {
        var unit = Say.UnitLike(weight.Written, "g/m2");
        var number = unit.FromSi(weight.Value.KilogramsPerSquareMeter);
        string[] units = [cloth.Form == ReinforcementForm.Mat ? "oz/ft2" : "oz/yd2", "g/m2"];
        var other = units.Where(u => u != unit.Symbol).FirstOrDefault(u => Fits(UnitTable.Get(u).ToSi(number) * 1000));
        var grams = cloth.Grams() * (cloth.Grams() < least ? 10 : 0.1);
        var text = other is not null ? $"{Say.Number(number)} {other}" : Fits(grams) ? PlyFacts.Weight(grams, weight.Written) : null;
        return text is null ? null : Edits.Fix($"Write {text}", FixSafety.NeedsALook, part.Rewrite(weight, text));

        bool Fits(double weighs) => weighs >= least && weighs <= most;
    }
}
