using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Left-over mixed resin goes into the bin.</summary>
public sealed class LeftoverInBin : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8405",
        Name = "leftover-in-bin",
        Severity = Severity.Error,
        Title = "Left-over resin in the bin",
        Reason = "A hundred grams of mixed resin in a cup heat up enough to light the paper around them.",
        Remedy = "Spread it thin in a tray or pour it into a steel bucket of water, outdoors, until it is hard and cold.",
        Source = "common practice",
        Exceptions = """
            Silent where the shop does not say where it goes: the papers print it in any case. No reason accepts it.
            """,
        BadExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                leftover bin
              }
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
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                leftover tray
              }
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
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override bool IsSafety => true;

    /// <inheritdoc/>
    public override bool CanBeAccepted => false;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop?.Safety is not { Leftover: { Value: LeftoverPlace.Bin } said } safety || !context.Part.IsWetted())
        {
            return;
        }

        context.Report(
            said.Where ?? safety.Where,
            "mixed resin that is left over goes into the bin, where it goes on heating",
            Grounds.Sure.And("leftover", said),
            [new FindingLabel(context.Part.ResinWhere ?? context.Part.Where, "for this part")],
            [Edits.Fix("Spread it in a tray", FixSafety.NeedsALook, FigureEdits.Rewrite(said, "tray"))]);
    }
}
