using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A prepreg is cured in the oven under less than nearly all the vacuum there is.</summary>
public sealed class WeakOvenVacuum : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7207",
        Name = "weak-oven-vacuum",
        Severity = Severity.Warning,
        Title = "Vacuum too weak for a prepreg",
        Reason = "Voids grow in hot resin where the bag presses less than the vapour inside them.",
        Remedy = "Find the leaks before the heat starts: 95 % of the air outside at the least.",
        Source = "common practice",
        Exceptions = """
            Silent where the level or the height of the shop is not known.
            """,
        BadExample = """
            fabric own-prepreg {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
              warp-share 50 %
              width 100 cm
              resin-content prepreg 40 % by weight
              out-life 30 d
            }

            resin own-prepreg-epoxy {
              chemistry epoxy
              cures-with heat
              density cured 1.20 g/cm3
              gel-time 60 min at 80 degC
              minimum-temperature 70 degC
              demould 10 h at 80 degC
            }

            release-film hot-film {
              perforation medium
              bleed 5 g/m2
              width 150 cm
              heat-limit 200 degC
            }

            breather hot-felt {
              width 150 cm
              resin-pickup 10 g/m2
              capacity 500 g/m2
              areal-weight 150 g/m2
              heat-limit 200 degC
            }

            bag-film hot-bag {
              width 150 cm
              heat-limit 200 degC
            }

            sealant-tape hot-tape {
              width 12 mm
              heat-limit 200 degC
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4 wait 15 min dry 60 min
              }
            }

            part tray {
              mould tray-mould
              resin own-prepreg-epoxy
              process prepreg
              plies {
                skins own-prepreg 0/90 x2
              }
              prepreg {
                thaw 12 h sealed
                out-time 5 d
              }
              bag {
                release-film hot-film
                breather hot-felt
                bag-film hot-bag
                sealant-tape hot-tape
                hose silicone-hose
              }
              vacuum {
                draw 200 mbar absolute within 15 min
                leak-check 5 min rise at-most 50 mbar isolated
              }
              cure {
                ramp 1 degC/min to 80 degC under vacuum
                hold 80 degC for 12 h under vacuum
                cool to 40 degC at 1 degC/min
                vent
                demould
              }
            }
            """,
        GoodExample = """
            fabric own-prepreg {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
              warp-share 50 %
              width 100 cm
              resin-content prepreg 40 % by weight
              out-life 30 d
            }

            resin own-prepreg-epoxy {
              chemistry epoxy
              cures-with heat
              density cured 1.20 g/cm3
              gel-time 60 min at 80 degC
              minimum-temperature 70 degC
              demould 10 h at 80 degC
            }

            release-film hot-film {
              perforation medium
              bleed 5 g/m2
              width 150 cm
              heat-limit 200 degC
            }

            breather hot-felt {
              width 150 cm
              resin-pickup 10 g/m2
              capacity 500 g/m2
              areal-weight 150 g/m2
              heat-limit 200 degC
            }

            bag-film hot-bag {
              width 150 cm
              heat-limit 200 degC
            }

            sealant-tape hot-tape {
              width 12 mm
              heat-limit 200 degC
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of aluminium
              release {
                semi-permanent-release coats 4 wait 15 min dry 60 min
              }
            }

            part tray {
              mould tray-mould
              resin own-prepreg-epoxy
              process prepreg
              plies {
                skins own-prepreg 0/90 x2
              }
              prepreg {
                thaw 12 h sealed
                out-time 5 d
              }
              bag {
                release-film hot-film
                breather hot-felt
                bag-film hot-bag
                sealant-tape hot-tape
                hose silicone-hose
              }
              vacuum {
                draw 30 mbar absolute within 15 min
                leak-check 5 min rise at-most 50 mbar isolated
              }
              cure {
                ramp 1 degC/min to 80 degC under vacuum
                hold 80 degC for 12 h under vacuum
                cool to 40 degC at 1 degC/min
                vent
                demould
              }
            }
            """,
    };

    /// <summary>The level that is usual for a prepreg in an oven.</summary>
    internal const string Usual = "30 mbar absolute";

    private const double Share = 0.95;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value != Process.Prepreg || part.Vacuum is not { Draw: { } draw } vacuum || context.Plan.Vacuum is not { } levels)
        {
            return;
        }

        var ambient = levels.BelowAmbient.Value + levels.Absolute.Value;
        var wanted = ambient * Share;
        if (levels.BelowAmbient.Value >= wanted - Pressure.FromMillibars(1) || levels.BelowAmbient.Value > ambient)
        {
            return;
        }

        context.Report(
            draw.Where ?? vacuum.Where,
            $"{Say.Of(draw)} is {Say.Percent(Math.Floor(levels.BelowAmbient.Value / ambient * 1000) / 1000)} of the air outside; a prepreg in an oven wants {Say.Percent(Share)}",
            Grounds.Sure.And("level", draw).And<Pressure>(levels.Absolute),
            fixes: [Edits.Fix($"Draw down to {Usual}", FixSafety.NeedsALook, FigureEdits.Rewrite(draw, Usual))]);
    }
}
