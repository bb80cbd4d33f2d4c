using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>So much resin reaches the breather that air no longer gets through it.</summary>
public sealed class FeltSoaks : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5010",
        Name = "felt-soaks",
        Severity = Severity.Warning,
        Title = "Breather soaks full of resin",
        Reason = "A soaked felt passes no air: the far end of the part loses its vacuum, and resin reaches the port.",
        Remedy = "Lay a second felt, or a solid film cut 25 mm smaller between bleeder and breather.",
        Source = "FAA AC 43.13-1B (1998) p. 3-7: a solid film keeps resin from the breather; half of what a felt holds is common practice",
        Exceptions = """
            Silent where a solid film lies under the breather, since no resin reaches it. Advice for a part of up to 0.2 m2, which breathes over its edges. Not checked for a felt whose `capacity` is not known.
            """,
        BadExample = """
            release-film thin-open-film {
              perforation open
              bleed 200 g/m2
              heat-limit 120 degC
            }

            breather thin-felt {
              resin-pickup 140 g/m2
              capacity 200 g/m2
              heat-limit 120 degC
            }

            mould tray-mould {
              surface flat 900 mm x 500 mm
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
                core-cloth glass-twill-163 0/90 x6
                inner glass-twill-163 0/90
              }
              wet-out {
                resin-content 50 % by weight
                room 20 degC
                laminators 4
              }
              bag {
                peel-ply
                release-film thin-open-film
                breather thin-felt
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
            release-film thin-open-film {
              perforation open
              bleed 60 g/m2
              heat-limit 120 degC
            }

            breather thin-felt {
              resin-pickup 140 g/m2
              capacity 200 g/m2
              heat-limit 120 degC
            }

            mould tray-mould {
              surface flat 900 mm x 500 mm
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
                core-cloth glass-twill-163 0/90 x6
                inner glass-twill-163 0/90
              }
              wet-out {
                resin-content 50 % by weight
                room 20 degC
                laminators 4
              }
              bag {
                peel-ply
                release-film thin-open-film
                breather thin-felt x2
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

    private const double Share = 0.5;
    private const double SmallPart = 0.2;

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Bag is { } bag ? new LinesRead(bag.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Process.Value != Process.Bagged || context.Plan.Bag is not { } bag || BagOrder.IsUpsideDown(context.Part))
        {
            return;
        }

        foreach (var felt in bag.Layers.Where(l => l.Layer.Class == LayerClass.Breather && l.Pickup is { Value.Kilograms: > 0 }))
        {
            if (felt.Layer.Material.Capacity is not { } capacity)
            {
                context.NotChecked($"nobody says what {felt.Layer.Material.Name} holds", felt.Layer.Where);
                continue;
            }

            var holds = Mass.FromKilograms(capacity.Value.KilogramsPerSquareMeter * felt.Area.Value.SquareMeters);
            var taken = felt.Pickup!.Value;
            if (taken.Value <= holds * Share)
            {
                continue;
            }

            var small = context.Plan.Geometry is { Area.SquareMeters: <= SmallPart };
            context.Report(
                felt.Layer.Where,
                $"{Say.About(taken.Value)} of resin reach {felt.Layer.Material.Name}, which holds {Say.About(holds)} and breathes up to half of that",
                Grounds.Sure.And<Mass>(taken).And($"capacity of {felt.Layer.Material.Name}", capacity),
                fixes: [Thicker(felt)],
                severity: small ? Severity.Advice : Severity.Warning);
        }
    }

    private static Fix? Thicker(BagLayerPlan felt) => felt.Layer.Count == 1
        ? Edits.Fix("Lay two of it", FixSafety.NeedsALook, Edits.Append(felt.Layer.Where, "x2"))
        : null;
}
