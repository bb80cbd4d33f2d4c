using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A bag is taped to a porous mould that nobody sealed or tested.</summary>
public sealed class LeakyMould : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2111",
        Name = "leaky-mould",
        Severity = Severity.Warning,
        Title = "Bag on a porous mould that was never sealed",
        Reason = "Air comes through wood, plaster and print behind the laminate, and no tape stops it.",
        Remedy = "Seal the mould with two or three coats of epoxy and test it bare, or put the whole mould into an envelope bag.",
        Source = "common practice",
        Exceptions = """
            Silent for an envelope bag, and where `seal-coats` or the day of a test of the bare mould (`tested`) is given.
            """,
        BadExample = """
            mould-material own-board {
              heat-limit 60 degC
              porous yes
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of own-board
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
            mould-material own-board {
              heat-limit 60 degC
              porous yes
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of own-board
              seal-coats 3
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

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.MouldLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Bag is not { IsEnvelope: false } bag || part.Vacuum is null
            || part.Mould is not { MadeOf: { Porous: true } stuff, TestedOn: null } mould || mould.SealCoats is { Value: > 0 })
        {
            return;
        }

        context.Report(
            mould.MadeOfWhere ?? mould.Where,
            $"{mould.Name} is made of {stuff.Name}, which is porous, and its face is neither sealed nor tested bare",
            labels: [new FindingLabel(bag.Where, "bagged here")],
            fixes: [mould.MadeOfWhere is null ? null : Edits.Fix("Seal it with 3 coats", FixSafety.NeedsALook, Edits.Last(mould.Where, "seal-coats 3"))]);
    }
}
