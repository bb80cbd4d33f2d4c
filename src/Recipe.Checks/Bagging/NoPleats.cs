using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A bag over a deep mould has no pleats.</summary>
public sealed class NoPleats : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5102",
        Name = "no-pleats",
        Severity = Severity.Warning,
        Title = "No pleats over a deep mould",
        Reason = "A film without spare stretches over the hollow and does not reach its bottom: it bridges, leaves a soft spot there, or bursts.",
        Remedy = "Fold one pleat at each inside corner and at each end, about as high as the mould is deep.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0175): pleats, so that the film is not stretched until it bursts; 50 mm of depth is common practice",
        Exceptions = """
            Speaks only where `pleats 0` is written. Silent for a film that stretches, and for moulds up to 50 mm deep.
            """,
        BadExample = """
            mould tray-mould {
              surface spherical-cap diameter 400 mm rise 60 mm
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
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                pleats 0
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
            mould tray-mould {
              surface spherical-cap diameter 400 mm rise 60 mm
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
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
                pleats 4
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

    private static readonly Length Deep = Length.FromMillimeters(50);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Bag is not { Pleats: { Value: 0 } pleats } bag || BagStuff.Stretches(bag))
        {
            return;
        }

        if (context.Plan.Geometry is not { } shape)
        {
            context.NotChecked("the depth of the mould is not known", pleats.Where ?? bag.Where);
            return;
        }

        if (shape.Depth <= Deep)
        {
            return;
        }

        context.Report(
            pleats.Where ?? bag.Where,
            $"the mould is {Say.Of(shape.Depth)} deep and the bag has no pleat; without pleats a film follows about {Say.Of(Deep)}",
            Grounds.Sure.And("number of pleats", pleats),
            fixes: [Edits.Fix("Fold 4 pleats", FixSafety.NeedsALook, FigureEdits.Rewrite(pleats, "4"))]);
    }
}
