using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Solvents are used where something is hot or sparks.</summary>
public sealed class SolventsByHeat : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8407",
        Name = "solvents-by-heat",
        Severity = Severity.Error,
        Title = "Solvents beside heat or sparks",
        Reason = "The vapour of acetone creeps along the bench and finds the heater.",
        Remedy = "Keep solvents and heat apart in room and time, and air the room.",
        Source = "common practice",
        Exceptions = """
            Silent where the shop does not say.
            """,
        BadExample = """
            shop ours {
              safety {
                gloves "nitrile, changed on every splash"
                solvents by-heat
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
                solvents apart
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
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop?.Safety is not { SolventsApart: { Value: false } said } safety || !context.Part.IsWetted())
        {
            return;
        }

        context.Report(
            said.Where ?? safety.Where,
            "solvents are used beside heat or sparks",
            Grounds.Sure.And("solvents", said),
            [new FindingLabel(context.Part.ResinWhere ?? context.Part.Where, "for this part")],
            [Edits.Fix("Keep them apart", FixSafety.NeedsALook, FigureEdits.Rewrite(said, "apart"))]);
    }
}
