using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>One thin felt has to carry the air of a large bag.</summary>
public sealed class ThinFelt : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5109",
        Name = "thin-felt",
        Severity = Severity.Advice,
        Title = "Breather thin for a large bag",
        Reason = "A thin felt is pressed shut under the bag and stops passing air, so that the far end of a large bag stays slack.",
        Remedy = "Lay a felt of 135 to 150 g/m2, or two layers, on a large bag.",
        Source = "common practice: 135 to 150 g/m2 on large bags; US Army TM 1-1500-204-23-11 (page file 0046): 4 oz/yd2 does for most field work",
        Exceptions = """
            Silent for parts up to 1 m2 and for two layers. Glass cloth and mesh do not press shut.
            """,
        BadExample = """
            breather our-thin-felt { areal-weight 80 g/m2; width 150 cm; resin-pickup 40 g/m2; capacity 300 g/m2; heat-limit 180 degC; stuff polyester; source "data sheet" }

            mould tray-mould {
              surface flat 1250 mm x 900 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                laminators 4
              }
              bag {
                peel-ply
                release-film perforated
                our-thin-felt
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
            breather our-thin-felt { areal-weight 80 g/m2; width 150 cm; resin-pickup 40 g/m2; capacity 300 g/m2; heat-limit 180 degC; stuff polyester; source "data sheet" }

            mould tray-mould {
              surface flat 1250 mm x 900 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                laminators 4
              }
              bag {
                peel-ply
                release-film perforated
                our-thin-felt x2
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
    };

    private const double LargeArea = 1;
    private const double ThinKilograms = 0.1;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { } bag || context.Plan.Geometry is not { } shape || shape.Area.SquareMeters <= LargeArea)
        {
            return;
        }

        var felts = bag.Layers.Where(l => l.Class is LayerClass.Breather or LayerClass.Bleeder).ToList();
        if (felts is not [{ Count: 1, Class: LayerClass.Breather, Material.ArealWeight: { } weight } felt]
            || weight.Value.KilogramsPerSquareMeter >= ThinKilograms
            || TradeWords.Says($"{felt.Material.Name} {felt.Material.Stuff}".Replace('-', ' '), "glass", "mesh", "knit", "net"))
        {
            return;
        }

        context.Report(
            felt.Where,
            $"one layer of {felt.Material.Name}, {Say.Of(weight)}, breathes for {Say.Number(Math.Round(shape.Area.SquareMeters, 2))} m2; over 1 m2 at least 100 g/m2 are wanted",
            Grounds.Sure.And($"weight of {felt.Material.Name}", weight),
            fixes: [new Fix("Lay two of it", FixSafety.NeedsALook, Edits.Append(felt.Where, "x2"))]);
    }
}
