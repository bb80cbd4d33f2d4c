using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Cloth that drinks water is laid in damp air.</summary>
public sealed class DampFibre : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3116",
        Name = "damp-fibre",
        Severity = Severity.Advice,
        Title = "Thirsty fibre in damp air",
        Reason = "Flax and aramid take water from the air; it stays between fibre and resin as voids and a weak bond.",
        Remedy = "Dry the cloth in a warm box and keep it wrapped, or wait for drier air.",
        Source = "common practice; aramid is kept out of light, US Army TM 1-1500-204-23-11 (page file 0026)",
        Exceptions = """
            Speaks of flax, hemp, jute and aramid where the humidity is given and is above 60 %.
            """,
        BadExample = """
            fibre shop-flax {
              density 1.45 g/cm3
              source "data sheet"
            }

            fabric shop-flax-cloth {
              fibre shop-flax
              weave plain
              areal-weight 170 g/m2
              warp-share 50 %
              width 100 cm
              resin-content hand 52 % by weight
              resin-content bagged 45 % by weight
              pace 5 min/m2
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer shop-flax-cloth 0/90
                inner shop-flax-cloth 0/90
              }
              wet-out {
                humidity 75 %
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            fibre shop-flax {
              density 1.45 g/cm3
              source "data sheet"
            }

            fabric shop-flax-cloth {
              fibre shop-flax
              weave plain
              areal-weight 170 g/m2
              warp-share 50 %
              width 100 cm
              resin-content hand 52 % by weight
              resin-content bagged 45 % by weight
              pace 5 min/m2
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer shop-flax-cloth 0/90
                inner shop-flax-cloth 0/90
              }
              wet-out {
                humidity 50 %
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly string[] Thirsty = ["flax", "hemp", "jute", "aramid"];
    private const double Damp = 0.6;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value == Process.Prepreg || part.Plies().FirstOrDefault(p => Thirsty.Any(p.Material.IsOf)) is not { } ply)
        {
            return;
        }

        if ((part.WetOut?.Humidity ?? context.Plan.Shop?.Humidity) is not { } humidity)
        {
            context.NotChecked("no humidity is given", ply.Where);
            return;
        }

        if (humidity.Value <= Damp)
        {
            return;
        }

        context.Report(
            part.Here(humidity, ply.MaterialWhere),
            $"{ply.Name} of {ply.Material.Name} is laid at {Say.Percent(humidity.Value)} humidity; above {Say.Percent(Damp)} it takes up water",
            Grounds.Sure.And("humidity", humidity),
            [new FindingLabel(ply.MaterialWhere, "thirsty fibre")],
            [Edits.Fix("Lay it in drier air", FixSafety.NeedsALook, part.Rewrite(humidity, "55 %"))]);
    }
}
