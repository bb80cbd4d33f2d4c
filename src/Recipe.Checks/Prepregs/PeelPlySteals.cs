using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Dry peel ply lies on a prepreg that has no resin to spare.</summary>
public sealed class PeelPlySteals : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7205",
        Name = "peel-ply-steals",
        Severity = Severity.Advice,
        Title = "Dry peel ply on a lean prepreg",
        Reason = "Peel ply soaks up the little resin there is, and the face comes out dry.",
        Remedy = "Lay a resin film of 30 to 50 g/m2 under it, or a perforated film instead.",
        Source = "common practice",
        Exceptions = """
            Silent from 38 % of resin by weight.
            """,
        BadExample = """
            fabric own-prepreg {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
              warp-share 50 %
              width 100 cm
              resin-content prepreg 34 % by weight
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

            peel-ply hot-peel {
              width 150 cm
              resin-pickup 10 g/m2
              heat-limit 200 degC
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
                peel-ply hot-peel
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

    private const double Lean = 0.38;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value != Process.Prepreg || part.Bag is not { Layers: [{ Class: LayerClass.PeelPly } peel, ..] }
            || part.Stack.OfType<PlyItem>().LastOrDefault() is not { } ply
            || (ply.Content ?? ply.Material.PrepregContent) is not { Value: { Basis: ContentBasis.ResinByWeight, Fraction: < Lean } } content)
        {
            return;
        }

        context.Report(
            peel.Where,
            $"{peel.Material.Name} lies dry on {ply.Material.Name}, which holds {Say.Of(content)} of resin and has none to give",
            Grounds.Sure.And("resin content", content),
            [new FindingLabel(ply.Where, "prepreg here")],
            [Without(part.Bag, peel)]);
    }

    // A film under it makes the face by itself; anything else would cure into the part.
    private static Fix Without(Bag bag, BagLayer peel) => bag.Layers[1..] is [{ Class: LayerClass.ReleaseFilm }, ..]
        ? new Fix("Leave the peel ply out", FixSafety.NeedsALook, Edits.Remove(peel.Where))
        : new Fix("Lay a perforated film instead", FixSafety.NeedsALook, LayerLines.Take(peel.Where, peel.Material.Name, "release-film perforated"));
}
