using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A face that is looked at is of open, heavy cloth with nothing in front of it.</summary>
public sealed class PinholesExpected : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3114",
        Name = "pinholes-expected",
        Severity = Severity.Advice,
        Title = "Pinholes in the face",
        Reason = "Air sits in the windows of a heavy weave, and the bag draws the resin away from them.",
        Remedy = "Lay a surface coat or a light cloth first, or plan to fill and paint.",
        Source = "common practice",
        Exceptions = """
            Speaks of bagged wet lay-ups with `use cosmetic` and woven cloth of more than 220 g/m2 on the mould. Silent under a coat,
            where the finish fills, primes or paints, and for what is laid on a part that stays.
            """,
        BadExample = """
            fabric shop-twill {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
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
              resin slow-laminating-epoxy
              use cosmetic
              plies {
                outer shop-twill 0/90
                inner shop-twill 0/90
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
            fabric shop-twill {
              fibre e-glass
              weave twill
              areal-weight 280 g/m2
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
              resin slow-laminating-epoxy
              use cosmetic
              plies {
                outer shop-twill 0/90
                inner shop-twill 0/90
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
              finish {
                prime
                paint colour white
              }
            }
            """,
    };

    private const double Heavy = 220;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => new LinesRead(part.Where);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part is not { Process.Value: Process.Bagged, Use.Value: PartUse.Cosmetic, Coats.IsEmpty: true, Mould: not ({ IsMandrel: true } or { StaysInPart: true }) }
            || part.Finish.Any(s => s.Verb is "fill" or "prime" or "paint")
            || part.Stack.FirstOrDefault(s => s.CoversAll()) is not PlyItem { Material: var cloth } face
            || !cloth.IsWoven() || cloth.Grams() <= Heavy)
        {
            return;
        }

        // The ply that could not be read may be the one on the face.
        if (context.MissesAPly())
        {
            return;
        }

        context.Report(
            face.MaterialWhere,
            $"{face.Name}, the face, is woven cloth of {PlyFacts.Weight(cloth.Grams(), cloth.ArealWeight?.Written)} with no coat before it and no paint after it",
            labels: part.Use?.Where is { } use ? [new FindingLabel(use, "looked at")] : [],
            fixes: [context.Model.LightGlass() is { } glass && part.VariantOf is null
                ? Edits.Fix($"Lay {glass.Name} first", FixSafety.NeedsALook, Edits.Before(face.Where, $"{part.FreeName("face")} {glass.Name} 0/90"))
                : null]);
    }
}
