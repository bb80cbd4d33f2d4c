using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The wrap of a prepreg is opened before it is warm.</summary>
public sealed class OpenedFrozen : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7201",
        Name = "opened-frozen",
        Severity = Severity.Error,
        Title = "Prepreg opened while it is cold",
        Reason = "Water from the air settles on the cold resin, and comes out as voids in the oven.",
        Remedy = "Let it warm up in its sealed wrap, six hours at the least, until no dew stands on the wrap.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0026); the six hours are from memory",
        Exceptions = """
            Silent where no `thaw` is given.
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
                thaw 2 h sealed
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

    private static readonly Duration Enough = Duration.FromHours(6);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Prepreg is not { Thaw: { } thaw } handling)
        {
            return;
        }

        if (handling.ThawsSealed == false)
        {
            var at = thaw.Where ?? handling.Where;
            context.Report(at, "the prepreg warms up out of its wrap; it belongs in its sealed wrap until it is warm", Grounds.Sure.And("thaw", thaw));
            return;
        }

        if (thaw.Value >= Enough)
        {
            return;
        }

        context.Report(
            thaw.Where ?? handling.Where,
            $"the wrap is opened after {Say.Of(thaw)}; {Say.Of(Enough)} or more are wanted, and no dew on the wrap",
            Grounds.Sure.And("thaw", thaw),
            fixes: [Edits.Fix("Let it thaw 12 h", FixSafety.NeedsALook, FigureEdits.Rewrite(thaw, "12 h"))]);
    }
}
