using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The face that is sanded is of aramid.</summary>
public sealed class AramidSanded : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3110",
        Name = "aramid-sanded",
        Severity = Severity.Advice,
        Title = "Aramid where it is sanded",
        Reason = "Aramid does not cut, it fuzzes: the face turns to fur that no paint covers.",
        Remedy = "Lay a light glass ply over the aramid, to be sanded instead.",
        Source = "common practice",
        Exceptions = """
            Speaks of the face on the mould (on a mandrel: of the outside). Silent under a coat, and where nothing is sanded.
            """,
        BadExample = """
            fibre shop-aramid {
              density 1.44 g/cm3
              source "data sheet"
            }

            fabric shop-aramid-cloth {
              fibre shop-aramid
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
                outer shop-aramid-cloth 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash "warm water"
                abrade 240 grit
              }
            }
            """,
        GoodExample = """
            fibre shop-aramid {
              density 1.44 g/cm3
              source "data sheet"
            }

            fabric shop-aramid-cloth {
              fibre shop-aramid
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
                face glass-twill-163 0/90
                outer shop-aramid-cloth 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                wash "warm water"
                abrade 240 grit
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => new LinesRead(part.Where);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        var isMandrel = part.Mould is { IsMandrel: true };
        var face = isMandrel ? part.Stack.LastOrDefault(s => s.CoversAll()) : part.Stack.FirstOrDefault(s => s.CoversAll());
        if (face is not PlyItem { Material: var cloth } ply || !cloth.IsOf("aramid") || (!isMandrel && part.Coats.Length > 0)
            || part.Finish.FirstOrDefault(s => s.Verb == "abrade") is not { } sanded)
        {
            return;
        }

        // The ply that could not be read may be the one on the face.
        if (context.MissesAPly())
        {
            return;
        }

        context.Report(
            ply.MaterialWhere,
            $"{ply.Name} of {cloth.Name} is the face of {part.Name}, which is sanded afterwards",
            labels: [new FindingLabel(sanded.Where, "sanded here")],
            fixes: [Glass(context, ply, isMandrel)]);
    }

    private static Fix? Glass(CheckContext context, PlyItem ply, bool isMandrel)
    {
        if (context.Model.LightGlass() is not { } glass || context.Part.VariantOf is not null)
        {
            return null;
        }

        var line = $"{context.Part.FreeName("sand")} {glass.Name} 0/90";
        return Edits.Fix($"Lay {glass.Name} over it", FixSafety.NeedsALook, isMandrel ? Edits.After(ply.Where, line) : Edits.Before(ply.Where, line));
    }
}
