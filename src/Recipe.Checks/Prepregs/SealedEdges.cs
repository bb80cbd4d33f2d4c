using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The edges of a prepreg without autoclave are sealed against air.</summary>
public sealed class SealedEdges : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7204",
        Name = "sealed-edges",
        Severity = Severity.Error,
        Title = "Prepreg edges sealed against air",
        Reason = "Without an autoclave the air has to leave along the cloth; sealed edges lock it in.",
        Remedy = "Set dams that breathe, or lay strands of glass from the edge to the breather.",
        Source = "common practice",
        Exceptions = """
            Silent where nothing is said of the edges.
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
                edges sealed
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
                edges breathing
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

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Prepreg is not { EdgesBreathe: { Value: false } edges } handling)
        {
            return;
        }

        context.Report(
            edges.Where ?? handling.Where,
            "the edges are sealed, and air under vacuum alone leaves along the plies only",
            Grounds.Sure.And("edges", edges),
            context.Part.Bag is { } bag ? [new FindingLabel(bag.Where, "bagged here")] : [],
            [Edits.Fix("Let the edges breathe", FixSafety.NeedsALook, FigureEdits.Rewrite(edges, "breathing"))]);
    }
}
